package org.fadeline.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SeasonFilter.Span;
import org.fadeline.analysis.season.SeasonFilter.WindWanted;
import org.fadeline.model.CompassText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Which sessions of a folder, and which of their lines, a season is looked at over. */
final class SeasonFilterOptions {
  @Option(
      names = "--water",
      paramLabel = "NAME",
      description = "only sessions on this water; may be repeated")
  private List<String> waters = new ArrayList<>();

  @Option(
      names = "--month",
      paramLabel = "1..12",
      split = ",",
      converter = MonthWord.class,
      description = "only sessions of these months: 6 or 6,7,8")
  private List<Integer> months = new ArrayList<>();

  @Option(
      names = "--line",
      paramLabel = "KIND",
      description =
          "only lines of this kind, or of this name where they have no kind; may be repeated")
  private List<String> lines = new ArrayList<>();

  @Option(
      names = "--water-temp",
      paramLabel = "LOW..HIGH",
      converter = SpanWord.class,
      description = "only sessions with the water this warm, °C")
  private @Nullable Span temperature;

  @Option(
      names = "--wind-force",
      paramLabel = "LOW..HIGH",
      converter = SpanWord.class,
      description = "only sessions with this mean wind force (Beaufort)")
  private @Nullable Span windForce;

  @Option(
      names = "--wind-from",
      paramLabel = "SW|225",
      converter = WindWord.class,
      description = "only sessions with the wind from there, within 45°")
  private @Nullable Double windFrom;

  SeasonFilter filter() {
    return new SeasonFilter(
        Set.copyOf(waters),
        Set.copyOf(months),
        Set.copyOf(lines),
        temperature,
        WindWanted.of(windForce, windFrom));
  }

  /** Reads a month. */
  static final class MonthWord implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String word) {
      if (word.strip().matches("[1-9]|1[0-2]")) {
        return Integer.valueOf(word.strip());
      }
      throw new TypeConversionException("takes months from 1 to 12, not '" + word + "'");
    }
  }

  /** Reads a range. */
  static final class SpanWord implements ITypeConverter<Span> {
    @Override
    public Span convert(String word) {
      String[] ends = word.split("\\.\\.", -1);
      try {
        if (ends.length > 2) {
          throw new IllegalArgumentException("more than two ends");
        }
        return new Span(Double.parseDouble(ends[0]), Double.parseDouble(ends[ends.length - 1]));
      } catch (IllegalArgumentException notARange) {
        throw new TypeConversionException(
            "takes a range such as 8..14, low end first, not '" + word + "'");
      }
    }
  }

  /** Reads a point of the compass. */
  static final class WindWord implements ITypeConverter<Double> {
    @Override
    public Double convert(String word) {
      try {
        return CompassText.degrees(word);
      } catch (IllegalArgumentException noDirection) {
        throw new TypeConversionException(String.valueOf(noDirection.getMessage()));
      }
    }
  }
}
