package org.fadeline.figure;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fadeline.model.Line;
import org.fadeline.model.LineCodes;
import org.fadeline.model.Session;
import org.fadeline.model.Units;

/** The rows a bank sheet shows filled in: shorthand, with the codes of the session's own lines. */
public final class BankSheetExample {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  private BankSheetExample() {}

  /**
   * Returns the rows, each one event of the shorthand.
   *
   * @param units whose weights are written
   */
  public static List<String> rows(Session session, Units units) {
    Map<String, String> codes = LineCodes.of(session.lines());
    List<Line> lines = session.lines();
    String first = lines.isEmpty() ? "short" : codes.getOrDefault(lines.get(0).id(), "");
    String second = lines.size() < 2 ? first : codes.getOrDefault(lines.get(1).id(), "");
    String weight = units.weight() == Units.Weight.KG ? "1.4 kg" : "3lb 2oz";
    List<String> rows = new ArrayList<>();
    rows.add(at(session, 0) + " all in");
    rows.add(at(session, 2) + " " + first + " fed 10 pellets");
    rows.add(at(session, 9) + " " + first + " landed carp " + weight);
    rows.add(at(session, 14) + " " + first + " lost");
    rows.add(at(session, 25) + " " + first + " move resting");
    rows.add(at(session, 26) + " " + second + " cast");
    return rows;
  }

  private static String at(Session session, int minute) {
    return session.clock(session.match().allIn() + minute * 60_000L).format(CLOCK);
  }
}
