package org.fadeline.io;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Says in words why a file could not be written. */
public final class DiskFault {
  private DiskFault() {}

  /** Returns what is wrong and where, such as "/talks/club.pdf: no space left on device". */
  public static String of(Path target, IOException fault) {
    return target + ": " + why(target, fault);
  }

  /** Returns why, in words, without the name of the file that was to be written. */
  public static String why(Path target, IOException fault) {
    if (fault instanceof FileSystemException file) {
      String where = file.getFile();
      String elsewhere = where == null || target.toString().equals(where) ? "" : " (" + where + ")";
      return reason(file) + elsewhere;
    }
    String message = fault.getMessage();
    return message == null ? "the disk refused" : message.replace(target + ": ", "");
  }

  private static String reason(FileSystemException fault) {
    if (fault instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (fault.getReason() != null) {
      return fault.getReason();
    }
    if (fault instanceof FileAlreadyExistsException) {
      return "a file is in the way";
    }
    return fault instanceof NoSuchFileException ? "is not there" : "the disk refused";
  }
}
