package org.fadeline.ui.log;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.log.LogClock;
import org.fadeline.log.RecordingAlignment;
import org.fadeline.model.Match;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Segments;
import org.jspecify.annotations.Nullable;

/** The clock that presses are logged at, large, with the recording's controls beside it. */
final class ClockPane {
  private static final long STEP_MILLIS = 10_000;
  private static final long FAR_OUTSIDE_MILLIS = 3 * 3_600_000;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);
  private static final String LIVE_CAUTION =
      "Logs only: no rates or verdicts while the match is on, unless its rules are said to allow"
          + " them (Set up). Some matches restrict electronic aids: ask the organiser.";
  private static final String SAFETY =
      "Keep 30 m from power lines; pole down in lightning; mind the bank.";

  private final LogDesk desk;
  private final Runnable done;
  private final Label time = new Label();
  private final Label place = new Label();
  private final Label caution = new Label();
  private final Label outside = new Label();
  private final Label wrong = new Label();
  private final Button play = new Button("Play");
  private final TextField seen = new TextField();
  private final FlowPane recording = new FlowPane(6, 6);
  private final Segments<LogClock.Source> source;
  private final HBox view;
  private final List<RecordingAlignment.Point> points = new ArrayList<>();
  private ZoneId zone = ZoneId.of("UTC");
  private @Nullable Match match;

  /**
   * The clock of a desk.
   *
   * @param done gives the keys back to the pads once something was chosen or pressed here
   */
  ClockPane(LogDesk desk, Runnable done) {
    this.desk = desk;
    this.done = done;
    time.getStyleClass().add("log-clock");
    time.setMinWidth(Region.USE_PREF_SIZE);
    time.setId("log-clock");
    place.getStyleClass().add("quiet");
    source =
        new Segments<>(
            "Time of what is logged",
            List.of(LogClock.Source.values()),
            s -> s == LogClock.Source.LIVE ? "As it happens" : "From a recording",
            this::choose);
    play.setId("log-play");
    play.setOnAction(e -> pressed(this::togglePlay));
    seen.setPromptText("true time, 11:42:10");
    seen.setId("log-seen");
    seen.setPrefColumnCount(11);
    seen.setAccessibleText("True time of the moment now seen in the recording");
    seen.setOnAction(e -> alignHere());
    Button align = new Button("Align here");
    align.setId("log-align");
    align.setOnAction(e -> alignHere());
    recording
        .getChildren()
        .addAll(
            play,
            jump("−10 s", -STEP_MILLIS),
            jump("+10 s", STEP_MILLIS),
            speed("Slower", 0.5),
            speed("Faster", 2),
            seen,
            align);
    recording.setAlignment(Pos.CENTER_LEFT);
    for (Label label : List.of(caution, outside, wrong)) {
      label.setWrapText(true);
      label.setMinHeight(Region.USE_PREF_SIZE);
    }
    caution.getStyleClass().add("quiet");
    wrong.getStyleClass().add("warning-text");
    outside.getStyleClass().add("warning-text");
    outside.setId("log-outside");
    FlowPane first = new FlowPane(14, 4, source, place);
    first.setAlignment(Pos.CENTER_LEFT);
    VBox rest = new VBox(6, first, recording, caution, outside, wrong);
    HBox.setHgrow(rest, Priority.ALWAYS);
    view = new HBox(20, time, rest);
    view.setAlignment(Pos.CENTER_LEFT);
    view.getStyleClass().add("panel");
    view.setStyle("-fx-padding: 0.6em 1.2em 0.6em 1.2em;");
  }

  HBox view() {
    return view;
  }

  /** A button keeps Space and Enter to itself while it has the focus, which are the pads' keys. */
  private void pressed(Runnable action) {
    action.run();
    done.run();
  }

  private Button jump(String words, long millis) {
    Button button = new Button(words);
    button.setOnAction(e -> pressed(() -> jump(millis)));
    return button;
  }

  private Button speed(String words, double factor) {
    Button button = new Button(words);
    button.setOnAction(e -> pressed(() -> faster(factor)));
    return button;
  }

  /** Plays the recording, or lets it stand. */
  void togglePlay() {
    desk.turn((c, now) -> c.playing(!c.running(), now));
  }

  /** Jumps in the recording. */
  void jump(long millis) {
    desk.turn((c, now) -> c.at(c.positionAt(now) + millis, now));
  }

  /** Plays the recording faster or slower by a factor. */
  void faster(double factor) {
    desk.turn((c, now) -> c.atSpeed(c.speed() * factor, now));
  }

  private void choose(LogClock.Source chosen) {
    desk.turn((c, now) -> chosen == LogClock.Source.LIVE ? c.live(now) : c.fromRecording(now));
    done.run();
  }

  /** Takes the moment now seen as one of the typed time; the second such moment tells the drift. */
  private void alignHere() {
    Optional<Long> instant = Say.typedTime(seen.getText(), desk.instant(), zone);
    if (instant.isEmpty()) {
      tell("“" + seen.getText() + "” is no time; type it like 11:42:10");
      return;
    }
    if (points.size() == 2) {
      points.remove(1);
    }
    points.add(new RecordingAlignment.Point(Math.round(desk.position()), instant.get()));
    String problem = desk.align(points);
    tell(problem);
    if (problem == null) {
      seen.clear();
      done.run();
    } else if (points.size() == 2) {
      points.remove(1);
    }
  }

  private void tell(@Nullable String problem) {
    wrong.setText(problem == null ? "" : Say.capital(problem) + ".");
    Nodes.show(wrong, problem != null);
  }

  /** Shows another session's clock. */
  void takeUp(Session session) {
    points.clear();
    match = session.match();
    zone = session.occasion().zone();
    tell(null);
  }

  /** Shows how the clock is set. */
  void show(LogClock clock) {
    boolean live = clock.source() == LogClock.Source.LIVE;
    source.choose(clock.source());
    Nodes.show(recording, !live);
    play.setText(clock.running() ? "Pause" : "Play");
    caution.setText(live ? LIVE_CAUTION + " " + SAFETY : "");
    Nodes.show(caution, live);
    tick();
  }

  /** Shows the time now. */
  void tick() {
    LogClock clock = desk.clockProperty().get();
    time.setText(Say.clock(desk.instant(), zone));
    boolean live = clock.source() == LogClock.Source.LIVE;
    tellOutside(live);
    place.setText(
        live
            ? "the present"
            : Say.span(Math.round(desk.position()))
                + " into the recording, "
                + String.format(Locale.ROOT, "%.4g", clock.speed()).replaceAll("\\.?0+$", "")
                + "×"
                + drift(clock.alignment()));
  }

  /** Says so where the present is no time of this match; logging goes on all the same. */
  private void tellOutside(boolean live) {
    Match now = match;
    boolean told =
        live
            && now != null
            && (desk.instant() < now.allIn() - FAR_OUTSIDE_MILLIS
                || desk.instant() > now.allOut() + FAR_OUTSIDE_MILLIS);
    Nodes.show(outside, told);
    if (told && now != null) {
      String day = DAY.format(Instant.ofEpochMilli(now.allIn()).atZone(zone));
      outside.setText(
          "This match is on "
              + day
              + ". What is logged as it happens will lie outside it: correct the match's day in Set"
              + " up, or log from a recording.");
    }
  }

  private static String drift(RecordingAlignment alignment) {
    double drift = alignment.driftSecondsAnHour();
    return Math.abs(drift) < 0.05
        ? ""
        : String.format(
            Locale.ROOT,
            ", the camera %s %.1f s an hour",
            drift > 0 ? "gains" : "loses",
            Math.abs(drift));
  }
}
