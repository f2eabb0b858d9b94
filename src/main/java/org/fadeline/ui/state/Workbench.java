package org.fadeline.ui.state;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.replay.Playhead;
import org.fadeline.ui.state.Activity.Trouble;
import org.jspecify.annotations.Nullable;

/**
 * The one place where the window's state changes. Everything shown is read from one immutable
 * record in one read-only property; everything done is a command here. Commands belong to one
 * thread, and each checks that.
 */
public final class Workbench implements AutoCloseable {
  private static final String OPENING = "open";
  private static final String LOOKING = "look";

  private final ReadOnlyObjectWrapper<WorkbenchState> state =
      new ReadOnlyObjectWrapper<>(WorkbenchState.EMPTY);
  private final Desk desk;
  private final TaskService tasks;
  private final Runnable threadCheck;
  private final Transport transport = new Transport(this);
  private final Picking picking = new Picking(this);
  private final Editing editing = new Editing(this);
  private final TalkTray tray = new TalkTray(this);
  private final Reviewing reviewing;
  private Desk.@Nullable Held record;

  /**
   * Makes a workbench with nothing open.
   *
   * @param desk where sessions are opened and kept
   * @param reviewWork works out a review, on a background thread
   * @param tasks runs background work and answers on the owning thread
   * @param threadCheck throws where it is not called on the owning thread
   */
  public Workbench(Desk desk, ReviewWork reviewWork, TaskService tasks, Runnable threadCheck) {
    this.desk = desk;
    reviewing = new Reviewing(this, reviewWork);
    this.tasks = tasks;
    this.threadCheck = threadCheck;
  }

  /**
   * Works out a review: a function of the session, the settings and the units of its words alone.
   */
  @FunctionalInterface
  public interface ReviewWork {
    /** Returns the review of a session. */
    Review review(Session session, ReviewSettings settings, Units units);
  }

  /** Returns the state as a property that only commands change. */
  public ReadOnlyObjectProperty<WorkbenchState> stateProperty() {
    return state.getReadOnlyProperty();
  }

  /** Returns the state. */
  public WorkbenchState state() {
    return state.get();
  }

  /** Returns the background work, for showing how far it is. */
  public TaskService tasks() {
    return tasks;
  }

  /** Returns the commands that move the playhead. */
  public Transport transport() {
    return transport;
  }

  /** Returns the commands that pick events and set the second cursor. */
  public Picking picking() {
    return picking;
  }

  /** Returns the commands that change the record. */
  public Editing editing() {
    return editing;
  }

  /** Returns where pictures are put aside for the talk. */
  public TalkTray tray() {
    return tray;
  }

  /**
   * Writes a file, or files into a folder, in the background and tells of it.
   *
   * @param channel what it is about; a newer one on it supersedes this
   */
  public void write(String channel, Path target, FileWriting writing) {
    String name = String.valueOf(target.getFileName());
    tasks.submit(
        channel,
        "Writing " + name,
        progress -> {
          writing.to(target);
          return name;
        },
        new TaskService.Answer<>(
            written -> tell(written + " is written"),
            failure -> report(FileWriting.trouble(target, failure))));
  }

  /** Returns the folder for what is kept between starts, or empty where nothing is. */
  public Optional<Path> keeping() {
    return desk.keeping();
  }

  Desk.@Nullable Held held() {
    return record;
  }

  /** Shows a record as it stands now; the playhead and the pick stay. */
  void refresh(Desk.Held held) {
    OpenSession before = state().open();
    if (before != null && before.session().equals(held.session())) {
      OpenSession open =
          new OpenSession(before.session(), before.track(), held.source(), held.history());
      change(s -> s.withOpen(open, s.review(), s.playhead()));
      return;
    }
    OpenSession open = OpenSession.of(held.session(), held.source(), held.history());
    change(s -> s.withOpen(open, s.review(), s.playhead().within(open.range())));
    reviewing.review();
  }

  void change(UnaryOperator<WorkbenchState> step) {
    threadCheck.run();
    WorkbenchState before = state.get();
    WorkbenchState after = step.apply(before);
    if (!after.equals(before)) {
      state.set(after);
    }
  }

  /** Opens a session file in the background; the session in hand stays until that has worked. */
  public void open(Path path) {
    openWith(path, "Opening ", null);
  }

  /** How a session comes into hand. */
  @FunctionalInterface
  public interface Opener {
    /**
     * Returns the record; called on a background thread.
     *
     * @throws Desk.Refusal if it cannot be used
     */
    Desk.Held open(Desk from) throws Desk.Refusal;
  }

  /**
   * Opens a session in the background as told; the one in hand stays until that has worked.
   *
   * @param path its file
   * @param verb what is being done, with a blank after it, such as "Opening "
   */
  public void openWith(Path path, String verb, @Nullable Opener opener) {
    String name = String.valueOf(path.getFileName());
    change(s -> s.withActivity(s.activity().withOpening(name).withTrouble(null)));
    tasks.submit(
        OPENING,
        verb + name,
        progress -> prepared(opener == null ? desk.open(path, progress) : opener.open(desk)),
        new TaskService.Answer<>(this::install, this::refuse));
  }

  /**
   * Begins a match in a file of its own, in the background, so that its journal keeps it from the
   * first edit on.
   *
   * @param path where it is kept; refused where a file stands there already
   */
  public void begin(Path path, Session session) {
    openWith(path, "Beginning ", desk -> desk.begin(path, session));
  }

  /**
   * Reads another session in the background, to take something from or to hold beside the one in
   * hand; where it cannot be used, that is told and {@code done} never called.
   */
  public void look(Path path, Consumer<Session> done) {
    tasks.submit(
        LOOKING,
        "Reading " + path.getFileName(),
        progress -> desk.look(path),
        new TaskService.Answer<>(done, this::refuse));
  }

  /** Gives up opening a file. */
  public void cancelOpening() {
    tasks.cancel(OPENING);
    change(s -> s.withActivity(s.activity().withOpening(null)));
  }

  /** Takes a session that was opened elsewhere, such as a sample. */
  public void install(Desk.Held opened) {
    install(prepared(opened));
  }

  private void install(Prepared prepared) {
    take(prepared, ReviewStatus.FIRST_PENDING);
    reviewing.review();
  }

  /** A record with what is laid out of it for replay, on whatever thread opened it. */
  private record Prepared(Desk.Held held, OpenSession open) {}

  private static Prepared prepared(Desk.Held held) {
    return new Prepared(held, OpenSession.of(held.session(), held.source(), held.history()));
  }

  /**
   * Takes a session that was opened and reviewed elsewhere; what was known then is worked out once
   * {@link #tellAsKnownThen()} asks for it.
   *
   * @param review worked out for the settings and units chosen here
   */
  public void install(Desk.Held opened, Review review) {
    take(prepared(opened), ReviewStatus.FIRST_PENDING.withLatest(review));
  }

  /** Works out what could be told at each moment, unless that is done or its review is not. */
  public void tellAsKnownThen() {
    reviewing.tellAsKnownThen();
  }

  private void take(Prepared prepared, ReviewStatus status) {
    // Another that is still being opened would come after this one and take its place.
    tasks.cancel(OPENING);
    Desk.Held opened = prepared.held;
    OpenSession open = prepared.open;
    Trouble trouble =
        OpeningTrouble.of(
            opened, other -> editing.edit("Take the record as it was kept here", s -> other));
    Desk.Held old = record;
    record = opened;
    change(
        s ->
            s.withOpen(open, status, Playhead.startOf(open.range()))
                .withSelection(Selection.NONE)
                .withChoices(s.choices().withHiddenLines(Set.of()).withLogging(false))
                .withActivity(new Activity(null, trouble, opened.notice().recovered())));
    if (old != null) {
      old.close();
    }
  }

  private void refuse(Exception failure) {
    Trouble trouble =
        failure instanceof Desk.Refusal refusal
            ? refusal.trouble()
            : Trouble.unforeseen(
                "The file could not be opened", failure, "What was open is unchanged.");
    change(s -> s.withActivity(s.activity().withOpening(null).withTrouble(trouble)));
  }

  /** Shows what went wrong. */
  public void report(Trouble trouble) {
    change(s -> s.withActivity(s.activity().withTrouble(trouble)));
  }

  /** Puts away what went wrong, once read. */
  public void dismissTrouble() {
    change(s -> s.withActivity(s.activity().withTrouble(null)));
  }

  /** Tells a line of news, or clears it. */
  public void tell(@Nullable String message) {
    change(s -> s.withActivity(s.activity().withMessage(message)));
  }

  /** Puts the session away and returns to the start. */
  public void closeSession() {
    tasks.cancel(OPENING);
    reviewing.cancel();
    change(s -> WorkbenchState.EMPTY.withChoices(s.choices().withLogging(false)));
    Desk.Held old = record;
    record = null;
    if (old != null) {
      old.close();
    }
  }

  /** Chooses between what was known at the playhead and everything. */
  public void hindsight(boolean hindsight) {
    change(s -> s.withChoices(s.choices().withHindsight(hindsight)).withoutPicksAhead());
  }

  /** Works out the review again with other settings. */
  public void settings(ReviewSettings settings) {
    if (!state().choices().settings().equals(settings)) {
      change(s -> s.withChoices(s.choices().withSettings(settings)));
      reviewing.review();
    }
  }

  /** Lets reviews learn from other sessions, or from none; works out the review again. */
  public void teach(@Nullable Teaching teaching) {
    if (!Objects.equals(state().choices().teaching(), teaching)) {
      change(s -> s.withChoices(s.choices().withTeaching(teaching)));
      reviewing.review();
    }
  }

  /** Words the review in other units. */
  public void units(Units units) {
    if (!state().choices().units().equals(units)) {
      change(s -> s.withChoices(s.choices().withUnits(units)));
      reviewing.review();
    }
  }

  /** Says whether the match in hand is being logged as it happens. */
  public void logging(boolean live) {
    change(s -> s.withChoices(s.choices().withLogging(live)));
  }

  /** Shows or hides a line on the timeline. */
  public void showLine(String lineId, boolean shown) {
    change(
        s -> {
          Set<String> hidden = new HashSet<>(s.choices().hiddenLines());
          boolean changed = shown ? hidden.remove(lineId) : hidden.add(lineId);
          return changed ? s.withChoices(s.choices().withHiddenLines(hidden)) : s;
        });
  }

  static String count(int n, String noun) {
    return n == 1 ? "one " + noun : n + " " + noun + "s";
  }

  @Override
  public void close() {
    closeSession();
    tasks.close();
  }
}
