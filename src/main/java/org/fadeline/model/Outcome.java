package org.fadeline.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of a session.
 *
 * @param weighIn weights at the scales, one for each net; empty where not known
 * @param result placing, or null
 * @param media footage, each file with its offset
 * @param imports files brought in whose clock was corrected
 */
public record Outcome(
    List<NetWeight> weighIn, @Nullable Result result, List<Media> media, List<Imported> imports) {
  /** Nothing known. */
  public static final Outcome UNKNOWN = new Outcome(List.of(), null, List.of());

  /** Copies the lists. */
  public Outcome {
    weighIn = List.copyOf(weighIn);
    media = List.copyOf(media);
    imports = List.copyOf(imports);
  }

  /** An outcome without files brought in. */
  public Outcome(List<NetWeight> weighIn, @Nullable Result result, List<Media> media) {
    this(weighIn, result, media, List.of());
  }

  /**
   * One keepnet at the scales.
   *
   * @param net number of the net, from 1
   * @param grams weight, in [0, 1e6]
   * @param holds "carp" or "silvers", or null
   */
  public record NetWeight(int net, double grams, @Nullable String holds) {
    /** Checks the ranges. */
    public NetWeight {
      if (net < 1) {
        throw new IllegalArgumentException("net must be 1 or more: " + net);
      }
      Checks.between("net weight", grams, 0, 1e6);
    }
  }

  /**
   * Placing in the match.
   *
   * @param position overall, from 1, or null
   * @param section name of the section, or null
   * @param sectionPosition placing in the section, from 1, or null
   * @param of how many fished, or null
   * @param neighbours weights of pegs nearby, where known
   */
  public record Result(
      @Nullable Integer position,
      @Nullable String section,
      @Nullable Integer sectionPosition,
      @Nullable Integer of,
      List<NeighbourWeight> neighbours) {
    /** Copies the list. */
    public Result {
      neighbours = List.copyOf(neighbours);
    }

    /** Returns this result with another place. */
    public Result withPosition(@Nullable Integer newPosition) {
      return new Result(newPosition, section, sectionPosition, of, neighbours);
    }

    /** Returns this result with another section. */
    public Result withSection(@Nullable String newSection) {
      return new Result(position, newSection, sectionPosition, of, neighbours);
    }

    /** Returns this result with another place in the section. */
    public Result withSectionPosition(@Nullable Integer newSectionPosition) {
      return new Result(position, section, newSectionPosition, of, neighbours);
    }

    /** Returns this result with another field. */
    public Result withOf(@Nullable Integer newOf) {
      return new Result(position, section, sectionPosition, newOf, neighbours);
    }

    /** Returns this result with another list of neighbours. */
    public Result withNeighbours(List<NeighbourWeight> newNeighbours) {
      return new Result(position, section, sectionPosition, of, newNeighbours);
    }
  }

  /**
   * Weight of another peg.
   *
   * @param peg its number
   * @param grams weight, in [0, 1e6]
   */
  public record NeighbourWeight(String peg, double grams) {
    /** Checks the range. */
    public NeighbourWeight {
      Checks.between("neighbour's weight", grams, 0, 1e6);
    }
  }

  /**
   * Footage of the session.
   *
   * @param path relative to the session file, with forward slashes
   * @param offsetMillis session instant minus media time at the media's start, milliseconds after
   *     all in (may be negative)
   * @param rate media seconds per session second, in [0.001, 1000]
   */
  public record Media(String path, long offsetMillis, double rate) {
    /** Checks the range. */
    public Media {
      Checks.between("rate", rate, 0.001, 1000);
    }
  }

  /**
   * A file of notes or a table that was brought in with its times corrected.
   *
   * @param file name of the file, without its folder
   * @param movedMillis true time minus that of the device, milliseconds, in [-86,400,000,
   *     86,400,000]
   */
  public record Imported(String file, long movedMillis) {
    /** Checks the range. */
    public Imported {
      Checks.between("moved", (double) movedMillis, -86_400_000, 86_400_000);
    }
  }

  /** Returns this outcome with a correction kept for a file, in the place of any earlier one. */
  public Outcome withImport(Imported imported) {
    List<Imported> after = new ArrayList<>(imports);
    after.removeIf(one -> one.file().equals(imported.file()));
    after.add(imported);
    return new Outcome(weighIn, result, media, after);
  }

  /** Returns by how much the times of a file were moved when it was last brought in, or 0. */
  public long movedMillis(String file) {
    return imports.stream()
        .filter(one -> one.file().equals(file))
        .mapToLong(Imported::movedMillis)
        .findFirst()
        .orElse(0);
  }

  /** Returns this outcome with another weigh-in. */
  public Outcome withWeighIn(List<NetWeight> newWeighIn) {
    return new Outcome(newWeighIn, result, media, imports);
  }

  /** Returns this outcome with other footage. */
  public Outcome withMedia(List<Media> newMedia) {
    return new Outcome(weighIn, result, newMedia, imports);
  }

  /** Returns this outcome with another result. */
  public Outcome withResult(@Nullable Result newResult) {
    return new Outcome(weighIn, newResult, media, imports);
  }
}
