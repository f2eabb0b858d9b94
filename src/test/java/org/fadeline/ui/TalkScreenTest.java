package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.fadeline.analysis.Reviewer;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Source;
import org.fadeline.ui.control.Navigation;
import org.fadeline.ui.control.picture.FigureCanvas;
import org.fadeline.ui.control.picture.Fonts;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.window.MainWindow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The talk screen from outside. */
// TestFX calls start before each test, which sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class TalkScreenTest {
  private static final Path FILE = Path.of("hand.session.json");

  private final FakePaths paths = new FakePaths();
  private Workbench bench;
  private MainWindow window;

  @Start
  void start(Stage stage) {
    Fonts.load();
    PreferenceStore preferences = new PreferenceStore(Preferences.DEFAULT, changed -> {});
    FakeDesk desk = new FakeDesk().with("hand.session.json", HandMade.session());
    bench =
        new Workbench(desk, Reviewer::review, new DirectTaskService(), FadelineApp::checkThread);
    Navigation navigation = new Navigation();
    window =
        new MainWindow(
            stage, bench, preferences, Screens.of(bench, preferences, navigation, paths), paths);
    navigation.leadTo(window::showScreen);
    window.show();
    bench.open(FILE);
    window.showScreen("Talk");
  }

  @AfterEach
  void closeWindows() throws Exception {
    FxToolkit.cleanupStages();
  }

  private void draft(FxRobot robot) {
    Button button = robot.lookup("#draft").query();
    robot.interact(button::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static ListView<?> slides(FxRobot robot) {
    return robot.lookup("#slides").query();
  }

  private static String said(FxRobot robot) {
    FigureCanvas slide = robot.lookup("#slide").query();
    return String.valueOf(slide.getAccessibleText());
  }

  private static TextField title(FxRobot robot) {
    return robot.lookup("#slide-title").query();
  }

  @Test
  void aDraftIsMadeInOneActionAndShown(FxRobot robot) {
    draft(robot);
    assertTrue(slides(robot).getItems().size() >= 7);
    assertTrue(said(robot).startsWith("Invented Pool, peg 14"), said(robot));
    assertEquals("Invented Pool, peg 14", title(robot).getText());
  }

  @Test
  void slidesAreMovedCopiedDeletedAndAllIsUndone(FxRobot robot) {
    draft(robot);
    int before = slides(robot).getItems().size();
    robot.interact(() -> slides(robot).requestFocus());
    robot.push(KeyCode.ALT, KeyCode.DOWN);
    assertEquals(1, slides(robot).getSelectionModel().getSelectedIndex());
    robot.push(KeyCode.CONTROL, KeyCode.D);
    assertEquals(before + 1, slides(robot).getItems().size());
    robot.push(KeyCode.DELETE);
    robot.push(KeyCode.DELETE);
    assertEquals(before - 1, slides(robot).getItems().size());
    for (int i = 0; i < 4; i++) {
      robot.push(KeyCode.CONTROL, KeyCode.Z);
    }
    assertEquals(before, slides(robot).getItems().size());
    assertEquals("Invented Pool, peg 14", title(robot).getText());
  }

  @Test
  void whatIsTypedIsOnTheSlideAndIsOneStep(FxRobot robot) {
    draft(robot);
    robot.interact(() -> title(robot).setText("Off"));
    robot.interact(() -> title(robot).appendText(" we went"));
    assertTrue(said(robot).startsWith("Off we went."), said(robot));
    robot.interact(() -> slides(robot).requestFocus());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals("Invented Pool, peg 14", title(robot).getText());
    robot.push(KeyCode.CONTROL, KeyCode.Y);
    assertEquals("Off we went", title(robot).getText());
  }

  @Test
  void tooMuchIsRemarked(FxRobot robot) {
    draft(robot);
    VBox remarks = robot.lookup("#remarks").query();
    assertEquals(List.of(), remarks.getChildren());
    robot.interact(() -> title(robot).setText("far too long a title ".repeat(6)));
    assertTrue(((Label) remarks.getChildren().get(0)).getText().contains("cut"));
  }

  @Test
  void namesAreLeftOutAndListed(FxRobot robot) {
    draft(robot);
    CheckBox unnamed = robot.from(window.scene().getRoot()).lookup("#unnamed").query();
    robot.interact(unnamed::fire);
    assertFalse(said(robot).contains("Invented Pool"), said(robot));
    Label left = robot.lookup("#left-out").query();
    assertTrue(left.getText().contains("Invented Pool, peg 14"), left.getText());
    write(robot, "PPTX", () -> {});
    assertEquals("talk.pptx", paths.last().name(), "nor does the file's name tell");
  }

  /** Asks for a kind, changes what it asks, and presses the button as a hand does. */
  private void write(FxRobot robot, String as, Runnable change) {
    Button open = robot.lookup("#write").query();
    robot.interact(open::fire);
    WaitForAsyncUtils.waitForFxEvents();
    ComboBox<?> box = robot.lookup("#write-as").query();
    List<String> kinds = box.getItems().stream().map(String::valueOf).toList();
    robot.interact(() -> box.getSelectionModel().select(kinds.indexOf(as)));
    robot.interact(change);
    Button go = robot.lookup("#write-go").query();
    robot.interact(go::requestFocus);
    robot.interact(go::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void theWidthTypedIsTheWidthWritten(FxRobot robot, @TempDir Path folder) throws IOException {
    draft(robot);
    Path file = folder.resolve("one.png");
    paths.answer(file);
    write(
        robot,
        "ONE_PNG",
        () -> {
          TextField width =
              robot
                  .lookup(
                      (Node n) ->
                          n instanceof Spinner<?> spinner
                              && "Width in pixels".equals(spinner.getAccessibleText()))
                  .queryAs(Spinner.class)
                  .getEditor();
          width.requestFocus();
          width.setText("800");
        });
    assertEquals(800, ImageIO.read(file.toFile()).getWidth());
  }

  @Test
  void aPicturePutAsideElsewhereBecomesASlide(FxRobot robot) {
    draft(robot);
    int before = slides(robot).getItems().size();
    robot.interact(
        () ->
            bench
                .tray()
                .put(
                    new TalkTray.Put(
                        "The first hour",
                        Picture.of(Picture.Kind.TIMELINE, "x")
                            .withWindow(
                                new Picture.Window(
                                    HandMade.ALL_IN, HandMade.minute(60), HandMade.minute(30))),
                        List.of(
                            new Source(
                                "x",
                                requireNonNull(
                                    requireNonNull(bench.state().open()).source().path()))))));
    assertEquals(before + 1, slides(robot).getItems().size());
    assertEquals("The first hour", title(robot).getText());
    assertTrue(said(robot).startsWith("The first hour."), said(robot));
    assertEquals(List.of(), bench.tray().waitingProperty().get());
  }

  @Test
  void whatReplayAndReviewShowIsPutOnTheTalkByAKey(FxRobot robot) {
    robot.interact(
        () -> {
          window.showScreen("Replay");
          bench.hindsight(false);
          bench.transport().seek(HandMade.minute(30));
        });
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    robot.interact(() -> window.showScreen("Review"));
    robot.push(KeyCode.ALT, KeyCode.DIGIT2);
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
    robot.interact(() -> window.showScreen("Talk"));
    assertEquals(2, slides(robot).getItems().size());
    assertTrue(said(robot).startsWith("Running weight."), said(robot));
    robot.interact(() -> slides(robot).getSelectionModel().select(0));
    assertTrue(said(robot).startsWith("The match, line by line."), said(robot));
    assertFalse(said(robot).contains("To take home"));
  }

  // Dragging within a window needs a window system: without one JavaFX fails now and then.
  @Test
  @Tag("window")
  void aSlideIsDraggedToAnotherPlace(FxRobot robot) {
    draft(robot);
    robot.drag(cell(robot, "1, Invented Pool")).dropTo(cell(robot, "4, "));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(3, slides(robot).getSelectionModel().getSelectedIndex());
    assertEquals("Invented Pool, peg 14", title(robot).getText());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertTrue(cell(robot, "1, Invented Pool").isVisible());
  }

  private static Node cell(FxRobot robot, String start) {
    return robot
        .lookup(
            (Node n) ->
                n instanceof ListCell && String.valueOf(n.getAccessibleText()).startsWith(start))
        .query();
  }

  @Test
  void notesAreKeptWithTheSlideAndUndone(FxRobot robot) {
    draft(robot);
    TextInputControl notes = robot.lookup("#slide-notes").query();
    String before = notes.getText();
    robot.interact(() -> notes.setText("Tell of the wind"));
    robot.interact(() -> slides(robot).getSelectionModel().select(1));
    assertFalse(notes.getText().contains("wind"));
    robot.interact(() -> slides(robot).getSelectionModel().select(0));
    assertEquals("Tell of the wind", notes.getText());
    assertFalse(said(robot).contains("wind"), "notes are not on the slide");
    robot.interact(() -> slides(robot).requestFocus());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, notes.getText());
  }

  @Test
  void buttonsAddDuplicateDeleteAndUndo(FxRobot robot) {
    draft(robot);
    int before = slides(robot).getItems().size();
    fire(robot, "Add a slide");
    assertEquals("", title(robot).getText());
    fire(robot, "Duplicate the slide");
    assertEquals(before + 2, slides(robot).getItems().size());
    fire(robot, "Delete the slide");
    assertEquals(before + 1, slides(robot).getItems().size());
    fire(robot, "Undo: Delete the slide");
    assertEquals(before + 2, slides(robot).getItems().size());
  }

  private static void fire(FxRobot robot, String says) {
    Button button =
        robot.lookup((Node n) -> n instanceof Button && says.equals(n.getAccessibleText())).query();
    robot.interact(button::fire);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** A slide is drawn behind; when it is, what is being typed meanwhile must not be taken away. */
  @Test
  void aTimeBeingTypedStaysWhenTheSlideIsShownAnew(FxRobot robot) {
    draft(robot);
    robot.interact(() -> slides(robot).getSelectionModel().select(1));
    WaitForAsyncUtils.waitForFxEvents();
    TextField to =
        robot
            .lookup(
                (Node n) ->
                    n instanceof TextField f
                        && String.valueOf(f.getAccessibleText()).startsWith("To,"))
            .query();
    robot.interact(to::requestFocus);
    robot.interact(() -> to.setText("12:40"));
    robot.interact(() -> title(robot).setText("Shown anew"));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("12:40", to.getText());
    robot.interact(() -> slides(robot).requestFocus());
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("12:40", to.getText());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals("", to.getText(), "it was taken, and is taken back as a step");
  }

  @Test
  void everyPictureOfOneMatchCanBeChosen(FxRobot robot) {
    draft(robot);
    @SuppressWarnings("unchecked") // the box holds pictures
    ComboBox<Picture.Kind> box =
        (ComboBox<Picture.Kind>)
            robot
                .lookup(
                    (Node n) ->
                        n instanceof ComboBox<?> b
                            && b.getItems().contains(Picture.Kind.CATCH_WEIGHTS))
                .query();
    for (Picture.Kind kind : Picture.Kind.values()) {
      if (kind.sessions() == 1) {
        robot.interact(() -> box.setValue(kind));
        WaitForAsyncUtils.waitForFxEvents();
        VBox remarks = robot.lookup("#remarks").query();
        for (Node remark : remarks.getChildren()) {
          String text = ((Label) remark).getText();
          assertFalse(
              text.contains("cannot be shown") || text.contains("drawn"), kind + ": " + text);
        }
        assertTrue(said(robot).length() > 60, said(robot));
      }
    }
  }
}
