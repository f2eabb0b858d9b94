package org.fadeline.ui.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fadeline.model.Line;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;

/** Pictures changed by choosing: what was chosen stays wherever it still has a meaning. */
final class PictureEdits {
  private PictureEdits() {}

  /**
   * Returns a picture of another kind.
   *
   * @param was the picture there was, or null
   * @param sources ids of the talk's sessions, the likeliest first; not empty
   * @param lines the lines of a session by its id; empty where it is not known
   */
  static Picture ofKind(
      Picture.Kind kind,
      @Nullable Picture was,
      List<String> sources,
      Function<String, List<Line>> lines) {
    Picture before = was != null && was.kind().ofSeason() ? null : was;
    List<String> of = new ArrayList<>(before == null ? List.of() : before.sources());
    for (String source : sources) {
      if (!of.contains(source)) {
        of.add(source);
      }
    }
    while (of.size() < kind.sessions()) {
      of.add(of.get(0));
    }
    List<String> chosen = of.subList(0, kind.sessions());
    boolean sameSession = before != null && before.sources().get(0).equals(chosen.get(0));
    return new Picture(
        kind,
        chosen,
        linesOf(
            kind,
            before != null && sameSession ? before.lines() : List.of(),
            lines.apply(chosen.get(0))),
        before == null || !sameSession ? Picture.Window.WHOLE : before.window(),
        before == null
            ? Picture.Manner.USUAL
            : before.sources().equals(chosen)
                ? before.manner()
                : before.manner().forOtherSessions());
  }

  /** Returns a picture of a talk's season: the one shown before, or its first. */
  static Picture ofSeason(Picture.Kind kind, @Nullable Picture before, Talk talk) {
    return Picture.of(
        kind,
        before != null && before.kind().ofSeason()
            ? before.sources().get(0)
            : talk.seasons().get(0).id());
  }

  /** Returns how two sessions can be laid: by what was chosen of them too, where anything was. */
  static List<Picture.Align> aligns(Picture.Manner manner) {
    Picture.Chosen chosen = manner.chosen();
    return Stream.of(Picture.Align.values())
        .filter(a -> a != Picture.Align.EVENT || chosen.firstEvent() != null)
        .filter(
            a ->
                a != Picture.Align.BY_HAND
                    || manner.align() == Picture.Align.BY_HAND
                    || chosen.minutes() != 0)
        .toList();
  }

  private static List<String> linesOf(Picture.Kind kind, List<String> before, List<Line> lines) {
    if (kind.ofOneLine()) {
      return !before.isEmpty()
          ? before.subList(0, 1)
          : lines.isEmpty() ? List.of() : List.of(lines.get(0).id());
    }
    return kind.hasWindow() && before.size() > 1 ? before : List.of();
  }

  /** Returns a picture of another session: lines and times of the old one mean nothing there. */
  static Picture ofSource(
      Picture before, int place, String source, Function<String, List<Line>> lines) {
    List<String> of = new ArrayList<>(before.sources());
    if (of.set(place, source).equals(source)) {
      return before;
    }
    return new Picture(
        before.kind(),
        of,
        linesOf(before.kind(), List.of(), lines.apply(of.get(0))),
        Picture.Window.WHOLE,
        before.manner().forOtherSessions());
  }

  /**
   * Returns a picture with a line shown or not, in the session's order; all shown is none named.
   */
  static Picture withLine(Picture before, String line, boolean shown, List<Line> all) {
    List<String> ids = all.stream().map(Line::id).toList();
    List<String> now = new ArrayList<>();
    for (String id : ids) {
      boolean was = before.lines().isEmpty() || before.lines().contains(id);
      if (id.equals(line) ? shown : was) {
        now.add(id);
      }
    }
    return before.withLines(now.size() == ids.size() || now.isEmpty() ? List.of() : now);
  }
}
