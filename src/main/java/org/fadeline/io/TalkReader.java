package org.fadeline.io;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;

/**
 * Reads talk JSON, version 1: all or nothing. A field that is not known is refused, since saving
 * would lose it.
 */
public final class TalkReader {
  private static final String ENDING = ".talk.json";
  private static final String KIND = "talk";

  private final Path folder;
  private List<Source> sources = List.of();
  private List<SeasonSource> seasons = List.of();

  private TalkReader(Path folder) {
    this.folder = folder;
  }

  /**
   * What reading a talk gave.
   *
   * @param talk or empty where the file cannot be used
   * @param report every problem with its place
   */
  public record Loaded(Optional<Talk> talk, ImportReport report) {}

  /** Returns whether a file's name is that of a talk. */
  public static boolean isTalk(Path file) {
    return FileText.nameOf(file).toLowerCase(Locale.ROOT).endsWith(ENDING);
  }

  /** Reads a file. */
  public static Loaded read(Path file) {
    ImportReport.Collector problems = new ImportReport.Collector();
    String text = FileText.read(file, problems);
    Path folder = file.toAbsolutePath().getParent();
    return text == null || folder == null
        ? new Loaded(Optional.empty(), problems.report())
        : parse(FileText.nameOf(file), text, folder, problems);
  }

  /**
   * Reads text.
   *
   * @param name of the file, for messages
   * @param folder its sessions' files are named relative to this one
   */
  public static Loaded parse(String name, String text, Path folder) {
    return parse(name, text, folder, new ImportReport.Collector());
  }

  private static Loaded parse(
      String name, String text, Path folder, ImportReport.Collector problems) {
    Json.Obj root = JsonParse.object(name, text, KIND, problems);
    Talk talk =
        root == null ? null : new TalkReader(folder).talk(JsonFields.of(name, root, problems));
    return new Loaded(
        problems.errors() > 0 ? Optional.empty() : Optional.ofNullable(talk), problems.report());
  }

  private @Nullable Talk talk(JsonFields fields) {
    if (!isOurs(fields)) {
      return null;
    }
    String title = text(fields, "title");
    Look.Ground ground = ground(fields);
    Units units = units(fields);
    Look.Shape shape = word(fields, "shape", Look.Shape.values(), Look.Shape::word);
    Discretion discretion = new Discretion(fields.flag("unnamed", false), fields.texts("leaveOut"));
    sources = sources(fields);
    seasons = seasons(fields);
    List<Slide> slides = new ArrayList<>();
    for (JsonFields one : fields.objects("slides")) {
      slides.add(slide(one));
    }
    fields.refuseRest();
    if (slides.size() > Talk.MOST_SLIDES) {
      fields.error(
          "slides",
          slides.size() + " slides are more than a talk can have (" + Talk.MOST_SLIDES + ")",
          "make several talks of it");
      return null;
    }
    return new Talk(
        title,
        sources,
        new Look(
            ground == null ? Look.USUAL.ground() : ground,
            units == null ? Look.USUAL.units() : units,
            shape == null ? Look.USUAL.shape() : shape),
        discretion,
        slides,
        seasons);
  }

  private static boolean isOurs(JsonFields fields) {
    Integer version = fields.version(TalkWriter.FORMAT, KIND);
    if (version != null && version > TalkWriter.VERSION) {
      fields.error(
          "version",
          "the talk is of the newer format " + version,
          "open it with a newer version of Fadeline; this one would lose what it does not know");
    }
    return version != null && version <= TalkWriter.VERSION;
  }

  private List<Source> sources(JsonFields fields) {
    List<Source> read = new ArrayList<>();
    for (JsonFields one : fields.objects("sessions")) {
      String id = one.requiredText("id", "give the session a short name of its own");
      String file = one.requiredText("file", "write its file, relative to the talk's own");
      one.refuseRest();
      if (id != null && read.stream().anyMatch(s -> s.id().equals(id))) {
        one.error(
            "id",
            "there are two sessions with the id " + Shown.value(id),
            "give each session an id of its own");
      } else if (id != null && file != null) {
        try {
          read.add(new Source(id, folder.resolve(file).normalize()));
        } catch (InvalidPathException e) {
          one.error("file", Shown.value(file) + " cannot be a file here", "correct the path");
        }
      }
    }
    return read;
  }

  private List<SeasonSource> seasons(JsonFields fields) {
    List<SeasonSource> read = new ArrayList<>();
    for (JsonFields one : fields.objects("seasons")) {
      String id = one.requiredText("id", "give the season a short name of its own");
      String named = one.requiredText("folder", "write its folder, relative to the talk's own");
      SeasonSource.Sift sift =
          new SeasonSource.Sift(
              one.texts("waters"),
              one.wholes("months", 1, 12),
              one.texts("lines"),
              new SeasonSource.Weather(
                  range(one, "waterTemp"),
                  range(one, "windForce"),
                  one.number("windFrom", 0, 360)));
      one.refuseRest();
      boolean taken =
          id != null
              && (sources.stream().anyMatch(s -> s.id().equals(id))
                  || read.stream().anyMatch(s -> s.id().equals(id)));
      if (taken) {
        one.error(
            "id",
            "there are two sources with the id " + Shown.value(String.valueOf(id)),
            "give each session and season an id of its own");
      } else if (id != null && named != null) {
        try {
          read.add(new SeasonSource(id, folder.resolve(named).normalize(), sift));
        } catch (InvalidPathException e) {
          one.error("folder", Shown.value(named) + " cannot be a folder here", "correct the path");
        }
      }
    }
    return read;
  }

  private static SeasonSource.@Nullable Range range(JsonFields fields, String name) {
    JsonFields range = fields.object(name);
    if (range == null) {
      return null;
    }
    Double low = range.number("low", -100, 100);
    Double high = range.number("high", -100, 100);
    range.refuseRest();
    if (low == null || high == null || low > high) {
      fields.error(name, "a low and a high end are needed here", "write both, the lower as low");
      return null;
    }
    return new SeasonSource.Range(low, high);
  }

  private boolean isThere(Picture.Kind kind, String id) {
    return kind.ofSeason()
        ? seasons.stream().anyMatch(s -> s.id().equals(id))
        : sources.stream().anyMatch(s -> s.id().equals(id));
  }

  private Slide slide(JsonFields fields) {
    JsonFields picture = fields.object("picture");
    Slide slide =
        new Slide(
            text(fields, "title"),
            fields.texts("words"),
            picture == null ? null : picture(picture),
            text(fields, "notes"),
            ground(fields));
    fields.refuseRest();
    return slide;
  }

  private @Nullable Picture picture(JsonFields fields) {
    if (fields.isMissing("kind")) {
      fields.error("kind", "the field \"kind\" is missing", "write which picture it is");
    }
    Picture.Kind kind = word(fields, "kind", Picture.Kind.values(), Picture.Kind::word);
    List<String> of = fields.texts("of");
    List<String> lines = fields.texts("lines");
    Picture.Window window = window(fields);
    Picture.Measure measure =
        word(fields, "measure", Picture.Measure.values(), Picture.Measure::word);
    Picture.Align align = word(fields, "align", Picture.Align.values(), Picture.Align::word);
    Units units = units(fields);
    Picture.Chosen chosen = chosen(fields, align);
    fields.refuseRest();
    if (kind == null || !isOf(fields, kind, of, lines)) {
      return null;
    }
    Picture.Manner usual = Picture.Manner.USUAL;
    return new Picture(
        kind,
        of,
        lines,
        window,
        new Picture.Manner(
            measure == null ? usual.measure() : measure,
            align == null ? usual.align() : align,
            units,
            chosen));
  }

  private static Picture.Chosen chosen(JsonFields fields, Picture.@Nullable Align align) {
    double most = Picture.Chosen.MOST_MINUTES;
    Double minutes = fields.number("laidMinutes", -most, most);
    List<String> events = fields.texts("laidOn");
    boolean needed = align == Picture.Align.EVENT;
    if (events.size() != 2 && (needed || !events.isEmpty())) {
      fields.error(
          "laidOn",
          "one event of each session is needed here, not " + events.size(),
          "write the id of an event of the first session and one of the second");
    }
    List<Picture.Pair> pairs = new ArrayList<>();
    for (JsonFields one : fields.objects("pairs")) {
      pairs.add(new Picture.Pair(one.text("first"), one.text("second")));
      one.refuseRest();
    }
    boolean both = events.size() == 2;
    return new Picture.Chosen(
        minutes == null ? 0 : minutes,
        both ? events.get(0) : null,
        both ? events.get(1) : null,
        pairs);
  }

  private boolean isOf(JsonFields fields, Picture.Kind kind, List<String> of, List<String> lines) {
    boolean fits = true;
    String list = kind.ofSeason() ? "seasons" : "sessions";
    if (of.size() != kind.sources()) {
      fields.error(
          "of",
          Shown.value(kind.word())
              + " is a picture of "
              + (kind.ofSeason()
                  ? "one season"
                  : kind.sessions() == 1 ? "one session" : kind.sessions() + " sessions")
              + ", not "
              + of.size(),
          "name as many ids of the list \"" + list + "\"");
      fits = false;
    }
    for (String id : of) {
      if (!isThere(kind, id)) {
        fields.error(
            "of",
            "there is no "
                + (kind.ofSeason() ? "season" : "session")
                + " with the id "
                + Shown.value(id),
            "name an id of the list \"" + list + "\"");
        fits = false;
      }
    }
    if (kind.ofOneLine() && lines.size() != 1) {
      fields.error(
          "lines",
          Shown.value(kind.word()) + " is a picture of one line, not " + lines.size(),
          "write the id of the line as the only one of the list");
      fits = false;
    }
    return fits;
  }

  private static Picture.Window window(JsonFields fields) {
    Long from = fields.instant("from", ZoneOffset.UTC);
    Long to = fields.instant("to", ZoneOffset.UTC);
    Long knownAt = fields.instant("knownAt", ZoneOffset.UTC);
    if (from != null && to != null && to <= from) {
      fields.error("to", "the picture ends before it starts", "correct one of the times");
      return Picture.Window.WHOLE;
    }
    return new Picture.Window(from, to, knownAt);
  }

  private static String text(JsonFields fields, String name) {
    String text = fields.text(name);
    return text == null ? "" : text;
  }

  private static Look.@Nullable Ground ground(JsonFields fields) {
    return word(fields, "ground", Look.Ground.values(), Look.Ground::word);
  }

  private static @Nullable Units units(JsonFields fields) {
    Units.Weight weight = word(fields, "weights", Units.Weight.values(), Units.Weight::word);
    Units.Length length = word(fields, "lengths", Units.Length.values(), Units.Length::word);
    if (weight == null && length == null) {
      return null;
    }
    Units usual = Look.USUAL.units();
    return new Units(
        weight == null ? usual.weight() : weight, length == null ? usual.length() : length);
  }

  /** Returns the value that a word means, or null where the field is absent or means none. */
  private static <T> @Nullable T word(
      JsonFields fields, String name, T[] values, Function<T, String> wordOf) {
    String word = fields.text(name);
    if (word == null) {
      return null;
    }
    for (T value : values) {
      if (wordOf.apply(value).equals(word)) {
        return value;
      }
    }
    List<String> words = new ArrayList<>();
    for (T value : values) {
      words.add(wordOf.apply(value));
    }
    fields.error(
        name, Shown.value(word) + " is not known here", "write one of " + String.join(", ", words));
    return null;
  }
}
