package org.fadeline.ui.state;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/**
 * What the user has chosen once for every session.
 *
 * @param units of weights and distances
 * @param look the theme
 * @param textPercent size of all text, percent of the normal size, in [80, 200]
 * @param motion whether anything may move by itself but the playhead
 * @param window where the window stood
 * @param kept what single screens keep, by names such as {@code log.key.2.bite}
 * @param recent paths of the files opened last, the latest first, at most {@value #RECENT_KEPT}
 */
public record Preferences(
    Units units,
    Look look,
    int textPercent,
    boolean motion,
    Bounds window,
    Map<String, String> kept,
    List<String> recent) {
  /** How many recent files are kept. */
  public static final int RECENT_KEPT = 10;

  /** What a fresh start has. */
  public static final Preferences DEFAULT =
      new Preferences(
          Units.LB_OZ_AND_METRES, Look.LIGHT, 100, true, Bounds.DEFAULT, Map.of(), List.of());

  /** Brings the text size into its range and keeps only the latest files. */
  public Preferences {
    kept = Map.copyOf(kept);
    textPercent = Math.max(80, Math.min(200, textPercent));
    recent = List.copyOf(recent.size() > RECENT_KEPT ? recent.subList(0, RECENT_KEPT) : recent);
  }

  /** The themes offered. */
  public enum Look {
    /** For daylight. */
    LIGHT("Light"),
    /** For the evening. */
    DARK("Dark"),
    /** For strong sunlight and weak eyes. */
    HIGH_CONTRAST("High contrast");

    private final String label;

    Look(String label) {
      this.label = label;
    }

    /** Returns the words on screen. */
    public String label() {
      return label;
    }
  }

  /**
   * Where a window stands, pixels on the screen.
   *
   * @param x left edge
   * @param y top edge
   * @param width above 0
   * @param height above 0
   * @param maximised whether it fills its screen
   */
  public record Bounds(double x, double y, double width, double height, boolean maximised) {
    /** Somewhere on the first screen, large enough for a laptop; no place yet. */
    public static final Bounds DEFAULT = new Bounds(Double.NaN, Double.NaN, 1440, 900, false);

    /**
     * Returns this window moved and shrunk so that it lies on a visible screen.
     *
     * @param screens visible parts of the screens; the first is the main one
     */
    public Bounds onto(List<Bounds> screens) {
      Bounds best = screens.get(0);
      double most = -1;
      for (Bounds screen : screens) {
        double shared = overlap(screen);
        if (shared > most) {
          most = shared;
          best = screen;
        }
      }
      double w = Math.min(width > 0 ? width : DEFAULT.width, best.width);
      double h = Math.min(height > 0 ? height : DEFAULT.height, best.height);
      double left = Double.isFinite(x) && most > 0 ? x : best.x + (best.width - w) / 2;
      double top = Double.isFinite(y) && most > 0 ? y : best.y + (best.height - h) / 2;
      return new Bounds(
          Math.max(best.x, Math.min(left, best.x + best.width - w)),
          Math.max(best.y, Math.min(top, best.y + best.height - h)),
          w,
          h,
          maximised);
    }

    private double overlap(Bounds other) {
      double across = Math.min(x + width, other.x + other.width) - Math.max(x, other.x);
      double down = Math.min(y + height, other.y + other.height) - Math.max(y, other.y);
      return across > 0 && down > 0 ? across * down : 0;
    }
  }

  /** Returns these preferences with other units. */
  public Preferences withUnits(Units newUnits) {
    return new Preferences(newUnits, look, textPercent, motion, window, kept, recent);
  }

  /** Returns these preferences with another theme. */
  public Preferences withLook(Look newLook) {
    return new Preferences(units, newLook, textPercent, motion, window, kept, recent);
  }

  /** Returns these preferences with another text size, brought into 80 to 200 percent. */
  public Preferences withTextPercent(int newPercent) {
    return new Preferences(units, look, newPercent, motion, window, kept, recent);
  }

  /** Returns these preferences with motion on or off. */
  public Preferences withMotion(boolean newMotion) {
    return new Preferences(units, look, textPercent, newMotion, window, kept, recent);
  }

  /** Returns these preferences with the window elsewhere. */
  public Preferences withWindow(Bounds newWindow) {
    return new Preferences(units, look, textPercent, motion, newWindow, kept, recent);
  }

  /** Returns these preferences with a file as the one opened last. */
  public Preferences withRecent(String path) {
    List<String> files = new ArrayList<>(recent);
    files.remove(path);
    files.add(0, path);
    return new Preferences(units, look, textPercent, motion, window, kept, files);
  }

  /** Returns the folders of the files opened last that are still there, the latest first. */
  public Stream<Path> recentFolders() {
    return recent.stream()
        .map(path -> Path.of(path).getParent())
        .filter(folder -> folder != null && Files.isDirectory(folder));
  }

  /** Returns the folder that a question for a file begins in, or null where none is known. */
  public @Nullable Path recentFolder() {
    return recentFolders().findFirst().orElse(null);
  }

  /** Returns these preferences with what single screens keep. */
  public Preferences withKept(Map<String, String> newKept) {
    return new Preferences(units, look, textPercent, motion, window, newKept, recent);
  }
}
