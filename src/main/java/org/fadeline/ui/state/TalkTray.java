package org.fadeline.ui.state;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Source;

/** Pictures put aside on other screens for the talk, until it takes them up. */
public final class TalkTray {
  /** What a picture put aside calls the session in hand. */
  public static final String OPEN = "open";

  private final Workbench bench;
  private final ReadOnlyObjectWrapper<List<Put>> waiting = new ReadOnlyObjectWrapper<>(List.of());

  TalkTray(Workbench bench) {
    this.bench = bench;
  }

  /**
   * A picture put aside.
   *
   * @param title what its slide is to be called
   * @param picture the picture
   * @param sources its sessions, by the ids it names them with
   * @param seasons its season, by the id it names it with
   */
  public record Put(
      String title, Picture picture, List<Source> sources, List<SeasonSource> seasons) {
    /** Copies the lists. */
    public Put {
      sources = List.copyOf(sources);
      seasons = List.copyOf(seasons);
    }

    /** Makes a picture of sessions. */
    public Put(String title, Picture picture, List<Source> sources) {
      this(title, picture, sources, List.of());
    }
  }

  /**
   * Puts a picture of the session in hand, and of others, aside for the talk, or says why it cannot
   * be.
   *
   * @param title what its slide is to be called
   * @param picture the session in hand is called {@link #OPEN}
   * @param others its further sessions
   */
  public void putOpen(String title, Picture picture, Source... others) {
    OpenSession open = bench.state().open();
    Path file = open == null ? null : open.source().path();
    if (file == null) {
      bench.tell("Save the match first: a talk names its matches by their files");
    } else {
      List<Source> sources = new ArrayList<>(List.of(new Source(OPEN, file)));
      sources.addAll(List.of(others));
      put(new Put(title, picture, sources));
    }
  }

  /** Puts a picture aside and says so. */
  public void put(Put put) {
    List<Put> more = new ArrayList<>(waiting.get());
    more.add(put);
    waiting.set(List.copyOf(more));
    bench.tell("On the talk: " + put.title());
  }

  /** Returns what waits, in the order it was put, and empties the tray. */
  public List<Put> take() {
    List<Put> all = waiting.get();
    waiting.set(List.of());
    return all;
  }

  /** Returns what waits. */
  public ReadOnlyObjectProperty<List<Put>> waitingProperty() {
    return waiting.getReadOnlyProperty();
  }
}
