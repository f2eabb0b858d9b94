package org.fadeline.ui.setup;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.fadeline.export.FigureExport;
import org.fadeline.figure.BankSheetFigure;
import org.fadeline.figure.BankSheetFigure.Paper;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.Undoing;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.control.form.EntryBox;
import org.fadeline.ui.control.picture.Looks;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;

/** Sets up a match: from nothing, or what is in hand. */
public final class SetupScreen implements Screen {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS = new ScreenFacts("Set up", false, false, "Set up a match");

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final StackPane view = new StackPane();
  private final BeginPane begin;
  private final MatchPane match;
  private final LinesPane lines;
  private final SwimPane swim;
  private final HBox body;
  private final PathChooser paths;
  private boolean visible;
  private final Button print = new Button("Bank sheet to print…");
  private final Button take = new Button("Take lines from another match…");

  /** Makes the screen. */
  public SetupScreen(Workbench bench, PreferenceStore preferences, PathChooser paths) {
    this.paths = paths;
    this.bench = bench;
    this.preferences = preferences;
    EntryBox.Commit<Session> commit = (name, change) -> bench.editing().edit(name, change);
    begin = new BeginPane(bench, preferences);
    match = new MatchPane(commit);
    swim = new SwimPane(commit, this::pick);
    lines =
        new LinesPane(
            NewMatch.on(LocalDate.EPOCH, ZoneOffset.UTC), commit, bench::tell, swim::pick);
    take.setId("take-lines");
    take.setOnAction(e -> takeLines());
    print.setId("print-sheet");
    print.setOnAction(e -> printSheet());
    take.setMinWidth(Region.USE_PREF_SIZE);
    print.setMinWidth(Region.USE_PREF_SIZE);
    VBox water =
        new VBox(
            8,
            swim,
            new FlowPane(8, 8, take, print),
            Labels.wrapped(
                "Drag a line to where it lies; a new one goes where you press. Carbon poles and"
                    + " wet lines conduct: keep 30 m from power lines. In lightning put the pole"
                    + " down and shelter. Mind the bank: most drownings of anglers begin with a"
                    + " slip.",
                "quiet"));
    VBox.setVgrow(swim, Priority.ALWAYS);
    water.setStyle("-fx-padding: 0.8em;");
    body = new HBox(10, panel(match.view(), 370), panel(lines.view(), 370), panel(water, 420));
    HBox.setHgrow(body.getChildren().get(2), Priority.ALWAYS);
    body.setStyle("-fx-padding: 0.9em;");
    Watch.part(bench.stateProperty(), s -> s.open(), open -> changed());
    Watch.part(
        preferences.property(),
        p -> List.of(p.units(), p.look(), p.textPercent()),
        changed -> changed());
  }

  private static StackPane panel(Node node, double width) {
    StackPane panel = new StackPane(node);
    panel.getStyleClass().add("panel");
    panel.setPrefWidth(width);
    panel.setMinWidth(width * 0.8);
    panel.setMinHeight(0);
    return panel;
  }

  @Override
  public ScreenFacts facts() {
    return FACTS;
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public List<Command> commands() {
    return Undoing.of(title(), bench);
  }

  @Override
  public void takeFocus() {
    view.requestFocus();
  }

  @Override
  public void shown(boolean nowShown) {
    visible = nowShown;
    changed();
  }

  /** What nobody looks at is put together once somebody does. */
  private void changed() {
    if (visible) {
      show();
    }
  }

  private Units units() {
    return preferences.get().units();
  }

  private void pick(String lineId) {
    lines.pick(lineId, units(), bench.editing().allowed());
  }

  private void show() {
    OpenSession open = bench.state().open();
    Node shown = open == null ? begin.view() : body;
    if (!view.getChildren().contains(shown)) {
      view.getChildren().setAll(shown);
    }
    if (open == null) {
      begin.show();
      return;
    }
    Session session = open.session();
    boolean editable = bench.editing().allowed();
    Preferences now = preferences.get();
    match.show(session, now.units(), editable);
    lines.show(session, now.units(), editable);
    swim.show(session, Looks.onScreen(now), editable);
    take.setDisable(!editable);
  }

  private void printSheet() {
    OpenSession open = bench.state().open();
    Path chosen =
        open == null
            ? null
            : paths.save(
                Question.of("Bank sheet to print", view)
                    .named("bank-sheet.pdf")
                    .ofKinds(Kind.of("PDF", "*.pdf")),
                ".pdf");
    if (open != null && chosen != null) {
      writeSheet(open.session(), chosen);
    }
  }

  /** Writes the sheet of a session in the background, on A4. */
  private void writeSheet(Session session, Path file) {
    Paper paper = Paper.A4;
    FigureStyle style = FigureStyle.of(Theme.PRINT, units());
    bench.write(
        "bank-sheet",
        file,
        to ->
            FigureExport.pdf(
                "Bank sheet",
                BankSheetFigure.pages(session, style, paper),
                to,
                paper.width(),
                paper.height()));
  }

  private void takeLines() {
    Path chosen =
        paths.open(
            Question.of("Take lines from another match", view).ofKinds(Kind.SESSIONS_AND_TABLES));
    if (chosen != null) {
      bench.look(
          chosen,
          other ->
              bench
                  .editing()
                  .edit("Take lines from another match", s -> SetupLines.taken(s, other)));
    }
  }
}
