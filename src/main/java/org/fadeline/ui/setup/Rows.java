package org.fadeline.ui.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.control.form.Entry;
import org.fadeline.ui.control.form.EntryBox;

/** A list of a session, such as its weather notes: a form each, added to and taken from. */
final class Rows {
  private final VBox view = new VBox(10);
  private final List<Form> forms = new ArrayList<>();
  private final Kind kind;
  private final EntryBox.Commit<Session> commit;
  private final Button add;

  /**
   * What is listed.
   *
   * @param word such as "weather note"
   * @param count how many a session has
   * @param entries those of one, by its place in the list
   * @param added the session with one more
   * @param removed the session without one
   */
  record Kind(
      String word,
      ToIntFunction<Session> count,
      IntFunction<List<Entry<Session>>> entries,
      UnaryOperator<Session> added,
      BiFunction<Session, Integer, Session> removed) {}

  Rows(Kind kind, EntryBox.Commit<Session> commit) {
    this.kind = kind;
    this.commit = commit;
    add = new Button("Add a " + kind.word());
    add.setId("add-" + kind.word().replace(' ', '-'));
    add.setOnAction(e -> commit.change("Add " + kind.word(), kind.added()));
    view.getChildren().add(add);
  }

  VBox view() {
    return view;
  }

  void show(Session session, Units units, boolean editable) {
    int count = kind.count().applyAsInt(session);
    if (count != forms.size()) {
      rebuild(count);
    }
    forms.forEach(f -> f.show(session, units, editable));
    view.getChildren().forEach(n -> n.setDisable(!editable));
  }

  private void rebuild(int count) {
    forms.clear();
    view.getChildren().clear();
    for (int i = 0; i < count; i++) {
      int place = i;
      Form form = new Form(4, kind.entries().apply(i), commit);
      forms.add(form);
      Button remove = new Button("Remove this " + kind.word());
      remove.getStyleClass().add("link");
      remove.setOnAction(
          e -> commit.change("Remove " + kind.word(), s -> kind.removed().apply(s, place)));
      view.getChildren().add(new VBox(2, form.view(), remove));
    }
    view.getChildren().add(add);
  }
}
