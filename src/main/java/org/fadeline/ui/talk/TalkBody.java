package org.fadeline.ui.talk;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.model.talk.Slide;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.ScreenWithBody;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.state.TaskService.Answer;
import org.fadeline.ui.state.Workbench;

/** What the talk screen shows: slides in order, the slide as it will be, and what it is made of. */
final class TalkBody implements ScreenWithBody.Body {
  private static final String PREVIEW = "talk-preview";

  private final Workbench bench;
  private final TalkModel model;
  private final TalkDesk desk;
  private final SlideList slides;
  private final SlideStage stage;
  private final SlideEditor editor;
  private final TalkSettings settings;
  private final WritePane writePane;
  private final Label name = new Label();
  private final Button undo = new Button("Undo");
  private final Button write = new Button("Write or print…");
  private final BorderPane view = new BorderPane();
  private SlideWork.Shown shown = SlideWork.Shown.NOTHING;

  TalkBody(Workbench bench, TalkModel model, TalkDesk desk) {
    this.bench = bench;
    this.model = model;
    this.desk = desk;
    slides = new SlideList(model);
    stage = new SlideStage(desk.writing()::giveUp, desk::draft);
    editor = new SlideEditor(model, desk::withOpen);
    settings = new TalkSettings(model, desk::addSession);
    writePane = new WritePane(desk::write);
    desk.ownedBy(view);
    layOut();
    Watch.part(model.stateProperty(), s -> s, this::show);
    Watch.part(bench.stateProperty(), s -> s.review().latest(), review -> refresh());
    Watch.part(bench.tasks().runningProperty(), jobs -> jobs, stage::running);
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public void takeFocus() {
    slides.takeFocus();
  }

  void editTitle() {
    editor.takeFocus();
  }

  void write() {
    writePane.show(write);
  }

  private static Button button(String text, String says, Runnable action) {
    Button button = new Button(text);
    button.setAccessibleText(says);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> action.run());
    return button;
  }

  private void layOut() {
    name.getStyleClass().add("quiet");
    undo.setOnAction(e -> model.undo());
    undo.setMinWidth(Region.USE_PREF_SIZE);
    write.setId("write");
    write.getStyleClass().add("main-button");
    write.setMinWidth(Region.USE_PREF_SIZE);
    write.setOnAction(e -> write());
    Region space = Nodes.gap();
    Button draft = button("Draft from the review", "Draft the talk from the review", desk::draft);
    draft.setId("draft");
    HBox top =
        new HBox(
            8,
            draft,
            button("Open…", "Open a talk", desk::open),
            button("Save", "Save the talk", desk::save),
            undo,
            name,
            space,
            write);
    top.setAlignment(Pos.CENTER_LEFT);
    top.setStyle("-fx-padding: 0.7em 0.9em 0.7em 0.9em;");
    FlowPane below =
        new FlowPane(
            6,
            6,
            button("Add", "Add a slide", () -> model.add(Slide.EMPTY)),
            button("Duplicate", "Duplicate the slide", model::duplicate),
            button("Delete", "Delete the slide", model::delete));
    below.setStyle("-fx-padding: 0.5em;");
    VBox left = new VBox(slides.view(), below);
    VBox.setVgrow(slides.view(), Priority.ALWAYS);
    left.getStyleClass().add("panel");
    left.setPrefWidth(270);
    left.setMinWidth(230);
    stage.below(editor.notes());
    HBox.setHgrow(stage.view(), Priority.ALWAYS);
    TabPane right =
        new TabPane(tab("This slide", editor.view()), tab("The whole talk", settings.view()));
    right.getStyleClass().addAll("panel", "talk-tabs");
    right.setPrefWidth(330);
    right.setMinWidth(300);
    HBox middle = new HBox(10, left, stage.view(), right);
    middle.setStyle("-fx-padding: 0 0.9em 0.8em 0.9em;");
    view.setTop(top);
    view.setCenter(middle);
  }

  private static Tab tab(String title, Node content) {
    ScrollPane scroll = new ScrollPane(content);
    content.setStyle("-fx-padding: 0.8em;");
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("plain-scroll");
    Tab tab = new Tab(title, scroll);
    tab.setClosable(false);
    return tab;
  }

  private void show(TalkModel.State state) {
    slides.show(state);
    name.setText(
        (state.file() == null ? "" : String.valueOf(state.file().getFileName()))
            + (state.unsaved() ? (state.file() == null ? "not saved" : " · not saved") : ""));
    undo.setDisable(state.undo() == null);
    undo.setAccessibleText(state.undo() == null ? "Undo" : "Undo: " + state.undo());
    fill();
    refresh();
  }

  private void fill() {
    editor.show(model.state(), shown);
    settings.show(model.state(), shown);
  }

  /** Works the slide out again; the latest request wins. */
  void refresh() {
    TalkModel.State state = model.state();
    SlideWork.Open open = desk.openSession();
    bench
        .tasks()
        .submit(
            PREVIEW,
            "Drawing the slide",
            progress -> desk.work().show(state.talk(), state.slide(), open),
            new Answer<>(
                this::preview,
                failure ->
                    preview(
                        new SlideWork.Shown(
                            null,
                            List.of("The slide cannot be drawn: " + failure.getMessage()),
                            List.of(),
                            shown.sessions()))));
  }

  private void preview(SlideWork.Shown now) {
    shown = now;
    stage.show(now);
    fill();
  }
}
