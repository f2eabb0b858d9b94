package org.fadeline.io;

import java.util.Set;

/** Ids e1, e2, … that are not taken yet, for events that a file gives none. */
public final class FreshIds {
  private final Set<String> taken;
  private int last;

  /** Makes ids beside those taken. */
  public FreshIds(Set<String> taken) {
    this.taken = taken;
  }

  /** Returns the next one. */
  public String next() {
    do {
      last++;
    } while (taken.contains("e" + last));
    return "e" + last;
  }
}
