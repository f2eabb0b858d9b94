package org.fadeline.ui.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.log.Pad;
import org.fadeline.log.PadKeys;
import org.fadeline.model.Line;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Overlay;

/** The keys of the pads, each to be changed by pressing another. */
final class PadKeysSheet {
  private final List<Line> lines;
  private final Map<String, String> commands;
  private final Consumer<PadKeys> keep;
  private final GridPane grid = new GridPane();
  private final Label conflicts = new Label();
  private PadKeys keys;

  private PadKeysSheet(
      List<Line> lines, PadKeys keys, Map<String, String> commands, Consumer<PadKeys> keep) {
    this.lines = lines;
    this.keys = keys;
    this.commands = commands;
    this.keep = keep;
  }

  /**
   * Shows the keys.
   *
   * @param commands what other keys of the screen do, by key name
   * @param keep is told of each change
   */
  static void show(
      Overlay overlay,
      List<Line> lines,
      PadKeys keys,
      Map<String, String> commands,
      Consumer<PadKeys> keep) {
    PadKeysSheet sheet = new PadKeysSheet(lines, keys, commands, keep);
    Label how =
        new Label("Choose a pad's key, then press the new one. Backspace leaves the pad without.");
    how.setWrapText(true);
    sheet.conflicts.setWrapText(true);
    sheet.conflicts.setMinHeight(Region.USE_PREF_SIZE);
    sheet.conflicts.getStyleClass().add("warning-text");
    sheet.conflicts.setId("key-conflicts");
    sheet.grid.setHgap(6);
    sheet.grid.setVgap(6);
    sheet.grid.getStyleClass().add("pad-keys");
    sheet.lay();
    ScrollPane scroll = Nodes.scroll(sheet.grid);
    Button usual = new Button("Keys as they came");
    usual.setOnAction(e -> sheet.change(PadKeys.USUAL));
    overlay.show("Keys of the pads", new VBox(10, how, sheet.conflicts, scroll), usual);
  }

  private void lay() {
    grid.getChildren().clear();
    for (int i = 0; i < lines.size(); i++) {
      row(lines.get(i).name(), Pad.ofLine(i), i);
    }
    row("the match", Pad.around(), lines.size());
    List<PadKeys.Conflict> found = keys.conflicts(Pad.all(lines.size()), commands);
    conflicts.setText(found.stream().map(this::words).collect(Collectors.joining("\n")));
    conflicts.setManaged(!found.isEmpty());
  }

  private String words(PadKeys.Conflict conflict) {
    List<String> doing = new ArrayList<>(conflict.pads().stream().map(this::name).toList());
    conflict.command().ifPresent(doing::add);
    return PadGrid.display(conflict.key())
        + " would do more than one thing: "
        + String.join("; ", doing)
        + ".";
  }

  private String name(Pad pad) {
    String of = pad.line() == Pad.AROUND ? "the match" : lines.get(pad.line()).name();
    return PadGrid.word(pad.kind()) + ", " + of;
  }

  private void row(String title, List<Pad> pads, int row) {
    grid.add(whole(new Label(title)), 0, 2 * row);
    for (int i = 0; i < pads.size(); i++) {
      Pad pad = pads.get(i);
      Label word = whole(new Label(PadGrid.word(pad.kind())));
      word.getStyleClass().add("quiet");
      Button key = new Button(keys.key(pad).map(PadGrid::display).orElse("none"));
      key.setId("key-" + pad.slot().replace('.', '-'));
      key.setMinWidth(Region.USE_PREF_SIZE);
      key.setMaxWidth(Double.MAX_VALUE);
      key.setAccessibleText("Key of " + name(pad));
      key.setOnAction(e -> await(key, pad));
      grid.add(new VBox(2, word, key), 1 + i, 2 * row);
    }
  }

  /** Returns a label that is never cut short: where it has no room the sheet scrolls. */
  private static Label whole(Label label) {
    label.setMinWidth(Region.USE_PREF_SIZE);
    return label;
  }

  private void await(Button button, Pad pad) {
    button.setText("press…");
    button.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode().isModifierKey()) {
            return;
          }
          event.consume();
          change(keys.with(pad, name(event)));
        });
  }

  private static String name(KeyEvent event) {
    if (event.getCode() == KeyCode.BACK_SPACE) {
      return "";
    }
    return (event.isShiftDown() ? "Shift+" : "") + event.getCode().getName();
  }

  private void change(PadKeys changed) {
    keys = changed;
    keep.accept(changed);
    lay();
  }
}
