package org.fadeline.ui.season;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.LineSummary;

/**
 * What a folder's sessions can be filtered by.
 *
 * @param waters names in lower case
 * @param months 1 to 12
 * @param lines kinds of line, or names of lines without one, in lower case
 */
record FilterOffers(TreeSet<String> waters, TreeSet<Integer> months, TreeSet<String> lines) {
  static FilterOffers of(List<SessionSummary> sessions) {
    FilterOffers offers = new FilterOffers(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
    for (SessionSummary session : sessions) {
      String water = session.about().water();
      if (water != null) {
        offers.waters.add(water.strip().toLowerCase(Locale.ROOT));
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
