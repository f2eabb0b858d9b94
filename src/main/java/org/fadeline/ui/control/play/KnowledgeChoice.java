package org.fadeline.ui.control.play;

import java.util.List;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.form.Segments;
import org.fadeline.ui.state.Workbench;

/** Whether what came after the playhead is shown, or only what was known then. */
public final class KnowledgeChoice extends Segments<Boolean> {
  /** Makes the choice; it follows what is chosen elsewhere. */
  public KnowledgeChoice(Workbench bench) {
    super(
        "Show",
        List.of(false, true),
        hindsight -> hindsight ? "with hindsight" : "as known then",
        bench::hindsight);
    Watch.part(bench.stateProperty(), s -> s.choices().hindsight(), this::choose);
  }
}
