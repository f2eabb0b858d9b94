package org.fadeline.ui.talk;

import java.util.List;
import org.fadeline.model.talk.Slide;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.file.FileDrops;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.Workbench;

/** Where a club talk is composed. It is built when first shown, so that the window opens sooner. */
public final class TalkScreen extends ScreenWithBody<TalkBody> {
  /** What the window must know of it: a talk names its own matches and seasons. */
  public static final ScreenFacts FACTS = new ScreenFacts("Talk", false, true, null);

  private static final String GROUP = "Talk";

  private final Workbench bench;
  private final TalkModel model = new TalkModel();
  private final TalkDesk desk;

  /** Makes the screen, which asks {@code paths} for files and folders. */
  public TalkScreen(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    super(FACTS);
    this.bench = bench;
    this.desk = new TalkDesk(bench, preferences, model, paths);
    FileDrops.on(view(), TalkFiles::isTalk, desk::open);
    Watch.part(bench.tray().waitingProperty(), List::size, this::takeUp);
  }

  @Override
  protected TalkBody makeBody() {
    TalkBody made = new TalkBody(bench, model, desk);
    desk.recover();
    return made;
  }

  private void takeUp(int waiting) {
    if (waiting > 0) {
      for (TalkTray.Put put : bench.tray().take()) {
        model.takeUp(put);
      }
    }
  }

  @Override
  public List<Command> commands() {
    return List.of(
        Command.of(GROUP, "Draft the talk from the review", desk::draft, "Shortcut+Shift+D"),
        Command.of(GROUP, "Add a slide", () -> model.add(Slide.EMPTY), "Insert"),
        Command.of(GROUP, "Duplicate the slide", model::duplicate, "Shortcut+D"),
        Command.of(GROUP, "Delete the slide", model::delete, "Delete"),
        Command.of(GROUP, "Slide earlier", () -> move(-1), "Alt+Up"),
        Command.of(GROUP, "Slide later", () -> move(1), "Alt+Down"),
        Command.of(GROUP, "Next slide", () -> step(1), "Page_Down"),
        Command.of(GROUP, "Slide before", () -> step(-1), "Page_Up"),
        Command.of(GROUP, "Title of the slide", () -> body().editTitle(), "Enter"),
        Command.of(GROUP, "Undo", model::undo, "Shortcut+Z"),
        Command.of(GROUP, "Redo", model::redo, "Shortcut+Shift+Z", "Shortcut+Y"),
        Command.everywhere(GROUP, "Open a talk", desk::open, "Shortcut+Alt+O"),
        Command.everywhere(GROUP, "Save the talk", desk::save, "Shortcut+Alt+S"),
        Command.everywhere(GROUP, "Write the talk", () -> body().write(), "Shortcut+Alt+W"));
  }

  private void move(int way) {
    int at = model.state().chosen();
    model.move(at, at + way);
  }

  private void step(int way) {
    model.choose(model.state().chosen() + way);
  }

  @Override
  public void shown(boolean shown) {
    if (shown) {
      body().refresh();
    }
  }
}
