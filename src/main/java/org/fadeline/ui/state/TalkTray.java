package org.fadeline.ui.state;

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

  private final ReadOnlyObjectWrapper<List<Put>> waiting = new ReadOnlyObjectWrapper<>(List.of());

  /** Makes an empty tray. */
  public TalkTray() {}

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

  /** Puts a picture aside. */
  public void put(Put put) {
    List<Put> more = new ArrayList<>(waiting.get());
    more.add(put);
    waiting.set(List.copyOf(more));
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
