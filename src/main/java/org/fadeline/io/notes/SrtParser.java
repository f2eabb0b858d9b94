package org.fadeline.io.notes;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.Shown;
import org.jspecify.annotations.Nullable;

/**
 * Reads SRT captions. SRT has no standard; common practice is read: comma or dot before the
 * milliseconds or none at all, hours left out, missing numbers, empty lines inside a text.
 */
final class SrtParser {
  private static final String TIME = "(?:(\\d{1,4}):)?(\\d{1,2}):(\\d{1,2})(?:[.,](\\d{1,3}))?";
  private static final Pattern TIMES =
      Pattern.compile("\\s*" + TIME + "\\s*-->\\s*" + TIME + "(?:\\s.*)?");
  private static final Pattern NUMBER = Pattern.compile("\\s*\\d{1,9}\\s*");
  private static final Pattern MEANT_AS_TIMES = Pattern.compile("\\s*[\\d:.,]*\\d.*-->.*");

  private static final int LONGEST_TIMES = 500;

  private SrtParser() {}

  static void parse(String file, String text, List<Cue> cues, ImportReport.Collector problems) {
    String[] lines =
        text.replace("\uFEFF", "")
            .replace('\0', ' ')
            .replace("\r\n", "\n")
            .replace('\r', '\n')
            .split("\n", -1);
    int before = cues.size();
    int i = nextTimes(lines, 0);
    while (i < lines.length) {
      int end = nextTimes(lines, i + 1);
      Matcher times = TIMES.matcher(lines[i]);
      String said = CueText.plain(text(lines, i + 1, end));
      Long from = times.matches() ? millis(times, 1) : null;
      Long to = times.matches() ? millis(times, 5) : null;
      if (from == null || to == null) {
        warn(
            problems,
            file,
            i,
            "the times "
                + Shown.value(lines[i].strip())
                + " cannot be read, so the caption "
                + Shown.value(said)
                + " is left out",
            "write them as 00:01:02,500 --> 00:01:05,000");
      } else {
        if (to <= from) {
          warn(
              problems,
              file,
              i,
              "the caption ends before it starts",
              "nothing need be done; its start is used");
        }
        cues.add(new Cue(i + 1, from, to, said));
      }
      i = end;
    }
    if (cues.size() == before && problems.errors() == 0) {
      problems.add(
          Problem.ofFile(
              file,
              "no caption with times such as 00:01:02,500 --> 00:01:05,000 was found",
              "choose a file with captions"));
    }
  }

  private static int nextTimes(String[] lines, int from) {
    for (int i = from; i < lines.length; i++) {
      if (lines[i].length() > LONGEST_TIMES || !lines[i].contains("-->")) {
        continue;
      }
      // An arrow inside a sentence is text; one after a time is not.
      boolean numbered = i > 0 && NUMBER.matcher(lines[i - 1]).matches();
      if (TIMES.matcher(lines[i]).matches()
          || numbered
          || MEANT_AS_TIMES.matcher(lines[i]).matches()) {
        return i;
      }
    }
    return lines.length;
  }

  /** Joins the lines of a text, without the number that belongs to the next caption. */
  private static String text(String[] lines, int from, int end) {
    int last = end;
    if (end < lines.length && last > from && NUMBER.matcher(lines[last - 1]).matches()) {
      last--;
    }
    return String.join("\n", Arrays.asList(lines).subList(from, last));
  }

  private static @Nullable Long millis(Matcher times, int group) {
    String hours = times.group(group);
    int minutes = Integer.parseInt(times.group(group + 1));
    int seconds = Integer.parseInt(times.group(group + 2));
    String fraction = times.group(group + 3);
    if (minutes > 59 || seconds > 59) {
      return null;
    }
    long millis = fraction == null ? 0 : Long.parseLong((fraction + "00").substring(0, 3));
    long hour = hours == null ? 0 : Long.parseLong(hours);
    return ((hour * 60 + minutes) * 60 + seconds) * 1000 + millis;
  }

  private static void warn(
      ImportReport.Collector problems, String file, int index, String what, String whatToDo) {
    problems.add(Problem.warning(file, index + 1, what, whatToDo));
  }
}
