package org.fadeline.ui.replay;

import org.fadeline.model.Units;
import org.fadeline.replay.ReplayFrame.Totals;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.WorkbenchState;

/** The difference between the two cursors. */
final class Between {
  private Between() {}

  /** Returns the words, or an empty text without a second cursor. */
  static String words(WorkbenchState state, Units units) {
    Long mark = state.selection().mark();
    OpenSession open = state.open();
    if (mark == null || open == null) {
      return "";
    }
    long at = state.playhead().at();
    String from = Say.shortClock(mark, open.session().occasion().zone());
    String span = Say.difference(at - mark) + (mark <= at ? " since " : " before ") + from;
    if (mark > at && !state.choices().hindsight()) {
      // What lies between is still to come.
      return span;
    }
    Totals early = open.track().frameAt(Math.min(mark, at)).totals();
    Totals late = open.track().frameAt(Math.max(mark, at)).totals();
    int fish = late.fish() - early.fish();
    double grams = late.weightG() - early.weightG();
    String caught = grams > 0 ? Say.weight(grams, units) + ", " + Say.fish(fish) : Say.fish(fish);
    return span + "\n" + caught;
  }
}
