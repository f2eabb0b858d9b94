package org.fadeline.io;

import java.util.Set;

/** Ids e1, e2, … that are not taken yet, for events that a file gives none. */
public final class FreshIds {
  private final Set<String> taken;
  private int last;

  /** Makes ids beside those taken, from e1 on. */
  public FreshIds(Set<String> taken) {
    this(taken, 0);
  }

  /** Makes ids beside those taken, from the one after a number on. */
  public FreshIds(Set<String> taken, int last) {
    this.taken = taken;
    this.last = last;
  }

  /** Returns the next one. */
  public String next() {
    do {
      last++;
    } while (taken.contains("e" + last));
    return "e" + last;
  }
}
