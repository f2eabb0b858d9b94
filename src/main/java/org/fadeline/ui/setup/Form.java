package org.fadeline.ui.setup;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.control.form.Entry;
import org.fadeline.ui.control.form.EntryBox;

/** Entries of a session side by side, in columns of equal width. */
final class Form {
  private final GridPane grid = new GridPane();
  private final List<EntryBox<Session>> boxes = new ArrayList<>();

  Form(int columns, List<Entry<Session>> entries, EntryBox.Commit<Session> commit) {
    grid.setHgap(10);
    grid.setVgap(8);
    for (int i = 0; i < columns; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / columns);
      grid.getColumnConstraints().add(column);
    }
    for (int i = 0; i < entries.size(); i++) {
      EntryBox<Session> box = new EntryBox<>(entries.get(i), commit);
      boxes.add(box);
      grid.add(box, i % columns, i / columns);
    }
  }

  Node view() {
    return grid;
  }

  void show(Session session, Units units, boolean editable) {
    boxes.forEach(b -> b.show(session, units, editable));
  }
}
