package org.fadeline.ui.replay;

import java.util.List;
import java.util.Optional;
import org.fadeline.model.Line;
import org.fadeline.model.talk.Picture;
import org.fadeline.replay.Playhead.Range;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/** What the replay screen shows now, as pictures: at its zoom, with its lines, as known then. */
final class ReplayPictures {
  private ReplayPictures() {}

  static Optional<Picture> timeline(Workbench bench, Range shown) {
    WorkbenchState s = bench.state();
    OpenSession open = s.open();
    if (open == null || shown.millis() < 1000) {
      return Optional.empty();
    }
    List<String> lines =
        s.choices().hiddenLines().isEmpty()
            ? List.of()
            : open.session().lines().stream()
                .map(Line::id)
                .filter(id -> !s.choices().hiddenLines().contains(id))
                .toList();
    boolean whole = shown.equals(s.playhead().range());
    return Optional.of(
        Picture.of(Picture.Kind.TIMELINE, TalkTray.OPEN)
            .withLines(lines)
            .withWindow(
                new Picture.Window(
                    whole ? null : shown.from(), whole ? null : shown.to(), knownAt(s))));
  }

  static Optional<Picture> peg(Workbench bench) {
    WorkbenchState s = bench.state();
    return s.open() == null
        ? Optional.empty()
        : Optional.of(
            Picture.of(Picture.Kind.PEG, TalkTray.OPEN)
                .withWindow(new Picture.Window(null, null, s.playhead().at())));
  }

  private static @Nullable Long knownAt(WorkbenchState s) {
    return s.choices().hindsight() ? null : s.playhead().at();
  }
}
