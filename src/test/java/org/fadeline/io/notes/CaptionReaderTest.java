package org.fadeline.io.notes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.fadeline.io.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * WebVTT against the parser rules of the W3C's "WebVTT: The Web Video Text Tracks Format" (section
 * 6.1 for blocks, 6.3 for times); SRT against common practice, for it has no standard.
 */
class CaptionReaderTest {
  @TempDir
  @SuppressWarnings("NullAway.Init") // set before each test
  Path folder;

  private static Captions vtt(String text) {
    return CaptionReader.parse("notes.vtt", text);
  }

  private static Captions srt(String text) {
    return CaptionReader.parse("notes.srt", text);
  }

  private static List<String> texts(Captions captions) {
    return captions.cues().stream().map(Cue::text).toList();
  }

  @Test
  void readsCuesWithIdsSettingsNotesStylesAndRegions() {
    Captions captions =
        vtt(
            """
            WEBVTT - bank notes
            Kind: captions

            NOTE
            a remark, not a caption

            STYLE
            ::cue { color: red }

            REGION
            id:one

            first
            00:01.000 --> 00:02.500 align:start position:10%
            landed a carp
            on the short line

            100:00:00.000 --> 100:00:01.000
            a long day
            """);
    assertEquals(
        List.of(
            new Cue(14, 1000, 2500, "landed a carp on the short line"),
            new Cue(18, 360_000_000, 360_001_000, "a long day")),
        captions.cues());
    assertEquals(List.of(), captions.report().problems());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void readsEveryLineEnd(String end) {
    String text = String.join(end, "\uFEFFWEBVTT", "", "00:01.000 --> 00:02.000", "one", "two", "");
    assertEquals(List.of("one two"), texts(vtt(text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "WEBVT",
        "webvtt\n",
        "WEBVTTX\n\n",
        " WEBVTT\n",
        "1\n00:01.000 --> 00:02.000\na"
      })
  void refusesAnotherSignature(String text) {
    Captions captions = vtt(text);
    assertTrue(captions.report().hasErrors());
    assertEquals(List.of(), captions.cues());
    assertTrue(captions.report().problems().get(0).toString().startsWith("notes.vtt:1:1: "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1:02.000 --> 00:03.000",
        "00:60.000 --> 01:03.000",
        "60:00.000 --> 61:00.000",
        "00:01,000 --> 00:02,000",
        "00:01.00 --> 00:02.000",
        "00:01.0000 --> 00:02.000",
        "00:01 --> 00:02",
        "00:01.000 -> --> 00:02.000",
        "99999999999999999999:00:01.000 --> 99999999999999999999:00:02.000",
        "--> 00:02.000",
        "00:01.000 -->"
      })
  void dropsTheCueWithBadTimesOnlyAndSaysWhatItSaid(String times) {
    Captions captions =
        vtt("WEBVTT\n\n" + times + "\nlost words\n\n00:05.000 --> 00:06.000\nkept\n");
    assertEquals(List.of("kept"), texts(captions));
    assertFalse(captions.report().hasErrors());
    Problem problem = captions.report().problems().get(0);
    assertEquals(3, problem.row());
    assertTrue(problem.what().contains("lost words"), problem.what());
  }

  @Test
  void timesNeedNoBlanksAroundTheArrow() {
    assertEquals(
        List.of(new Cue(3, 1000, 2000, "a")), vtt("WEBVTT\n\n00:01.000-->00:02.000\na").cues());
  }

  @Test
  void anArrowFromTheThirdLineOnStartsAnotherCue() {
    Captions captions =
        vtt(
            """
            WEBVTT

            00:01.000 --> 00:02.000
            one
            00:03.000 --> 00:04.000
            two

            00:05.000 --> 00:06.000
            moved --> the edge
            """);
    // The last line of the second block has an arrow too: it ends its cue and is no time itself.
    assertEquals(List.of("one", "two", ""), texts(captions));
    assertEquals(1, captions.report().warnings());
  }

  @Test
  void saysWhereAStyleOrNoteIsNotEnded() {
    Captions captions =
        vtt("WEBVTT\n\nSTYLE\n::cue {\ncolor: red\n00:01.000 --> 00:02.000\nlanded one\n");
    assertEquals(List.of("landed one"), texts(captions));
    assertEquals(3, captions.report().problems().get(0).row());
    assertTrue(vtt("WEBVTT\n\nNOTE never ended").report().hasErrors(), "no captions at all");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<v Ned Tarrow>landed one</v>|landed one",
        "<i>landed</i> <b>one</b>|landed one",
        "<c.loud.big>landed</c> one|landed one",
        "<00:00:01.500>landed one|landed one",
        "five &lt; six &amp; seven&nbsp;eight|five < six & seven eight",
        "&#8217;tis &#x41;|’tis A",
        "<ruby>landed<rt>x</rt></ruby>|landedx",
        "landed <unfinished|landed",
        "3 < 4 pound|3 < 4 pound",
        "a\u202Ebc\u200B|abc",
        "&bogus; &#999999999;|&bogus; &#999999999;"
      })
  void stripsTagsTimestampsAndReferences(String raw, String plain) {
    assertEquals(List.of(plain), texts(vtt("WEBVTT\n\n00:01.000 --> 00:02.000\n" + raw)));
  }

  @Test
  void warnsOfACaptionThatEndsBeforeItStarts() {
    Captions captions = vtt("WEBVTT\n\n00:03.000 --> 00:02.000\na");
    assertEquals(3000, captions.cues().get(0).fromMillis());
    assertEquals(1, captions.report().warnings());
  }

  @Test
  void readsSrtWithNumbersCommasAndEmptyLinesInsideATextByCommonPractice() {
    Captions captions =
        srt(
            """
            1
            00:00:01,000 --> 00:00:02,500
            landed a carp

            on the short line

            2
            00:00:05.5 --> 00:00:06
            <font color="red">lost</font> {\\an8}one
            00:07,250 --> 00:08,000 X1:40 X2:600
            no number here
            """);
    assertEquals(
        List.of(
            new Cue(2, 1000, 2500, "landed a carp on the short line"),
            new Cue(8, 5500, 6000, "lost one"),
            new Cue(10, 7250, 8000, "no number here")),
        captions.cues());
    assertEquals(List.of(), captions.report().problems());
  }

  @Test
  void srtKeepsAnArrowInTheTextAndDropsBadTimes() {
    Captions captions =
        srt(
            """
            1
            00:00:01,000 --> 00:00:02,000
            short --> long

            2
            00:99:01,000 --> 00:00:09,000
            lost words

            3
            00:00:11,000 --> 00:00:12,000
            kept
            """);
    assertEquals(List.of("short --> long", "kept"), texts(captions));
    assertEquals(6, captions.report().problems().get(0).row());
    assertTrue(captions.report().problems().get(0).what().contains("lost words"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "windows-1252"})
  void readsSrtInEveryEncodingSeen(String charset) throws IOException {
    Path file = folder.resolve("notes.srt");
    String text = "1\r\n00:00:01,000 --> 00:00:02,000\r\nlanded one, café side, £5 pound\r\n";
    Files.write(file, text.getBytes(Charset.forName(charset)));
    Captions captions = CaptionReader.read(file);
    assertEquals(List.of("landed one, café side, £5 pound"), texts(captions));
    assertFalse(captions.report().hasErrors());
    assertEquals(charset.startsWith("w") ? 1 : 0, captions.report().warnings());
  }

  @Test
  void refusesWebVttThatIsNotUtf8() throws IOException {
    Path file = folder.resolve("notes.vtt");
    Files.write(file, "WEBVTT\n\ncaf\u00E9".getBytes(StandardCharsets.ISO_8859_1));
    assertTrue(CaptionReader.read(file).report().hasErrors());
    Files.write(file, "WEBVTT\n\na".getBytes(StandardCharsets.UTF_16));
    assertTrue(CaptionReader.read(file).report().hasErrors());
  }

  /** Whatever a file holds ends in cues or in a message with file and place, in bounded time. */
  @ParameterizedTest
  @ValueSource(strings = {"notes.vtt", "notes.srt"})
  void badFilesEndInAMessage(String name) throws IOException {
    Path file = folder.resolve(name);
    String good =
        name.endsWith("vtt")
            ? "WEBVTT\n\n00:01.000 --> 00:02.000\nlanded one, four pound\n"
            : "1\n00:00:01,000 --> 00:00:02,000\nlanded one, four pound\n";
    Random random = new Random(7);
    byte[] noise = new byte[5000];
    random.nextBytes(noise);
    List<byte[]> bad =
        List.of(
            new byte[0],
            new byte[4096],
            new byte[] {'W'},
            "   \n\n ".getBytes(StandardCharsets.UTF_8),
            "{\"format\": \"fadeline-session\"}".getBytes(StandardCharsets.UTF_8),
            noise);
    for (byte[] bytes : bad) {
      Files.write(file, bytes);
      Captions captions = CaptionReader.read(file);
      assertEquals(List.of(), captions.cues());
      assertTrue(captions.report().hasErrors());
      assertTrue(captions.report().problems().get(0).toString().startsWith(name + ":"));
    }
    byte[] whole = good.repeat(40).getBytes(StandardCharsets.UTF_8);
    for (int tenth = 1; tenth < 10; tenth++) {
      Files.write(file, Arrays.copyOf(whole, whole.length * tenth / 10));
      assertFalse(CaptionReader.read(file).cues().isEmpty());
    }
    for (int flip = 0; flip < 200; flip++) {
      byte[] flipped = whole.clone();
      flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
      Files.write(file, flipped);
      Captions captions = CaptionReader.read(file);
      assertTrue(captions.report().hasErrors() || captions.cues().size() >= 35);
    }
    assertTrue(CaptionReader.read(folder).report().hasErrors(), "a folder");
    assertTrue(CaptionReader.read(folder.resolve("none.vtt")).report().hasErrors());
  }

  @ParameterizedTest
  @ValueSource(strings = {"notes.vtt", "notes.srt"})
  void largeAndHostileFilesEndSoon(String name) {
    String head = name.endsWith("vtt") ? "WEBVTT\n\n" : "";
    String times = "00:00:01.000 --> 00:00:02.000\n";
    List<String> texts =
        List.of(
            head + (times + "landed one\n\n").repeat(100_000),
            head + times + "word ".repeat(1_000_000),
            head + times + "<".repeat(1_000_000),
            head + times + "&#".repeat(1_000_000),
            head + "1".repeat(2_000_000) + " --> 2",
            head + "--> ".repeat(500_000),
            head + "a -->\n".repeat(200_000),
            head + times + "e\u0301\u0301\u0301\u0301".repeat(200_000));
    for (String text : texts) {
      assertTimeoutPreemptively(
          Duration.ofSeconds(20), () -> CaptionReader.parse(name, text).cues().size());
    }
  }
}
