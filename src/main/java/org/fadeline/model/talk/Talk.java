package org.fadeline.model.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A talk: slides in order, the sessions their pictures are of, and how it looks.
 *
 * @param title what it is called
 * @param sources the sessions it shows, each with an id of its own
 * @param look ground, units and shape
 * @param discretion what is left out of it
 * @param slides in order
 * @param seasons the folders it shows as seasons, each with an id of its own
 */
public record Talk(
    String title,
    List<Source> sources,
    Look look,
    Discretion discretion,
    List<Slide> slides,
    List<SeasonSource> seasons) {
  /** Most slides of one talk. */
  public static final int MOST_SLIDES = 500;

  /** An empty talk. */
  public static final Talk EMPTY = new Talk("", List.of(), Look.USUAL, Discretion.NONE, List.of());

  /** Copies the lists. */
  public Talk {
    sources = List.copyOf(sources);
    slides = List.copyOf(slides);
    seasons = List.copyOf(seasons);
    if (slides.size() > MOST_SLIDES) {
      throw new IllegalArgumentException("a talk has at most " + MOST_SLIDES + " slides");
    }
  }

  /** Makes a talk that shows no season. */
  public Talk(
      String title, List<Source> sources, Look look, Discretion discretion, List<Slide> slides) {
    this(title, sources, look, discretion, slides, List.of());
  }

  /** Returns this talk with other seasons. */
  public Talk withSeasons(List<SeasonSource> newSeasons) {
    return new Talk(title, sources, look, discretion, slides, newSeasons);
  }

  /** Returns the source of an id, or empty. */
  public Optional<Source> source(String id) {
    return sources.stream().filter(s -> s.id().equals(id)).findFirst();
  }

  /** Returns this talk with another title. */
  public Talk withTitle(String newTitle) {
    return new Talk(newTitle, sources, look, discretion, slides, seasons);
  }

  /** Returns this talk with other sources. */
  public Talk withSources(List<Source> newSources) {
    return new Talk(title, newSources, look, discretion, slides, seasons);
  }

  /** Returns this talk with another look. */
  public Talk withLook(Look newLook) {
    return new Talk(title, sources, newLook, discretion, slides, seasons);
  }

  /** Returns this talk with something else left out. */
  public Talk withDiscretion(Discretion newDiscretion) {
    return new Talk(title, sources, look, newDiscretion, slides, seasons);
  }

  /** Returns this talk with other slides. */
  public Talk withSlides(List<Slide> newSlides) {
    return new Talk(title, sources, look, discretion, newSlides, seasons);
  }

  /** Returns this talk with another slide in a slide's place. */
  public Talk withSlide(int index, Slide slide) {
    List<Slide> changed = new ArrayList<>(slides);
    changed.set(index, slide);
    return withSlides(changed);
  }

  /** Returns this talk with a source more, or as it is where it has that source already. */
  public Talk withSource(Source source) {
    if (source(source.id()).isPresent()) {
      return this;
    }
    List<Source> more = new ArrayList<>(sources);
    more.add(source);
    return withSources(more);
  }
}
