package org.fadeline.model.talk;

import java.util.List;

/**
 * What a talk leaves out.
 *
 * @param unnamed whether the water, its place, the peg's number, titles, free words of the record
 *     and other pegs are left out
 * @param names further names that are left out of the slides' words, such as people's
 */
public record Discretion(boolean unnamed, List<String> names) {
  /** Nothing left out. */
  public static final Discretion NONE = new Discretion(false, List.of());

  /** Copies the list. */
  public Discretion {
    names = List.copyOf(names);
  }
}
