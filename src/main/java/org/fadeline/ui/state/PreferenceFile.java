package org.fadeline.ui.state;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import org.fadeline.model.Units;
import org.fadeline.ui.state.Preferences.Bounds;
import org.fadeline.ui.state.Preferences.Look;

/**
 * Keeps the preferences in a small file of the user's. A missing, damaged or unwritable file costs
 * the preferences and nothing else: {@link #read} then gives the defaults for what it cannot use.
 */
public final class PreferenceFile {
  private static final int LARGEST_BYTES = 100_000;
  private static final String KEPT = "kept.";

  private final Path file;

  /** Uses the given file; its folder is made when first written. */
  public PreferenceFile(Path file) {
    this.file = file;
  }

  /**
   * Returns the usual place: the folder in the environment variable {@code FADELINE_CONFIG} where
   * that is set, else where this system keeps settings.
   */
  public static PreferenceFile ofUser() {
    return new PreferenceFile(usualFolder().resolve("preferences.properties"));
  }

  /** Returns the folder where this program keeps what is the user's and belongs to no session. */
  public static Path usualFolder() {
    String chosen = System.getenv("FADELINE_CONFIG");
    if (chosen != null && !chosen.isBlank()) {
      return Path.of(chosen);
    }
    Path home = Path.of(System.getProperty("user.home", "."));
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.contains("win")) {
      String data = System.getenv("APPDATA");
      return (data == null ? home : Path.of(data)).resolve("Fadeline");
    }
    if (system.contains("mac")) {
      return home.resolve("Library/Application Support/Fadeline");
    }
    String config = System.getenv("XDG_CONFIG_HOME");
    boolean usable = config != null && Path.of(config).isAbsolute();
    return (usable ? Path.of(config) : home.resolve(".config")).resolve("fadeline");
  }

  /** Returns the folder of the diagnostic log. */
  public static Path logFolder() {
    return usualFolder().resolve("log");
  }

  /** Reads the preferences; whatever cannot be used is left at its default. */
  public Preferences read() {
    Properties p = new Properties();
    try {
      if (Files.isRegularFile(file) && Files.size(file) <= LARGEST_BYTES) {
        try (InputStream in = Files.newInputStream(file)) {
          p.load(in);
        }
      }
    } catch (IOException | IllegalArgumentException unreadable) {
      p.clear();
    }
    Preferences d = Preferences.DEFAULT;
    Units units =
        new Units(
            Units.Weight.ofWord(p.getProperty("weight", "")).orElse(d.units().weight()),
            Units.Length.ofWord(p.getProperty("length", "")).orElse(d.units().length()));
    return new Preferences(
        units,
        look(p.getProperty("theme", "")),
        (int) number(p, "text", d.textPercent()),
        !"off".equals(p.getProperty("motion")),
        new Bounds(
            number(p, "window.x", Double.NaN),
            number(p, "window.y", Double.NaN),
            number(p, "window.width", Bounds.DEFAULT.width()),
            number(p, "window.height", Bounds.DEFAULT.height()),
            "yes".equals(p.getProperty("window.maximised"))),
        kept(p),
        recent(p));
  }

  private static Map<String, String> kept(Properties p) {
    Map<String, String> kept = new TreeMap<>();
    for (String name : p.stringPropertyNames()) {
      if (name.startsWith(KEPT)) {
        kept.put(name.substring(KEPT.length()), p.getProperty(name));
      }
    }
    return kept;
  }

  private static Look look(String word) {
    for (Look look : Look.values()) {
      if (look.name().equals(word)) {
        return look;
      }
    }
    return Preferences.DEFAULT.look();
  }

  private static double number(Properties p, String key, double otherwise) {
    try {
      double value = Double.parseDouble(p.getProperty(key, ""));
      return Double.isFinite(value) ? value : otherwise;
    } catch (NumberFormatException notANumber) {
      return otherwise;
    }
  }

  private static List<String> recent(Properties p) {
    List<String> files = new ArrayList<>();
    for (int i = 0; i < Preferences.RECENT_KEPT; i++) {
      String path = p.getProperty("recent." + i);
      if (path != null && !path.isBlank()) {
        files.add(path);
      }
    }
    return files;
  }

  /**
   * Writes the preferences whole or not at all.
   *
   * @throws IOException if that is not possible
   */
  public void write(Preferences preferences) throws IOException {
    Properties p = new Properties();
    p.setProperty("weight", preferences.units().weight().word());
    p.setProperty("length", preferences.units().length().word());
    p.setProperty("theme", preferences.look().name());
    p.setProperty("text", Integer.toString(preferences.textPercent()));
    p.setProperty("motion", preferences.motion() ? "on" : "off");
    Bounds w = preferences.window();
    p.setProperty("window.x", Double.toString(w.x()));
    p.setProperty("window.y", Double.toString(w.y()));
    p.setProperty("window.width", Double.toString(w.width()));
    p.setProperty("window.height", Double.toString(w.height()));
    p.setProperty("window.maximised", w.maximised() ? "yes" : "no");
    preferences.kept().forEach((name, value) -> p.setProperty(KEPT + name, value));
    for (int i = 0; i < preferences.recent().size(); i++) {
      p.setProperty("recent." + i, preferences.recent().get(i));
    }
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    Path draft = Files.createTempFile(folder, "preferences", ".tmp");
    try {
      try (OutputStream out = Files.newOutputStream(draft)) {
        p.store(out, "Fadeline");
      }
      Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(draft);
    }
  }
}
