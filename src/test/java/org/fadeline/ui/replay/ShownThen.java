package org.fadeline.ui.replay;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.Theme;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.model.Units;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;

/** What Replay shows of a moment, in words and figures. */
final class ShownThen {
  private static final FigureStyle STYLE = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
  private static final long MARK_BEFORE = 8 * 60_000L + 31_500;

  private ShownThen() {}

  /** All that is said of a moment: readout, second cursor, turning points, peg and timeline. */
  static List<Object> at(Workbench bench, long at) {
    bench.transport().seek(at);
    Readout readout = Readout.of(bench.state(), Units.LB_OZ_AND_METRES).orElseThrow();
    bench.picking().mark(at - MARK_BEFORE);
    WorkbenchState state = bench.state();
    OpenSession open = requireNonNull(state.open());
    PegFigure peg = new PegFigure(open.session(), open.track().frameAt(at), STYLE);
    TimelineFigure timeline =
        new TimelineFigure(requireNonNull(state.told()), STYLE).with(Knowledge.asKnownAt(at));
    List<Object> all = new ArrayList<>(readout.cards());
    all.addAll(
        List.of(
            readout.clock(),
            readout.toGo(),
            readout.weight(),
            readout.pace(),
            Between.words(state, Units.LB_OZ_AND_METRES),
            state.turningPoints(),
            peg.description(),
            timeline.description(),
            timeline.figures(Knowledge.asKnownAt(at))));
    return all;
  }
}
