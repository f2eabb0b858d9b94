package org.fadeline.ui.replay;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * The arrow keys on the peg: Left and Right pick the next line across the swim, with Shift they
 * turn the one picked, and Shift with Up and Down puts it further out or nearer.
 */
final class PegKeys {
  private static final double STEP_M = 0.5;
  private static final double STEP_DEGREES = 1;
  private static final double FARTHEST_M = 200;
  private static final List<KeyCode> ARROWS =
      List.of(KeyCode.LEFT, KeyCode.RIGHT, KeyCode.UP, KeyCode.DOWN);

  private @Nullable String picked;

  /** Returns whether a key is one of these. */
  static boolean uses(KeyEvent key) {
    return ARROWS.contains(key.getCode())
        && !key.isShortcutDown()
        && !key.isAltDown()
        && !key.isMetaDown();
  }

  /** Returns the line picked that a session still has and that has a place, or empty. */
  Optional<Line> picked(Session session) {
    return placed(session).stream().filter(l -> l.id().equals(picked)).findFirst();
  }

  /** Picks the next line to the left or right, or the first one. */
  void pickNext(Session session, KeyCode arrow) {
    List<Line> lines = placed(session);
    if (lines.isEmpty()) {
      return;
    }
    int now = picked(session).map(lines::indexOf).orElse(-1);
    boolean back = arrow == KeyCode.LEFT || arrow == KeyCode.DOWN;
    int next = now < 0 ? 0 : Math.floorMod(now + (back ? -1 : 1), lines.size());
    picked = lines.get(next).id();
  }

  /** Returns where an arrow key with Shift puts a line; the depth stays, pole sections do not. */
  static Line.Place nudged(Line line, KeyCode arrow) {
    Line.Place place = line.place();
    double distance = Objects.requireNonNull(place.distanceM());
    double bearing = place.bearingDegrees() == null ? 0 : place.bearingDegrees();
    boolean turned = arrow == KeyCode.LEFT || arrow == KeyCode.RIGHT;
    double out = arrow == KeyCode.UP ? STEP_M : arrow == KeyCode.DOWN ? -STEP_M : 0;
    double right =
        arrow == KeyCode.RIGHT ? STEP_DEGREES : arrow == KeyCode.LEFT ? -STEP_DEGREES : 0;
    return new Line.Place(
        Math.max(STEP_M, Math.min(FARTHEST_M, distance + out)),
        turned ? place.sections() : null,
        Math.max(-180, Math.min(180, bearing + right)),
        place.depthM());
  }

  private static List<Line> placed(Session session) {
    return session.lines().stream()
        .filter(l -> l.place().distanceM() != null)
        .sorted(
            Comparator.comparingDouble(
                l -> l.place().bearingDegrees() == null ? 0 : l.place().bearingDegrees()))
        .toList();
  }
}
