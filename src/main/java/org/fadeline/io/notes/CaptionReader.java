package org.fadeline.io.notes;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.io.FileText;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.Refused;
import org.jspecify.annotations.Nullable;

/**
 * Reads captions: WebVTT (W3C, "WebVTT: The Web Video Text Tracks Format") and SRT, which has no
 * standard and is read leniently.
 */
final class CaptionReader {
  private CaptionReader() {}

  /** Returns whether a file name ends as captions do, {@code .vtt} or {@code .srt}. */
  static boolean isCaptions(Path file) {
    return isSrt(FileText.nameOf(file)) || lower(FileText.nameOf(file)).endsWith(".vtt");
  }

  /** Reads a caption file, as its name ends; never throws for what the file holds. */
  static Captions read(Path file) {
    ImportReport.Collector problems = new ImportReport.Collector();
    String name = FileText.nameOf(file);
    String text = isSrt(name) ? srtText(file, problems) : FileText.read(file, problems);
    return text == null ? new Captions(List.of(), problems.report()) : parse(name, text, problems);
  }

  /** Reads captions from text, as the name ends. */
  static Captions parse(String name, String text) {
    return parse(name, text, new ImportReport.Collector());
  }

  private static Captions parse(String name, String text, ImportReport.Collector problems) {
    List<Cue> cues = new ArrayList<>();
    if (isSrt(name)) {
      SrtParser.parse(name, text, cues, problems);
    } else {
      new WebVttParser(name, text, cues, problems).parse();
    }
    return new Captions(cues, problems.report());
  }

  private static boolean isSrt(String name) {
    return lower(name).endsWith(".srt");
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private static @Nullable String srtText(Path file, ImportReport.Collector problems) {
    String name = FileText.nameOf(file);
    byte[] bytes;
    try {
      bytes = FileText.bytes(file);
    } catch (Refused refused) {
      problems.add(Problem.ofFile(name, refused.what(), refused.whatToDo()));
      return null;
    }
    Charset wide = utf16(bytes);
    if (wide != null) {
      return new String(bytes, wide);
    }
    try {
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes));
    } catch (CharacterCodingException e) {
      problems.add(
          Problem.warning(
              name,
              1,
              "the file is not UTF-8 text and was read as Windows-1252",
              "check accented letters, or save it as UTF-8"));
      return new String(bytes, Charset.forName("windows-1252"));
    }
    return FileText.decode(name, bytes, problems);
  }

  /** Returns the UTF-16 order of the bytes by their mark, or by where the zeros of Latin lie. */
  private static @Nullable Charset utf16(byte[] bytes) {
    if (bytes.length < 4 || bytes.length % 2 != 0) {
      return null;
    }
    int first = Byte.toUnsignedInt(bytes[0]);
    int second = Byte.toUnsignedInt(bytes[1]);
    boolean big = first == 0xFE && second == 0xFF;
    boolean little = first == 0xFF && second == 0xFE;
    if (big || little) {
      return StandardCharsets.UTF_16;
    }
    int even = 0;
    int odd = 0;
    int looked = Math.min(bytes.length, 4096);
    for (int i = 0; i < looked; i++) {
      if (bytes[i] == 0) {
        even += 1 - i % 2;
        odd += i % 2;
      }
    }
    if (even == 0 && odd > looked / 4) {
      return StandardCharsets.UTF_16LE;
    }
    return odd == 0 && even > looked / 4 ? StandardCharsets.UTF_16BE : null;
  }
}
