package org.fadeline.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TalkFileTest {
  private static final String HEAD = "\"format\": \"fadeline-talk\", \"version\": 1";

  @TempDir Path folder;

  private Talk talk() {
    Picture stretch =
        new Picture(
            Picture.Kind.TIMELINE,
            List.of("a"),
            List.of("short", "edge"),
            new Picture.Window(1_787_400_000_000L, 1_787_403_600_500L, 1_787_402_000_000L),
            new Picture.Manner(
                Picture.Measure.WEIGHT,
                Picture.Align.CLOCK,
                new Units(Units.Weight.KG, Units.Length.FT),
                Picture.Chosen.NOTHING));
    return new Talk(
        "Quillthorn – “a day”",
        List.of(
            new Source("a", folder.resolve("matches/one.session.json")),
            new Source("b", folder.resolve("../two.csv").normalize())),
        new Look(Look.Ground.PRINT, Units.KG_AND_METRES, Look.Shape.STANDARD),
        new Discretion(true, List.of("Ada Lund")),
        List.of(
            Slide.EMPTY,
            new Slide("One", List.of("a", "b \"c\""), stretch, "say\nit", Look.Ground.DARK),
            Slide.EMPTY.withPicture(Picture.of(Picture.Kind.COMPARE_CATCH, "a", "b")),
            Slide.EMPTY.withPicture(laid(Picture.Align.BY_HAND, -12.5)),
            Slide.EMPTY.withPicture(laid(Picture.Align.EVENT, 0)),
            Slide.EMPTY.withPicture(Picture.of(Picture.Kind.SEASON_FADES, "y")),
            Slide.EMPTY.withPicture(Picture.ofLine(Picture.Kind.RATE, "b", "short"))),
        List.of(
            new SeasonSource("y", folder.resolve("year"), SeasonSource.Sift.ALL),
            new SeasonSource(
                "w",
                folder.resolve("year"),
                new SeasonSource.Sift(
                    List.of("fen lake"),
                    List.of(1, 12),
                    List.of("short pole"),
                    new SeasonSource.Weather(
                        new SeasonSource.Range(4, 9.5), new SeasonSource.Range(0, 3), 225.0)))));
  }

  private static Picture laid(Picture.Align align, double minutes) {
    boolean event = align == Picture.Align.EVENT;
    return Picture.of(Picture.Kind.COMPARE_TIMELINES, "a", "b")
        .withManner(
            Picture.Manner.USUAL
                .withAlign(align)
                .withChosen(
                    new Picture.Chosen(
                        minutes,
                        event ? "e7" : null,
                        event ? "e9" : null,
                        List.of(
                            new Picture.Pair("short", "edge"), new Picture.Pair(null, "long")))));
  }

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(Path.of("docs/schema/talk.schema.json")), InputFormat.JSON);
  }

  @Test
  void whatIsWrittenReadsBackAndFitsTheSchema() throws IOException {
    Path file = folder.resolve("t.talk.json");
    TalkWriter.write(talk(), file);
    TalkReader.Loaded read = TalkReader.read(file);
    assertEquals(List.of(), read.report().problems());
    assertEquals(talk(), read.talk().orElseThrow());
    assertEquals(List.of(), schema().validate(Files.readString(file), InputFormat.JSON));
    assertEquals(Files.readString(file), TalkWriter.toJson(read.talk().orElseThrow(), folder));
  }

  @Test
  void sessionsAreNamedRelativeToTheTalkAndMoveWithIt() throws IOException {
    String json = TalkWriter.toJson(talk(), folder);
    assertTrue(json.contains("\"matches/one.session.json\""), json);
    assertTrue(json.contains("\"../two.csv\""), json);
    Path elsewhere = folder.resolve("moved");
    Talk moved = TalkReader.parse("t", json, elsewhere).talk().orElseThrow();
    assertEquals(elsewhere.resolve("matches/one.session.json"), moved.sources().get(0).file());
  }

  @Test
  void aTalkByHandNeedsOnlyItsHead() {
    Talk talk = TalkReader.parse("t", "{" + HEAD + "}", folder).talk().orElseThrow();
    assertEquals(Talk.EMPTY, talk);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[1]|a talk is an object",
        "{\"format\": \"fadeline-session\", \"version\": 1}|/format: this is no talk but",
        "{\"format\": \"fadeline-talk\"}|/version: the field",
        "{\"format\": \"fadeline-talk\", \"version\": 2}|/version: the talk is of the newer",
        "{HEAD, \"colour\": 1}|/colour: the field",
        "{HEAD, \"ground\": \"pink\"}|/ground: \"pink\" is not known here; write one of light,",
        "{HEAD, \"shape\": 4}|/shape: a text is needed here, not the number 4",
        "{HEAD, \"slides\": {}}|/slides: a list",
        "{HEAD, \"slides\": [{\"words\": [1]}]}|/slides/0/words/0: a text is needed",
        "{HEAD, \"slides\": [{\"pic\": 1}]}|/slides/0/pic: the field",
        "{HEAD, \"slides\": [{\"picture\": {}}]}|/slides/0/picture/kind: the field",
        "{HEAD, \"slides\": [{\"picture\": {\"kind\": \"pie\", \"of\": []}}]}|/slides/0/picture/kind: \"pie\"",
        "{HEAD, \"slides\": [{\"picture\": {\"kind\": \"peg\", \"of\": []}}]}|/slides/0/picture/of:",
        "{HEAD, \"slides\": [{\"picture\": {\"kind\": \"peg\", \"of\": [\"x\"]}}]}|there is no session with the id \"x\"",
        "{HEAD, \"sessions\": [{\"id\": \"x\", \"file\": \"a\"}], \"slides\": [{\"picture\": {\"kind\": \"rate\", \"of\": [\"x\"]}}]}|/slides/0/picture/lines:",
        "{HEAD, \"sessions\": [{\"id\": \"x\", \"file\": \"a\"}], \"slides\": [{\"picture\": {\"kind\": \"peg\", \"of\": [\"x\"], \"knownAt\": \"noon\"}}]}|/slides/0/picture/knownAt:",
        "{HEAD, \"sessions\": [{\"id\": \"x\", \"file\": \"a\"}], \"slides\": [{\"picture\": {\"kind\": \"compare-pegs\", \"of\": [\"x\", \"x\"], \"align\": \"event\"}}]}|/slides/0/picture/laidOn: one event of each",
        "{HEAD, \"sessions\": [{\"id\": \"x\", \"file\": \"a\"}], \"slides\": [{\"picture\": {\"kind\": \"compare-pegs\", \"of\": [\"x\", \"x\"], \"laidMinutes\": 2000}}]}|/slides/0/picture/laidMinutes:",
        "{HEAD, \"seasons\": [{\"id\": \"x\", \"folder\": \"a\", \"months\": [13]}]}|/seasons/0/months: whole numbers",
        "{HEAD, \"seasons\": [{\"id\": \"x\", \"folder\": \"a\", \"waterTemp\": {\"low\": 1}}]}|/seasons/0/waterTemp:",
        "{HEAD, \"sessions\": [{\"id\": \"x\"}]}|/sessions/0/file:",
        "{HEAD, \"sessions\": [{\"id\": \"x\", \"file\": \"a\"}, {\"id\": \"x\", \"file\": \"b\"}]}|/sessions/1/id: there are two",
      })
  void whatIsWrongIsRefusedWithItsPlace(String json, String message) throws IOException {
    String whole = json.replace("HEAD", HEAD);
    TalkReader.Loaded read = TalkReader.parse("t.talk.json", whole, folder);
    assertTrue(read.talk().isEmpty());
    String said = read.report().problems().toString();
    assertTrue(said.contains("t.talk.json:1:"), said);
    assertTrue(said.contains(message), said);
    // The schema knows nothing of ids that are named elsewhere or twice, nor of what a time is.
    boolean beyondSchema =
        message.startsWith("there is no session")
            || message.contains("knownAt")
            || message.contains("there are two");
    assertEquals(beyondSchema, schema().validate(whole, InputFormat.JSON).isEmpty(), message);
  }

  @Test
  void everyPictureThereIsIsInTheSchema() throws IOException {
    for (Picture.Kind kind : Picture.Kind.values()) {
      String[] of =
          kind.sessions() == 2
              ? new String[] {"a", "b"}
              : new String[] {kind.ofSeason() ? "y" : "a"};
      Picture picture = Picture.of(kind, of);
      Talk one =
          talk()
              .withSlides(
                  List.of(
                      Slide.EMPTY.withPicture(
                          kind.ofOneLine() ? picture.withLines(List.of("short")) : picture)));
      String json = TalkWriter.toJson(one, folder);
      assertEquals(List.of(), schema().validate(json, InputFormat.JSON), kind.word());
      assertEquals(one, TalkReader.parse("t", json, folder).talk().orElseThrow());
    }
  }

  @Test
  void aTalkThatCannotBeWrittenLeavesTheOldOne() throws IOException {
    Path file = folder.resolve("t.talk.json");
    Files.createDirectory(file);
    Files.writeString(file.resolve("inside"), "x");
    assertThrows(IOException.class, () -> TalkWriter.write(talk(), file));
    try (var left = Files.list(folder)) {
      assertEquals(List.of(file), left.toList());
    }
    assertFalse(TalkReader.read(folder.resolve("none.talk.json")).talk().isPresent());
  }
}
