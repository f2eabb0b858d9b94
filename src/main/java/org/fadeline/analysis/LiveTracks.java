package org.fadeline.analysis;

import java.util.HashMap;
import java.util.Map;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/** The bites of each line as a record read so far tells them, made once for what is the same. */
final class LiveTracks {
  private final ReviewSettings settings;
  private final Map<String, Made> made = new HashMap<>();

  /** A track and what it was made of. */
  private record Made(LineEffort line, Session cut, Grade grade, FadeTrack track) {
    // The same object stands for what has not changed; comparing all of it would cost more.
    @SuppressWarnings("ReferenceEquality")
    boolean isOf(LineEffort other, Session newCut, Grade newGrade) {
      return line == other && grade == newGrade && (grade != Grade.COUNTS || cut == newCut);
    }
  }

  LiveTracks(ReviewSettings settings) {
    this.settings = settings;
  }

  FadeTrack of(Session cut, LineEffort line, Grade grade) {
    @Nullable Made last = made.get(line.line().id());
    if (last == null || !last.isOf(line, cut, grade)) {
      last = new Made(line, cut, grade, new FadeTrack(cut, line, settings.measure(), grade));
      made.put(line.line().id(), last);
    }
    return last.track;
  }
}
