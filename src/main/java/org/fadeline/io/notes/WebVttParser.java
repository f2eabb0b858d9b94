package org.fadeline.io.notes;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Problem;
import org.fadeline.io.Shown;
import org.jspecify.annotations.Nullable;

/**
 * Reads WebVTT as the parser of the W3C's "WebVTT: The Web Video Text Tracks Format", section 6,
 * does: a block is a cue when {@code -->} stands on its first or second line; a cue whose times
 * cannot be read is left out and the rest kept. Styles, regions, notes and settings are passed
 * over.
 */
final class WebVttParser {
  private static final String ARROW = "-->";
  private static final Pattern TIME =
      Pattern.compile("\\s*(?:(\\d+):)?(\\d{2}):(\\d{2})\\.(\\d{3})(?!\\d)");
  private static final int MOST_HOUR_DIGITS = 4;

  private final String file;
  private final String[] lines;
  private final List<Cue> cues;
  private final ImportReport.Collector problems;
  private int next;

  WebVttParser(String file, String text, List<Cue> cues, ImportReport.Collector problems) {
    this.file = file;
    this.lines =
        text.replace('\0', '\uFFFD').replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
    this.cues = cues;
    this.problems = problems;
  }

  void parse() {
    String first = lines[0].startsWith("\uFEFF") ? lines[0].substring(1) : lines[0];
    boolean signed =
        first.startsWith("WEBVTT")
            && (first.length() == 6 || first.charAt(6) == ' ' || first.charAt(6) == '\t');
    if (!signed) {
      problems.add(
          Problem.ofFile(
              file,
              "the file does not start with WEBVTT, so it holds no WebVTT captions",
              "choose a .vtt file, or rename it to .srt if it is one"));
      return;
    }
    next = 1;
    // The header runs to the first empty line, or to a line of times.
    while (next < lines.length && !lines[next].isEmpty() && !lines[next].contains(ARROW)) {
      next++;
    }
    while (next < lines.length) {
      if (lines[next].isEmpty()) {
        next++;
      } else {
        block();
      }
    }
    if (cues.isEmpty() && problems.errors() == 0) {
      problems.add(
          Problem.ofFile(file, "the file holds no captions", "choose a file with spoken notes"));
    }
  }

  private void block() {
    int start = next;
    int times = -1;
    StringBuilder text = new StringBuilder();
    while (next < lines.length && !lines[next].isEmpty()) {
      if (lines[next].contains(ARROW)) {
        boolean begins = times < 0 && next - start <= 1;
        if (!begins) {
          // A new cue that no empty line sets apart: the next block starts on it.
          warnUnclosed(start, times);
          break;
        }
        times = next;
        text.setLength(0);
      } else {
        text.append(text.length() == 0 ? "" : "\n").append(lines[next]);
      }
      next++;
    }
    if (times >= 0) {
      cue(times, text.toString());
    }
  }

  private void warnUnclosed(int start, int times) {
    boolean besides = lines[start].startsWith("NOTE") || lines[start].startsWith("STYLE");
    if (times < 0 && besides) {
      warn(
          start,
          "no empty line ends the " + lines[start].split("\\s", 2)[0] + " that starts here",
          "put an empty line before the caption that follows it");
    }
  }

  private void cue(int row, String raw) {
    String line = lines[row];
    int arrow = line.indexOf(ARROW);
    String text = CueText.plain(raw);
    Long from = millis(line.substring(0, arrow), true);
    Long to = millis(line.substring(arrow + ARROW.length()), false);
    if (from == null || to == null) {
      warn(
          row,
          "the times "
              + Shown.value(line.strip())
              + " cannot be read, so the caption "
              + Shown.value(text)
              + " is left out",
          "write them as 00:01:02.500 --> 00:01:05.000");
      return;
    }
    if (to <= from) {
      warn(row, "the caption ends before it starts", "nothing need be done; its start is used");
    }
    cues.add(new Cue(row + 1, from, to, text));
  }

  private static @Nullable Long millis(String text, boolean whole) {
    Matcher matcher = TIME.matcher(text);
    if (!matcher.lookingAt() || (whole && !text.substring(matcher.end()).isBlank())) {
      return null;
    }
    String hours = matcher.group(1);
    if (hours != null) {
      hours = hours.replaceFirst("^0+(?=\\d)", "");
    }
    int minutes = Integer.parseInt(matcher.group(2));
    int seconds = Integer.parseInt(matcher.group(3));
    boolean fits = hours == null || hours.length() <= MOST_HOUR_DIGITS;
    if (minutes > 59 || seconds > 59 || !fits) {
      return null;
    }
    long hour = hours == null ? 0 : Long.parseLong(hours);
    return ((hour * 60 + minutes) * 60 + seconds) * 1000 + Integer.parseInt(matcher.group(4));
  }

  private void warn(int index, String what, String whatToDo) {
    problems.add(Problem.warning(file, index + 1, what, whatToDo));
  }
}
