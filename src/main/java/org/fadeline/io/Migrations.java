package org.fadeline.io;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Steps that bring an older file to the current version, each from one version to the next.
 *
 * @param steps the first goes from version 1 to 2
 */
record Migrations(List<UnaryOperator<Json.Obj>> steps) {
  /** The steps of this program. Version 1 is the first, so there are none yet. */
  static final Migrations KNOWN = new Migrations(List.of());

  Migrations {
    steps = List.copyOf(steps);
  }

  /** Returns the newest version that the steps lead to. */
  int current() {
    return steps.size() + 1;
  }

  /**
   * Brings a file of a version from 1 to {@link #current()} to the current one.
   *
   * @throws IllegalArgumentException if the version is not known
   */
  Json.Obj toCurrent(Json.Obj root, int version) {
    if (version < 1 || version > current()) {
      throw new IllegalArgumentException("no way from version " + version);
    }
    Json.Obj migrated = root;
    for (UnaryOperator<Json.Obj> step : steps.subList(version - 1, steps.size())) {
      migrated = step.apply(migrated);
    }
    return migrated;
  }
}
