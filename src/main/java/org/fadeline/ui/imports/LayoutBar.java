package org.fadeline.ui.imports;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.fadeline.io.CsvMapping;
import org.fadeline.io.CsvPreview;
import org.fadeline.io.WholeFile;
import org.fadeline.model.EventKind;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.TaskService;
import org.fadeline.ui.state.Workbench;

/**
 * The layout of a table of somebody else's: what its words for events mean, kept in a file and
 * taken from one with all else that was chosen.
 */
final class LayoutBar {
  private static final String UNKNOWN = "no event";
  private static final int MOST_WORDS = 24;
  private static final Kind LAYOUTS = Kind.of("Layouts of tables", "*.json");

  private final Workbench bench;
  private final PathChooser paths;
  private final Consumer<UnaryOperator<CsvMapping>> change;
  private final Supplier<CsvMapping> inHand;
  private final FlowPane view = new FlowPane(14, 8);
  private final Button save = new Button("Keep this layout…");
  private final Button load = new Button("Take a kept layout…");

  /**
   * Makes the bar.
   *
   * @param change is told when a word or the whole layout is taken for something else
   * @param inHand gives the layout as chosen so far
   */
  LayoutBar(
      Workbench bench,
      PathChooser paths,
      Consumer<UnaryOperator<CsvMapping>> change,
      Supplier<CsvMapping> inHand) {
    this.bench = bench;
    this.paths = paths;
    this.change = change;
    this.inHand = inHand;
    save.setId("import-layout-save");
    load.setId("import-layout-load");
    save.setOnAction(e -> chooseSave());
    load.setOnAction(e -> chooseLoad());
    show(Optional.empty(), CsvMapping.NONE);
  }

  Node view() {
    return view;
  }

  /** Shows a box for each word of the table that is no event's here, or is told to be one. */
  void show(Optional<CsvPreview> preview, CsvMapping mapping) {
    view.getChildren().setAll(load, save);
    load.setDisable(preview.isEmpty());
    save.setDisable(preview.isEmpty());
    preview.ifPresent(
        table ->
            words(table, mapping).stream()
                .limit(MOST_WORDS)
                .forEach(word -> view.getChildren().add(box(word, mapping))));
  }

  /** Returns the table's own words for events, in lower case, in order. */
  static List<String> words(CsvPreview table, CsvMapping mapping) {
    int column = table.header().indexOf(mapping.columns().getOrDefault("event", "event"));
    TreeSet<String> words = new TreeSet<>();
    for (List<String> row : table.rows()) {
      if (column >= 0 && column < row.size() && !row.get(column).isBlank()) {
        String word = row.get(column).strip().toLowerCase(Locale.ROOT);
        if (EventKind.ofWord(word).isEmpty() || mapping.events().containsKey(word)) {
          words.add(word);
        }
      }
    }
    return List.copyOf(words);
  }

  private HBox box(String word, CsvMapping mapping) {
    Label label =
        Labels.line(
            "“" + (word.length() > 30 ? word.substring(0, 30) + "…" : word) + "” is", "quiet");
    ComboBox<String> kinds = new ComboBox<>();
    kinds.getItems().add(UNKNOWN);
    for (EventKind kind : EventKind.values()) {
      kinds.getItems().add(kind.word());
    }
    EventKind taken = mapping.events().get(word);
    kinds.setValue(taken == null ? UNKNOWN : taken.word());
    kinds.setId("word-" + word.replace(' ', '-'));
    kinds.setAccessibleText("What “" + word + "” is");
    kinds.setOnAction(e -> change.accept(m -> taken(m, word, kinds.getValue())));
    label.setLabelFor(kinds);
    HBox pair = new HBox(6, label, kinds);
    pair.setAlignment(Pos.CENTER_LEFT);
    return pair;
  }

  private static CsvMapping taken(CsvMapping m, String word, String ours) {
    Map<String, EventKind> events = new TreeMap<>(m.events());
    events.remove(word);
    EventKind.ofWord(ours).ifPresent(kind -> events.put(word, kind));
    return new CsvMapping(m.columns(), events, m.dateOrder(), m.delimiter(), m.decimalComma());
  }

  private void chooseSave() {
    Path chosen =
        paths.save(
            Question.of("Keep this layout", view).named("layout.json").ofKinds(LAYOUTS), ".json");
    if (chosen != null) {
      save(chosen);
    }
  }

  private void chooseLoad() {
    Path chosen = paths.open(Question.of("Take a kept layout", view).ofKinds(LAYOUTS));
    if (chosen != null) {
      load(chosen);
    }
  }

  /** Keeps the layout in a file, in the background. */
  private void save(Path to) {
    String text = inHand.get().toJson();
    bench.write("import-layout", to, file -> WholeFile.write(file, text));
  }

  /** Takes the layout from a file, in the background; one that cannot be used changes nothing. */
  private void load(Path from) {
    bench
        .tasks()
        .submit(
            "import-layout",
            "Reading the layout",
            progress -> CsvMapping.load(from),
            new TaskService.Answer<>(
                loaded ->
                    loaded
                        .mapping()
                        .ifPresentOrElse(
                            mapping -> change.accept(m -> mapping), () -> refuse(from, loaded)),
                failure -> bench.report(Trouble.of("The layout was not read", what(failure)))));
  }

  private static String what(Exception failure) {
    return failure.getMessage() + ". Nothing was changed.";
  }

  private void refuse(Path from, CsvMapping.Loaded loaded) {
    String problems =
        loaded.report().problems().stream()
            .limit(5)
            .map(p -> "row " + p.row() + ": " + p.what() + "; " + p.whatToDo())
            .collect(Collectors.joining(". "));
    bench.report(
        Trouble.of(
            from.getFileName() + " cannot be used as a layout",
            problems + ". Nothing was changed."));
  }
}
