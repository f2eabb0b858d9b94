package org.fadeline.ui.talk;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.state.TalkTray;
import org.jspecify.annotations.Nullable;

/**
 * The talk in hand and what is done to it. Every change can be undone; what is typed into one field
 * without a pause elsewhere is one step.
 */
final class TalkModel {
  private static final int MOST_STEPS = 200;

  /**
   * The talk in hand.
   *
   * @param talk the talk
   * @param chosen the slide being worked on, from 0; -1 where there is none
   * @param file its file, or null where it has none yet
   * @param unsaved whether no file holds it as it is
   * @param undo name of the step that undo takes back, or null
   * @param redo name of the step that redo does again, or null
   */
  record State(
      Talk talk,
      int chosen,
      @Nullable Path file,
      boolean unsaved,
      @Nullable String undo,
      @Nullable String redo) {
    /** Returns the slide being worked on, or null. */
    @Nullable Slide slide() {
      return chosen < 0 ? null : talk.slides().get(chosen);
    }
  }

  /** A talk as it was, and the name of the step that changed it. */
  private record Step(String name, @Nullable String field, Talk talk, int chosen) {}

  private final Deque<Step> undo = new ArrayDeque<>();
  private final Deque<Step> redo = new ArrayDeque<>();
  private final ReadOnlyObjectWrapper<State> state =
      new ReadOnlyObjectWrapper<>(new State(Talk.EMPTY, -1, null, false, null, null));
  private Talk saved = Talk.EMPTY;

  ReadOnlyObjectProperty<State> stateProperty() {
    return state.getReadOnlyProperty();
  }

  State state() {
    return state.get();
  }

  private void show(Talk talk, int chosen, @Nullable Path file) {
    int last = talk.slides().size() - 1;
    state.set(
        new State(
            talk,
            Math.min(Math.max(chosen, last < 0 ? -1 : 0), last),
            file,
            !talk.equals(saved),
            undo.isEmpty() ? null : undo.getFirst().name(),
            redo.isEmpty() ? null : redo.getFirst().name()));
  }

  /** Changes the talk in a step of its own. */
  void change(String name, UnaryOperator<Talk> step) {
    change(name, null, state().chosen(), step);
  }

  /** Changes the talk; changes of one field after another are one step. */
  void type(String name, String field, UnaryOperator<Talk> step) {
    change(name, field, state().chosen(), step);
  }

  /** Changes the slide being worked on; changes of one field after another are one step. */
  void slide(String name, String field, UnaryOperator<Slide> step) {
    int at = state().chosen();
    Slide slide = state().slide();
    if (slide != null) {
      change(name, field + " " + at, at, talk -> talk.withSlide(at, step.apply(slide)));
    }
  }

  private void change(
      String name, @Nullable String field, int chosenAfter, UnaryOperator<Talk> step) {
    State before = state();
    Talk after = step.apply(before.talk());
    if (after.equals(before.talk())) {
      return;
    }
    Step last = undo.peekFirst();
    boolean same = field != null && last != null && field.equals(last.field()) && redo.isEmpty();
    if (!same) {
      undo.addFirst(new Step(name, field, before.talk(), before.chosen()));
      if (undo.size() > MOST_STEPS) {
        undo.removeLast();
      }
    }
    redo.clear();
    show(after, chosenAfter, before.file());
  }

  void undo() {
    back(undo, redo);
  }

  void redo() {
    back(redo, undo);
  }

  private void back(Deque<Step> from, Deque<Step> to) {
    if (!from.isEmpty()) {
      State now = state();
      Step step = from.removeFirst();
      to.addFirst(new Step(step.name(), null, now.talk(), now.chosen()));
      show(step.talk(), step.chosen(), now.file());
    }
  }

  /** Works on another slide. */
  void choose(int index) {
    if (index != state().chosen() && index >= 0 && index < state().talk().slides().size()) {
      show(state().talk(), index, state().file());
    }
  }

  /** Adds a slide after the one being worked on, and works on it. */
  void add(Slide slide) {
    insert("Add a slide", slide);
  }

  /** Adds a copy of the slide being worked on. */
  void duplicate() {
    Slide slide = state().slide();
    if (slide != null) {
      insert("Duplicate the slide", slide);
    }
  }

  private void insert(String name, Slide slide) {
    int at = state().chosen() + 1;
    change(name, null, at, talk -> talk.withSlides(with(talk.slides(), at, slide)));
  }

  private static List<Slide> with(List<Slide> slides, int at, Slide slide) {
    List<Slide> more = new ArrayList<>(slides);
    more.add(at, slide);
    return more;
  }

  /** Takes the slide being worked on away. */
  void delete() {
    int at = state().chosen();
    if (at >= 0) {
      change(
          "Delete the slide",
          null,
          at,
          talk -> {
            List<Slide> fewer = new ArrayList<>(talk.slides());
            fewer.remove(at);
            return talk.withSlides(fewer);
          });
    }
  }

  /** Puts a slide elsewhere in the order, and works on it. */
  void move(int from, int to) {
    int size = state().talk().slides().size();
    if (from != to && from >= 0 && to >= 0 && from < size && to < size) {
      change(
          "Move the slide",
          null,
          to,
          talk -> {
            List<Slide> moved = new ArrayList<>(talk.slides());
            moved.add(to, moved.remove(from));
            return talk.withSlides(moved);
          });
    }
  }

  /** Takes up a picture put aside elsewhere, as a slide after the one being worked on. */
  void takeUp(TalkTray.Put put) {
    int at = state().chosen() + 1;
    change(
        "Put a picture on the talk",
        null,
        at,
        talk -> {
          Map<String, String> ids = new HashMap<>();
          Talk now = talk;
          for (Source source : put.sources()) {
            now = withFile(now, source.file());
            ids.put(source.id(), idOf(now, source.file()));
          }
          for (SeasonSource season : put.seasons()) {
            now = withSeason(now, season);
            ids.put(season.id(), idOf(now, season));
          }
          Picture given = put.picture();
          Picture picture =
              new Picture(
                  given.kind(),
                  given.sources().stream().map(id -> ids.getOrDefault(id, id)).toList(),
                  given.lines(),
                  given.window(),
                  given.manner());
          Slide slide = Slide.EMPTY.withTitle(put.title()).withPicture(picture);
          return now.withSlides(with(now.slides(), at, slide));
        });
  }

  /** Returns a talk that has a season, looked at so, among its own. */
  private static Talk withSeason(Talk talk, SeasonSource season) {
    if (!idOf(talk, season).isEmpty()) {
      return talk;
    }
    int number = 1;
    for (SeasonSource one : talk.seasons()) {
      number = one.id().equals("season" + number) ? number + 1 : number;
    }
    List<SeasonSource> more = new ArrayList<>(talk.seasons());
    more.add(new SeasonSource("season" + number, normal(season.folder()), season.sift()));
    return talk.withSeasons(more);
  }

  private static String idOf(Talk talk, SeasonSource season) {
    return talk.seasons().stream()
        .filter(s -> normal(s.folder()).equals(normal(season.folder())))
        .filter(s -> s.sift().equals(season.sift()))
        .map(SeasonSource::id)
        .findFirst()
        .orElse("");
  }

  /** Returns a talk that has a file among its sessions. */
  static Talk withFile(Talk talk, Path file) {
    if (!idOf(talk, file).isEmpty()) {
      return talk;
    }
    int number = talk.sources().size() + 1;
    while (talk.source("s" + number).isPresent()) {
      number++;
    }
    return talk.withSource(new Source("s" + number, normal(file)));
  }

  /** Returns what a talk calls a file, or an empty text. */
  static String idOf(Talk talk, Path file) {
    return talk.sources().stream()
        .filter(s -> normal(s.file()).equals(normal(file)))
        .map(Source::id)
        .findFirst()
        .orElse("");
  }

  private static Path normal(Path file) {
    return file.toAbsolutePath().normalize();
  }

  /** Takes a talk in hand that its file holds. */
  void opened(Talk talk, Path file) {
    undo.clear();
    redo.clear();
    saved = talk;
    show(talk, 0, file);
  }

  /** Takes a talk in hand that no file holds. */
  void recovered(Talk talk) {
    undo.clear();
    redo.clear();
    saved = Talk.EMPTY;
    show(talk, 0, null);
  }

  /** Is told that a file holds a talk now. */
  void saved(Talk talk, Path file) {
    saved = talk;
    show(state().talk(), state().chosen(), file);
  }
}
