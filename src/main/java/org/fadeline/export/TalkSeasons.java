package org.fadeline.export;

import java.util.List;
import java.util.Set;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.model.talk.SeasonSource;
import org.jspecify.annotations.Nullable;

/** The seasons of talks: what is looked at, as the talk keeps it and as the season takes it. */
public final class TalkSeasons {
  private TalkSeasons() {}

  /** Returns what a season of a talk is looked at over. */
  public static SeasonFilter filterOf(SeasonSource.Sift sift) {
    SeasonSource.Weather weather = sift.weather();
    return new SeasonFilter(
        Set.copyOf(sift.waters()),
        Set.copyOf(sift.months()),
        Set.copyOf(sift.lines()),
        span(weather.waterC()),
        SeasonFilter.WindWanted.of(span(weather.windForce()), weather.windFrom()));
  }

  /** Returns a filter as a talk keeps it. */
  public static SeasonSource.Sift siftOf(SeasonFilter filter) {
    SeasonFilter.WindWanted wind = filter.wind();
    return new SeasonSource.Sift(
        List.copyOf(filter.waters()),
        List.copyOf(filter.months()),
        List.copyOf(filter.groups()),
        new SeasonSource.Weather(
            range(filter.temperature()),
            wind == null ? null : range(wind.force()),
            wind == null ? null : wind.fromDegrees()));
  }

  private static SeasonFilter.@Nullable Span span(SeasonSource.@Nullable Range range) {
    return range == null ? null : new SeasonFilter.Span(range.low(), range.high());
  }

  private static SeasonSource.@Nullable Range range(SeasonFilter.@Nullable Span span) {
    return span == null ? null : new SeasonSource.Range(span.low(), span.high());
  }
}
