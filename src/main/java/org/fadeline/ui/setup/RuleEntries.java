package org.fadeline.ui.setup;

import java.util.List;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.fadeline.ui.control.form.Entry;
import org.jspecify.annotations.Nullable;

/** The rules of the match, as the organiser told them. */
final class RuleEntries {
  private RuleEntries() {}

  private static Entry<Session> rule(Entry<MatchRules> entry) {
    return entry
        .within(Match::rules, (Match m, MatchRules rules) -> m.withRules(rules))
        .within(Session::match, Session::withMatch);
  }

  /** Returns how long after all out a fish being played still counts. */
  static Entry<Session> extraMinutes() {
    return rule(
        Entry.number(
            "extra-minutes",
            "Minutes for a fish on at all out",
            "0, 10 or 15",
            r -> r.playingAtWhistleMinutes() == 0 ? null : r.playingAtWhistleMinutes(),
            (r, minutes) -> r.withPlayingAtWhistleMinutes(minutes == null ? 0 : minutes)));
  }

  /** Returns the net limit, what is let pass over it, and what going over costs. */
  static List<Entry<Session>> nets() {
    return List.of(
        rule(
            new Entry<>(
                "net-limit",
                "Net limit",
                "50 lb",
                (r, units) -> weight(r.netLimit() == null ? null : r.netLimit().grams(), units),
                (r, text, units) -> r.withNetLimit(limit(r.netLimit(), text, units)))),
        rule(
            new Entry<>(
                "net-tolerance",
                "Let pass over it",
                "2 lb",
                (r, units) -> tolerance(r.netLimit(), units),
                (r, text, units) -> withTolerance(r, text, units))),
        rule(
            Entry.words(
                "net-exceeding",
                "Over it",
                "that net counts as nothing",
                r -> r.netLimit() == null ? null : r.netLimit().exceeding(),
                (r, text) -> withExceeding(r, text))));
  }

  /** Returns the organiser's rules in their own words. */
  static Entry<Session> organiser() {
    return rule(
        Entry.words(
            "organiser-rules",
            "Organiser's rules",
            "silvers and carp apart",
            MatchRules::organiserRules,
            MatchRules::withOrganiserRules));
  }

  private static String weight(@Nullable Double grams, Units units) {
    return grams == null ? "" : WeightText.format(grams, units.weight());
  }

  private static String tolerance(@Nullable NetLimit limit, Units units) {
    return limit == null || limit.toleranceGrams() == 0
        ? ""
        : weight(limit.toleranceGrams(), units);
  }

  private static @Nullable NetLimit limit(@Nullable NetLimit now, String text, Units units) {
    if (text.isBlank()) {
      return null;
    }
    double grams = WeightText.grams(text, units.weight());
    return now == null
        ? new NetLimit(grams, 0, null)
        : new NetLimit(grams, now.toleranceGrams(), now.exceeding());
  }

  private static MatchRules withTolerance(MatchRules rules, String text, Units units) {
    NetLimit limit = rules.netLimit();
    if (limit == null) {
      return withoutLimit(rules, text);
    }
    double grams = text.isBlank() ? 0 : WeightText.grams(text, units.weight());
    return rules.withNetLimit(new NetLimit(limit.grams(), grams, limit.exceeding()));
  }

  private static MatchRules withExceeding(MatchRules rules, @Nullable String text) {
    NetLimit limit = rules.netLimit();
    return limit == null
        ? withoutLimit(rules, text == null ? "" : text)
        : rules.withNetLimit(new NetLimit(limit.grams(), limit.toleranceGrams(), text));
  }

  private static MatchRules withoutLimit(MatchRules rules, String text) {
    if (text.isBlank()) {
      return rules;
    }
    throw new IllegalArgumentException("set the net limit first");
  }
}
