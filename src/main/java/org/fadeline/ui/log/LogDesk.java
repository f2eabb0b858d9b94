package org.fadeline.ui.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.log.Detail;
import org.fadeline.log.LogClock;
import org.fadeline.log.Pad;
import org.fadeline.log.Press;
import org.fadeline.log.RecordingAlignment;
import org.fadeline.model.Edit;
import org.fadeline.model.EventEdits;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/**
 * What the Log screen does, without its view: the clock, presses, the event in hand and its
 * amendments. Each change is one step of the record, on the disk before the next.
 */
final class LogDesk {
  /** How many events are listed. */
  static final int LISTED = 10;

  /** Set up by the water, a match is as good as on, milliseconds. */
  private static final long BEFORE_MILLIS = 60 * 60_000L;

  private final Workbench bench;
  private final LongSupplier now;
  private final ReadOnlyObjectWrapper<LogClock> clock;
  private final ReadOnlyObjectWrapper<@Nullable String> inHand = new ReadOnlyObjectWrapper<>();

  /**
   * Makes a desk.
   *
   * @param now the machine's time, epoch milliseconds
   */
  LogDesk(Workbench bench, LongSupplier now) {
    this.bench = bench;
    this.now = now;
    clock =
        new ReadOnlyObjectWrapper<>(
            LogClock.recording(new RecordingAlignment(0, 1), now.getAsLong()));
  }

  ReadOnlyObjectProperty<LogClock> clockProperty() {
    return clock.getReadOnlyProperty();
  }

  /** Returns the id of the event in hand as a property, null where there is none. */
  ReadOnlyObjectProperty<@Nullable String> inHandProperty() {
    return inHand.getReadOnlyProperty();
  }

  private Optional<Session> session() {
    OpenSession open = bench.state().open();
    return open == null ? Optional.empty() : Optional.of(open.session());
  }

  /**
   * Takes up a session: the clock stands where its recording starts, or at all in. A match that is
   * on now is taken to be logged as it happens, also when the program was started anew meanwhile.
   */
  void takeUp(Session session) {
    RecordingAlignment alignment =
        session.outcome().media().stream()
            .findFirst()
            .map(media -> RecordingAlignment.of(media, session.match()))
            .orElseGet(() -> new RecordingAlignment(session.match().allIn(), 1));
    long at = now.getAsLong();
    LogClock standing = LogClock.recording(alignment, at);
    boolean isOn = at >= session.match().allIn() - BEFORE_MILLIS && at <= session.match().allOut();
    setClock(isOn ? standing.live(at) : standing);
    inHand.set(null);
  }

  private void setClock(LogClock changed) {
    clock.set(changed);
    bench.logging(changed.source() == LogClock.Source.LIVE);
  }

  /** Changes the clock. */
  void turn(ClockChange change) {
    setClock(change.from(clock.get(), now.getAsLong()));
  }

  /** A change of the clock at a time of the machine, epoch milliseconds. */
  interface ClockChange {
    LogClock from(LogClock before, long now);
  }

  /** Returns the instant that a press is logged at, epoch milliseconds. */
  long instant() {
    return clock.get().instantAt(now.getAsLong());
  }

  /** Returns the place in the recording, milliseconds. */
  double position() {
    return clock.get().positionAt(now.getAsLong());
  }

  /** Logs what a pad says, now; the event is then in hand. */
  void press(Pad pad) {
    session()
        .filter(s -> pad.line() < s.lines().size())
        .ifPresent(
            s -> {
              Press press = Press.of(s, pad, instant());
              bench.editing().edit(press.edit());
              inHand.set(press.eventId());
            });
  }

  /** Takes an event in hand. */
  void choose(@Nullable String eventId) {
    inHand.set(eventId);
  }

  /** Returns the event in hand. */
  Optional<SessionEvent> inHand() {
    String id = inHand.get();
    return session().flatMap(s -> s.events().stream().filter(e -> e.id().equals(id)).findFirst());
  }

  /** Returns the latest events up to the clock's time, the last one first. */
  List<SessionEvent> latest() {
    long until = instant();
    List<SessionEvent> events =
        session().map(Session::events).orElse(List.of()).stream()
            .filter(e -> e.at() <= until)
            .sorted(Comparator.comparingLong(SessionEvent::at))
            .toList();
    List<SessionEvent> last =
        new ArrayList<>(events.subList(Math.max(0, events.size() - LISTED), events.size()));
    Collections.reverse(last);
    return last;
  }

  /**
   * Says more of the event in hand, in the angler's words.
   *
   * @return what is wrong with the words, or null where they were taken
   */
  @Nullable String say(String words) {
    Optional<SessionEvent> event = inHand();
    if (event.isEmpty()) {
      return "choose an event first";
    }
    return session().map(s -> said(s, event.get(), words)).orElse(null);
  }

  private @Nullable String said(Session session, SessionEvent event, String words) {
    Detail detail =
        new Detail(
            session.lines(), session.occasion().zone(), bench.state().choices().units().weight());
    try {
      SessionEvent after = detail.apply(event, words);
      if (!after.equals(event)) {
        bench.editing().edit(Edit.replace("Say more of " + event.kind().word(), session, after));
      }
      return null;
    } catch (IllegalArgumentException notUnderstood) {
      return String.valueOf(notUnderstood.getMessage());
    }
  }

  /** Moves the event in hand in time. */
  void nudge(long millis) {
    amend("Move ", id -> EventEdits.shift(Set.of(id), millis));
  }

  /** Puts the event in hand on the next line of the session, after the last on none. */
  void nextLine() {
    inHand()
        .ifPresent(
            event ->
                session()
                    .ifPresent(
                        s -> {
                          List<String> ids = s.lines().stream().map(line -> line.id()).toList();
                          int next = (ids.indexOf(event.lineId()) + 1) % Math.max(1, ids.size());
                          if (!ids.isEmpty()) {
                            amend(
                                "Change line of ",
                                id -> EventEdits.line(Set.of(id), ids.get(next)));
                          }
                        }));
  }

  /** Takes the event in hand out of the record. */
  void remove() {
    amend("Take out ", id -> EventEdits.remove(Set.of(id)));
    inHand.set(null);
  }

  private void amend(String verb, Function<String, UnaryOperator<Session>> change) {
    inHand()
        .ifPresent(
            event -> bench.editing().edit(verb + event.kind().word(), change.apply(event.id())));
  }

  /**
   * Lays the recording against the match by one or two moments seen in it.
   *
   * @return what is wrong with them, or null where they were taken
   */
  @Nullable String align(List<RecordingAlignment.Point> points) {
    try {
      RecordingAlignment before = clock.get().alignment();
      RecordingAlignment after =
          points.size() == 1
              ? before.through(points.get(0))
              : RecordingAlignment.through(points.get(0), points.get(points.size() - 1));
      turn((c, at) -> c.aligned(after, at));
      keep(after);
      return after.isDoubtful()
          ? "the recording would drift by more than a camera's clock can; check both moments"
          : null;
    } catch (IllegalArgumentException wrong) {
      return String.valueOf(wrong.getMessage());
    }
  }

  /** Returns the file of a film whose path the session keeps, or empty where it has no file. */
  Optional<Path> filmFile(String kept) {
    return folder().map(folder -> folder.resolve(kept).normalize());
  }

  private Optional<Path> folder() {
    OpenSession open = bench.state().open();
    Path file = open == null ? null : open.source().path();
    return file == null ? Optional.empty() : Optional.ofNullable(file.toAbsolutePath().getParent());
  }

  /**
   * Puts a film beside the log, or none where null; the session keeps its path from its own file's
   * folder, and how it lies.
   *
   * @return what is wrong, or null where it was taken
   */
  @Nullable String film(@Nullable Path film) {
    RecordingAlignment lies = clock.get().alignment();
    if (film == null) {
      bench.editing().edit("Put the film away", s -> withMedia(s, List.of()));
      return null;
    }
    Optional<Path> folder = folder();
    if (folder.isEmpty()) {
      return "Save the match first: the film is kept by its place beside the match's file.";
    }
    Path where = film.toAbsolutePath().normalize();
    if (!where.startsWith(folder.get().normalize())) {
      // A session names no file outside its folder: it could not be passed on with its film.
      return "The film lies elsewhere: copy it beside the match's file, into "
          + folder.get()
          + " or a folder in it, and choose it there.";
    }
    String path = folder.get().normalize().relativize(where).toString().replace('\\', '/');
    bench
        .editing()
        .edit("Put a film beside", s -> withMedia(s, List.of(lies.media(path, s.match()))));
    return null;
  }

  private static Session withMedia(Session session, List<Outcome.Media> media) {
    return session.withOutcome(session.outcome().withMedia(media));
  }

  /** Footage that the session knows keeps how it lies. */
  private void keep(RecordingAlignment alignment) {
    bench
        .editing()
        .edit(
            "Align the footage",
            s -> {
              List<Outcome.Media> media = new ArrayList<>(s.outcome().media());
              if (!media.isEmpty()) {
                media.set(0, alignment.media(media.get(0).path(), s.match()));
              }
              return withMedia(s, media);
            });
  }
}
