package org.fadeline.ui.talk;

import java.util.List;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.fadeline.figure.SlideFigure;
import org.fadeline.ui.control.Invitation;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.state.TaskService;
import org.jspecify.annotations.Nullable;

/** The slide as it will be, what is to be said against it, and how far a writing is. */
final class SlideStage {
  private final FigureCanvas canvas = new FigureCanvas();
  private final Invitation invitation;
  private final Frame frame;
  private final VBox remarks = new VBox(3);
  private final ProgressBar bar = new ProgressBar();
  private final Label doing = new Label();
  private final HBox writing;
  private final VBox view;

  /**
   * Makes the stage.
   *
   * @param giveUp ends a writing
   * @param draft makes slides from the review
   */
  SlideStage(Runnable giveUp, Runnable draft) {
    Button drafting = new Button("Draft the slides");
    drafting.setId("draft-first");
    drafting.getStyleClass().add("main-button");
    drafting.setOnAction(e -> draft.run());
    invitation =
        new Invitation(
            "A talk from this match",
            "From the review come slides with pictures and words, to change and put in your own"
                + " order. Or add slides one by one.",
            drafting);
    frame = new Frame(canvas, invitation);
    canvas.setId("slide");
    canvas.getStyleClass().add("slide");
    Button stop = new Button("Give up");
    stop.setOnAction(e -> giveUp.run());
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setAccessibleText("How much is written");
    HBox.setHgrow(bar, Priority.ALWAYS);
    writing = new HBox(10, doing, bar, stop);
    writing.setAlignment(Pos.CENTER_LEFT);
    remarks.setMinHeight(0);
    remarks.setId("remarks");
    view = new VBox(10, frame, remarks, writing);
    VBox.setVgrow(frame, Priority.SOMETIMES);
    frame.maxHeightProperty().bind(frame.widthProperty().divide(frame.shape));
    running(List.of());
  }

  Node view() {
    return view;
  }

  /** Puts something below the slide, which takes the room the slide leaves. */
  void below(Node node) {
    VBox.setVgrow(node, Priority.ALWAYS);
    view.getChildren().add(node);
  }

  void show(SlideWork.Shown shown) {
    SlideFigure page = shown.page();
    frame.shape.set(page == null ? 16.0 / 9 : page.aspect());
    canvas.setVisible(page != null);
    invitation.setVisible(page == null && shown.remarks().isEmpty());
    canvas.show(
        page == null ? null : page::paint,
        page == null ? "" : page.title() + ". " + page.description());
    frame.requestLayout();
    remarks.getChildren().setAll(shown.remarks().stream().map(SlideStage::remark).toList());
  }

  private static Node remark(String text) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.getStyleClass().add("warning-text");
    label.setMinHeight(Label.USE_PREF_SIZE);
    return label;
  }

  void running(List<TaskService.Running> jobs) {
    TaskService.@Nullable Running job =
        jobs.stream().filter(r -> r.channel().equals(TalkWriting.CHANNEL)).findFirst().orElse(null);
    Nodes.show(writing, job != null);
    if (job != null) {
      doing.setText(job.title());
      bar.setProgress(job.done());
    }
  }

  /** Keeps the slide's shape, as large as there is room. */
  private static final class Frame extends Pane {
    private final FigureCanvas slide;
    private final Invitation invitation;
    private final DoubleProperty shape = new SimpleDoubleProperty(16.0 / 9);

    Frame(FigureCanvas slide, Invitation invitation) {
      this.slide = slide;
      this.invitation = invitation;
      getChildren().addAll(slide, invitation);
      setMinSize(0, 0);
      setPrefHeight(2000);
    }

    @Override
    protected void layoutChildren() {
      double w = Math.min(getWidth(), getHeight() * shape.get());
      double h = w / shape.get();
      invitation.resizeRelocate(0, 0, getWidth(), getHeight());
      slide.resizeRelocate(Math.floor((getWidth() - w) / 2), 0, Math.floor(w), Math.floor(h));
    }
  }
}
