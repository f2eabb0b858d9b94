package org.fadeline.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Locale;
import org.fadeline.io.Problem.Severity;
import org.jspecify.annotations.Nullable;

/** Reads a whole file as UTF-8, refusing what is no plain file of bounded size. */
public final class FileText {
  /** Largest file read, bytes: 64 MiB, some hundred times a long match. */
  static final long LARGEST = 64L << 20;

  private FileText() {}

  /** Returns the name to put in messages. */
  public static String nameOf(Path file) {
    Path name = file.getFileName();
    return name == null ? file.toString() : name.toString();
  }

  /** Returns the text without byte order mark, or null after adding the problem. */
  public static @Nullable String read(Path file, ImportReport.Collector problems) {
    return read(file, problems, () -> {});
  }

  /**
   * As {@link #read(Path, ImportReport.Collector)}.
   *
   * @param whileReading runs after the bytes were read and before the file is looked at again, so
   *     that a test can change it in between
   */
  static @Nullable String read(Path file, ImportReport.Collector problems, Runnable whileReading) {
    String name = nameOf(file);
    byte[] bytes;
    try {
      bytes = bytes(file, LARGEST, whileReading);
    } catch (Refused refused) {
      problems.add(Problem.ofFile(name, refused.what(), refused.whatToDo()));
      return null;
    }
    return decode(name, bytes, problems);
  }

  /** Returns the bytes of a plain file of at most 64 MiB. */
  public static byte[] bytes(Path file) throws Refused {
    return bytes(file, LARGEST);
  }

  /**
   * Returns the bytes of a plain file.
   *
   * @param largest most bytes read, below 2³¹ − 8
   */
  public static byte[] bytes(Path file, long largest) throws Refused {
    return bytes(file, largest, () -> {});
  }

  private static byte[] bytes(Path file, long largest, Runnable whileReading) throws Refused {
    try {
      BasicFileAttributes before = Files.readAttributes(file, BasicFileAttributes.class);
      if (before.isDirectory()) {
        throw new Refused("this is a folder, not a file", "choose a file in it");
      }
      if (!before.isRegularFile()) {
        throw new Refused("this is a pipe or device, not a file", "choose a plain file");
      }
      if (before.size() > largest) {
        throw tooLarge(largest);
      }
      byte[] bytes;
      try (InputStream in = Files.newInputStream(file)) {
        bytes = in.readNBytes((int) largest + 1);
      }
      if (bytes.length > largest) {
        throw tooLarge(largest);
      }
      whileReading.run();
      BasicFileAttributes after = Files.readAttributes(file, BasicFileAttributes.class);
      boolean same =
          after.size() == bytes.length
              && before.size() == bytes.length
              && after.lastModifiedTime().equals(before.lastModifiedTime());
      if (!same) {
        throw new Refused(
            "the file changed while it was being read",
            "wait until the program that writes it has finished, then open it again");
      }
      return bytes;
    } catch (IOException e) {
      throw refusal(e);
    }
  }

  private static Refused tooLarge(long largest) {
    return new Refused(
        "the file is larger than " + (largest >> 20) + " MB",
        "check that it is a session; a long match takes under 1 MB");
  }

  private static Refused refusal(IOException e) {
    if (e instanceof NoSuchFileException) {
      return new Refused("there is no such file", "check its name and folder");
    }
    if (e instanceof AccessDeniedException) {
      return new Refused("the file may not be read", "change its permissions, or copy it");
    }
    String reason = String.valueOf(e.getMessage());
    if (reason.contains("symbolic links")) {
      return new Refused(
          "the name is a link that leads round in a circle", "choose the file itself");
    }
    return new Refused("the file cannot be read (" + reason + ")", "check the disk, or copy it");
  }

  /** Returns the text, or null after adding the problem. */
  public static @Nullable String decode(
      String name, byte[] bytes, ImportReport.Collector problems) {
    if (bytes.length == 0) {
      problems.add(
          Problem.ofFile(name, "the file is empty", "choose another file, or open a backup"));
      return null;
    }
    if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF) || manyZeros(bytes)) {
      problems.add(
          Problem.ofFile(
              name,
              "the file is not UTF-8 text (UTF-16, or no text at all)",
              "save it as UTF-8 text, or choose another file"));
      return null;
    }
    int from = 0;
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      from = 3;
      problems.add(
          Problem.warning(
              name,
              1,
              "the file starts with a byte order mark, as spreadsheets write it",
              "nothing need be done; it is left out when saved"));
    }
    return utf8(name, ByteBuffer.wrap(bytes, from, bytes.length - from).slice(), problems);
  }

  private static @Nullable String utf8(
      String name, ByteBuffer in, ImportReport.Collector problems) {
    CharBuffer out = CharBuffer.allocate(in.remaining());
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(in, out, true);
    out.flip();
    if (!result.isError()) {
      return out.toString();
    }
    int bad = Byte.toUnsignedInt(in.get(in.position()));
    int row = 1;
    int column = 1;
    for (int i = 0; i < out.length(); i++) {
      boolean end = out.charAt(i) == '\n';
      row += end ? 1 : 0;
      column = end ? 1 : column + 1;
    }
    problems.add(
        new Problem(
            name,
            row,
            column,
            null,
            Severity.ERROR,
            String.format(Locale.ROOT, "the byte 0x%02X here is not UTF-8 text", bad),
            "save the file as UTF-8; an older program may have written it in its own code"));
    return null;
  }

  private static boolean startsWith(byte[] bytes, int... start) {
    for (int i = 0; i < start.length; i++) {
      if (i >= bytes.length || Byte.toUnsignedInt(bytes[i]) != start[i]) {
        return false;
      }
    }
    return true;
  }

  /** UTF-16 of Latin text is half zeros; text with a stray NUL is not. */
  private static boolean manyZeros(byte[] bytes) {
    int looked = Math.min(bytes.length, 4096);
    int zeros = 0;
    for (int i = 0; i < looked; i++) {
      zeros += bytes[i] == 0 ? 1 : 0;
    }
    return zeros * 5 > looked;
  }
}
