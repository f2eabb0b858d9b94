package org.fadeline.ui.season;

import java.util.List;
import java.util.TreeSet;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.LineSummary;

/**
 * What a folder's sessions can be filtered by.
 *
 * @param waters names as written first, told apart whatever their capitals
 * @param months 1 to 12
 * @param lines kinds of line, or names of lines without one, in lower case
 */
record FilterOffers(TreeSet<String> waters, TreeSet<Integer> months, TreeSet<String> lines) {
  static FilterOffers of(List<SessionSummary> sessions) {
    FilterOffers offers =
        new FilterOffers(
            new TreeSet<>(String.CASE_INSENSITIVE_ORDER), new TreeSet<>(), new TreeSet<>());
    for (SessionSummary session : sessions) {
      String water = session.about().water();
      if (water != null) {
        offers.waters.add(water.strip());
      }
      if (session.about().dated()) {
        offers.months.add(session.about().date().getMonthValue());
      }
      for (LineSummary line : session.lines()) {
        offers.lines.add(line.group());
      }
    }
    return offers;
  }
}
