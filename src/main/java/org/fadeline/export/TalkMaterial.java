package org.fadeline.export;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.compare.LinePairing;
import org.fadeline.analysis.season.Season;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Picture;

/** What the pictures of a talk are made of: a review for each of its sources, by id. */
public final class TalkMaterial {
  private final Map<String, Review> reviews;
  private final Map<String, Season> seasons;

  /** Makes the material of some reviews, by the ids of their sources. */
  public TalkMaterial(Map<String, Review> reviews) {
    this(reviews, Map.of());
  }

  /** Makes the material of some reviews and seasons, by the ids of their sources. */
  public TalkMaterial(Map<String, Review> reviews, Map<String, Season> seasons) {
    this.reviews = new LinkedHashMap<>(reviews);
    this.seasons = new LinkedHashMap<>(seasons);
  }

  /** Returns the seasons by the ids of their sources. */
  public Map<String, Season> seasons() {
    return Collections.unmodifiableMap(seasons);
  }

  /**
   * Returns the season of a source.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Season season(String source) {
    Season season = seasons.get(source);
    if (season == null) {
      throw new IllegalArgumentException("the season \"" + source + "\" of this talk is not here");
    }
    return season;
  }

  /** Returns the reviews by the ids of their sources. */
  public Map<String, Review> reviews() {
    return Collections.unmodifiableMap(reviews);
  }

  /**
   * Returns the review of a source.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Review review(String source) {
    Review review = reviews.get(source);
    if (review == null) {
      throw new IllegalArgumentException("the session \"" + source + "\" of this talk is not here");
    }
    return review;
  }

  /**
   * Returns the comparison a picture of two sessions is of.
   *
   * @param units of its words
   * @throws IllegalArgumentException if a session is not here
   */
  public Comparison comparison(Picture picture, Units units) {
    Review first = review(picture.sources().get(0));
    Review second = review(picture.sources().get(1));
    ComparisonSetup usual = ComparisonSetup.usual(first.session(), second.session());
    return Comparer.compare(
        first,
        second,
        usual
            .withAlignment(alignment(picture.manner(), first.session(), second.session()))
            .withPairing(pairing(picture.manner().chosen(), first.session(), second.session())),
        units);
  }

  private static LinePairing pairing(Picture.Chosen chosen, Session first, Session second) {
    return LinePairing.of(
        first,
        second,
        chosen.pairs().stream().map(p -> new LinePairing.Choice(p.first(), p.second())).toList());
  }

  private static Alignment alignment(Picture.Manner manner, Session first, Session second) {
    Picture.Chosen chosen = manner.chosen();
    return switch (manner.align()) {
      case CLOCK -> Alignment.byClock(first, second);
      case ALL_IN -> Alignment.byAllIn(first, second);
      case FIRST_FED -> Alignment.byFirstFed(first, second);
      case BY_HAND -> Alignment.byHand(first, second, chosen.minutes());
      case EVENT -> byEvents(chosen, first, second);
    };
  }

  private static Alignment byEvents(Picture.Chosen chosen, Session first, Session second) {
    if (chosen.firstEvent() == null || chosen.secondEvent() == null) {
      throw new IllegalArgumentException("no event is chosen that the two matches are laid on");
    }
    return Alignment.byEvents(first, chosen.firstEvent(), second, chosen.secondEvent());
  }

  /** Returns this material with each review and each season changed. */
  TalkMaterial with(UnaryOperator<Review> change, UnaryOperator<Season> seasonChange) {
    Map<String, Review> changed = new LinkedHashMap<>();
    reviews.forEach((id, review) -> changed.put(id, change.apply(review)));
    Map<String, Season> others = new LinkedHashMap<>();
    seasons.forEach((id, season) -> others.put(id, seasonChange.apply(season)));
    return new TalkMaterial(changed, others);
  }
}
