package org.fadeline.io;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;

/** Writes talk JSON, version 1: keys in a fixed order, the same bytes for the same talk. */
public final class TalkWriter {
  /** Value of the field {@code format}. */
  public static final String FORMAT = "fadeline-talk";

  /** The version written, and the only one read. */
  public static final int VERSION = 1;

  private TalkWriter() {}

  /**
   * Writes a talk to a file; its sessions are named relative to it.
   *
   * @throws IOException if it cannot be written; an old file is then still there, unchanged
   */
  public static void write(Talk talk, Path file) throws IOException {
    WholeFile.write(file, toJson(talk, file.toAbsolutePath().getParent()));
  }

  /**
   * Returns a talk as JSON text.
   *
   * @param folder its sessions' files are named relative to this one; null for whole paths
   */
  public static String toJson(Talk talk, @Nullable Path folder) {
    Json.Obj root =
        Json.Obj.make()
            .put("format", FORMAT)
            .put("version", (long) VERSION)
            .put("title", talk.title())
            .put("ground", talk.look().ground().word());
    putUnits(root, talk.look().units());
    root.put("shape", talk.look().shape().word())
        .put("unnamed", talk.discretion().unnamed())
        .put("leaveOut", texts(talk.discretion().names()));
    List<Json> sessions = new ArrayList<>();
    for (Source source : talk.sources()) {
      sessions.add(Json.Obj.make().put("id", source.id()).put("file", path(source.file(), folder)));
    }
    if (!talk.seasons().isEmpty()) {
      root.put("sessions", Json.Arr.of(sessions));
      root.put(
          "seasons", Json.Arr.of(talk.seasons().stream().map(s -> season(s, folder)).toList()));
    }
    List<Json> slides = new ArrayList<>();
    talk.slides().forEach(slide -> slides.add(slide(slide)));
    return JsonText.pretty(
        root.put("sessions", Json.Arr.of(sessions)).put("slides", Json.Arr.of(slides)));
  }

  private static Json season(SeasonSource season, @Nullable Path folder) {
    SeasonSource.Sift sift = season.sift();
    Json.Obj out =
        Json.Obj.make().put("id", season.id()).put("folder", path(season.folder(), folder));
    out.put("waters", texts(sift.waters()));
    List<Json> months = new ArrayList<>();
    sift.months().forEach(m -> months.add(Json.Num.of(m.longValue())));
    out.put("months", Json.Arr.of(months)).put("lines", texts(sift.lines()));
    putRange(out, "waterTemp", sift.weather().waterC());
    putRange(out, "windForce", sift.weather().windForce());
    return out.put("windFrom", sift.weather().windFrom());
  }

  private static void putRange(Json.Obj out, String name, SeasonSource.@Nullable Range range) {
    if (range != null) {
      out.put(name, Json.Obj.make().put("low", range.low()).put("high", range.high()));
    }
  }

  private static Json slide(Slide slide) {
    Json.Obj out = Json.Obj.make().put("title", slide.title()).put("words", texts(slide.words()));
    if (slide.picture() != null) {
      out.put("picture", picture(slide.picture()));
    }
    return out.put("notes", slide.notes())
        .put("ground", slide.ground() == null ? null : slide.ground().word());
  }

  private static Json picture(Picture picture) {
    Picture.Window window = picture.window();
    Json.Obj out =
        Json.Obj.make()
            .put("kind", picture.kind().word())
            .put("of", texts(picture.sources()))
            .put("lines", texts(picture.lines()))
            .put("from", instant(window.from()))
            .put("to", instant(window.to()))
            .put("knownAt", instant(window.knownAt()))
            .put("measure", picture.manner().measure().word())
            .put("align", picture.manner().align().word());
    putChosen(out, picture.manner().chosen());
    if (picture.manner().units() != null) {
      putUnits(out, picture.manner().units());
    }
    return out;
  }

  private static void putChosen(Json.Obj out, Picture.Chosen chosen) {
    if (chosen.minutes() != 0) {
      out.put("laidMinutes", chosen.minutes());
    }
    if (chosen.firstEvent() != null && chosen.secondEvent() != null) {
      out.put("laidOn", texts(List.of(chosen.firstEvent(), chosen.secondEvent())));
    }
    if (!chosen.pairs().isEmpty()) {
      List<Json> pairs = new ArrayList<>();
      for (Picture.Pair pair : chosen.pairs()) {
        pairs.add(Json.Obj.make().put("first", pair.first()).put("second", pair.second()));
      }
      out.put("pairs", Json.Arr.of(pairs));
    }
  }

  private static void putUnits(Json.Obj out, Units units) {
    out.put("weights", units.weight().word()).put("lengths", units.length().word());
  }

  private static @Nullable String instant(@Nullable Long at) {
    return at == null ? null : Instant.ofEpochMilli(at).toString();
  }

  private static Json texts(List<String> texts) {
    return Json.Arr.of(texts.stream().map(t -> new Json.Text(0, 0, t)).toList());
  }

  private static String path(Path file, @Nullable Path folder) {
    Path whole = file.toAbsolutePath().normalize();
    Path shown = whole;
    if (folder != null && Objects.equals(folder.getRoot(), whole.getRoot())) {
      shown = folder.normalize().relativize(whole);
    }
    return shown.toString().replace('\\', '/');
  }
}
