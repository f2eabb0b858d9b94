package org.fadeline.ui.imports;

import java.util.function.Consumer;
import javafx.scene.control.Button;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.Desk;
import org.fadeline.ui.state.MemoryRecord;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Workbench;

/** Where what was brought in goes: into the match in hand as one step, or into one of its own. */
final class Landing {
  private final Workbench bench;
  private final Navigation navigation;

  Landing(Workbench bench, Navigation navigation) {
    this.bench = bench;
    this.navigation = navigation;
  }

  /** Adds to the match in hand, as one step that undo takes back. */
  void add(Session from) {
    OpenSession open = bench.state().open();
    if (open == null) {
      return;
    }
    Session after = Joining.add(open.session(), from);
    int added = after.events().size() - open.session().events().size();
    if (added == 0) {
      bench.tell("Nothing was added: every event is in the match already");
      return;
    }
    bench.editing().edit("Bring in " + added + (added == 1 ? " event" : " events"), s -> after);
    navigation.show("Replay");
  }

  /** Puts a session in the place of the one in hand, as one step that undo takes back. */
  void put(String name, Session after) {
    bench.editing().edit(name, s -> after);
    navigation.show("Replay");
  }

  /** Opens as a match of its own, not saved yet. */
  void begin(Session session) {
    bench.install(
        new MemoryRecord(
            session,
            new OpenSession.Source(null, session.occasion().title(), null),
            Desk.Notice.NONE));
    navigation.show("Replay");
  }

  /** Makes a button that adds, which can be pressed while a match that may be changed is open. */
  Button addButton(String id, Runnable action) {
    Button button = new Button("Add to the open match");
    button.setId(id);
    button.setOnAction(e -> action.run());
    return button;
  }

  /** Tells whenever it changes whether there is a match to add to. */
  void watch(Consumer<Boolean> view) {
    Watch.part(bench.stateProperty(), s -> bench.editing().allowed(), view);
  }

  boolean canAdd() {
    return bench.editing().allowed();
  }
}
