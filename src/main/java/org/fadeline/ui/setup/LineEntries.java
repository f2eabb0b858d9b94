package org.fadeline.ui.setup;

import java.util.List;
import java.util.Locale;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.ShotTable;
import org.fadeline.ui.control.form.Entry;
import org.jspecify.annotations.Nullable;

/** One line with its place and rig, as entries of the session. */
final class LineEntries {
  private LineEntries() {}

  private static Entry<Session> line(String lineId, Entry<Line> entry) {
    return entry.within(
        s -> SetupLines.line(s, lineId), (s, l) -> SetupLines.replace(s, lineId, old -> l));
  }

  private static Entry<Session> place(String lineId, Entry<Line.Place> entry) {
    return line(lineId, entry.within(Line::place, Line::withPlace));
  }

  private static Entry<Session> rig(String lineId, Entry<Line.Rig> entry) {
    return line(lineId, entry.within(Line::rig, Line::withRig));
  }

  /** Returns what the line is called; no two lines are called the same. */
  static Entry<Session> name(String lineId) {
    return new Entry<>(
        "line-name",
        "Name",
        "short line",
        (s, units) -> SetupLines.line(s, lineId).name(),
        (s, text, units) -> {
          String name = Entry.orNull(text);
          if (name == null) {
            throw new IllegalArgumentException("a line needs a name");
          }
          boolean taken =
              s.lines().stream()
                  .anyMatch(l -> !l.id().equals(lineId) && l.name().equalsIgnoreCase(name));
          if (taken) {
            throw new IllegalArgumentException("another line is called " + name);
          }
          return SetupLines.replace(s, lineId, l -> l.withName(name));
        });
  }

  /** Returns where the line lies. */
  static List<Entry<Session>> place(String lineId) {
    return List.of(
        place(
            lineId,
            OccasionEntries.length(
                "line-distance",
                "Distance",
                "13 m",
                Line.Place::distanceM,
                Line.Place::withDistanceM)),
        place(
            lineId,
            new Entry<>(
                "line-bearing",
                "Bearing",
                "20 left",
                (p, units) ->
                    p.bearingDegrees() == null ? "" : BearingText.format(p.bearingDegrees()),
                (p, text, units) ->
                    p.withBearingDegrees(text.isBlank() ? null : BearingText.degrees(text)))),
        place(
            lineId,
            OccasionEntries.length(
                "line-depth", "Depth", "1.5 m", Line.Place::depthM, Line.Place::withDepthM)),
        place(
            lineId,
            Entry.words(
                "line-sections",
                "In sections",
                "top kit + 2",
                Line.Place::sections,
                Line.Place::withSections)));
  }

  /** Returns what the line is fished with. */
  static List<Entry<Session>> rig(String lineId) {
    return List.of(
        rig(
            lineId,
            Entry.number(
                "rig-float", "Float takes, g", "0.4", Line.Rig::floatG, Line.Rig::withFloatG)),
        rig(
            lineId,
            new Entry<>(
                "rig-shotting",
                "Shotting",
                "6x8 + 2x10",
                (r, units) -> r.shotting() == null ? "" : r.shotting(),
                (r, text, units) -> r.withShotting(Entry.orNull(text)))),
        rig(
            lineId,
            Entry.number(
                "rig-main",
                "Main line, mm",
                "0.16",
                Line.Rig::mainLineMm,
                Line.Rig::withMainLineMm)),
        rig(
            lineId,
            Entry.number(
                "rig-hooklength",
                "Hooklength, mm",
                "0.12",
                Line.Rig::hooklengthMm,
                Line.Rig::withHooklengthMm)),
        rig(
            lineId,
            Entry.words("rig-hook", "Hook", "16", Line.Rig::hookSize, Line.Rig::withHookSize)),
        rig(
            lineId,
            Entry.words(
                "rig-bait", "Hookbait", "pellet", Line.Rig::hookbait, Line.Rig::withHookbait)));
  }

  /**
   * Returns the shot against the float in words, or an empty text where there is nothing to weigh.
   */
  static String balance(Line.Rig rig) {
    String pattern = rig.shotting();
    if (pattern == null) {
      return "";
    }
    try {
      return balance(ShotTable.load(pattern), rig.floatG());
    } catch (IllegalArgumentException notAPattern) {
      return "Kept as written, but not weighed: " + notAPattern.getMessage() + ".";
    }
  }

  private static String balance(ShotTable.Load load, @Nullable Double floatG) {
    String shot = grams(load.grams()) + " of shot";
    if (floatG == null) {
      return shot + ".";
    }
    double spare = Math.rint(load.spareFor(floatG) * 1000) / 1000;
    return spare < 0
        ? shot + ", " + grams(-spare) + " more than the float takes."
        : spare == 0
            ? shot + ", just what the float takes."
            : shot + ", leaving " + grams(spare) + " of what the float takes.";
  }

  private static String grams(double grams) {
    return String.format(Locale.ROOT, "%.2f g", grams);
  }
}
