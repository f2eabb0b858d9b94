package org.fadeline.ui.replay;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fadeline.analysis.Course.Finish;
import org.fadeline.analysis.Course.Pace;
import org.fadeline.analysis.Course.Rolling;
import org.fadeline.analysis.Course.RollingPoint;
import org.fadeline.analysis.EstimateError;
import org.fadeline.analysis.LineReview;
import org.fadeline.analysis.NetCourse;
import org.fadeline.analysis.NetText;
import org.fadeline.analysis.Rate;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.SentenceText;
import org.fadeline.analysis.Spell;
import org.fadeline.model.EventKind;
import org.fadeline.model.Line;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.replay.ReplayFrame;
import org.fadeline.replay.ReplayFrame.LineState;
import org.fadeline.replay.ReplayFrame.Phase;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.WorkbenchState;
import org.jspecify.annotations.Nullable;

/**
 * The words and figures at the playhead. As known then, none of them rests on anything later.
 *
 * @param clock clock time to the second
 * @param toGo time left, and what is being fished
 * @param weight running weight, first what counts, then what it rests on
 * @param pace the finish as it can be told, and how sure
 * @param cards one for each line, in the session's order
 */
public record Readout(String clock, Pair toGo, Pair weight, Pair pace, List<Card> cards) {
  /** Nothing to tell. */
  static final Readout NOTHING =
      new Readout("", new Pair("", ""), new Pair("", ""), new Pair("", ""), List.of());

  /** Rates from fewer fished minutes than this are not told. */
  private static final double TOLD_FROM_MINUTES = 10;

  /** A rig out for longer has ended the stay on its line. */
  private static final long SHORT_OFF = 600_000;

  private static final long MINUTE = 60_000;

  /** Copies the list. */
  public Readout {
    cards = List.copyOf(cards);
  }

  /**
   * A headline and the line below it.
   *
   * @param head what matters
   * @param note what it rests on; may be empty
   * @param more sentences for who asks further; may be empty
   */
  public record Pair(String head, String note, List<String> more) {
    /** Copies the list. */
    public Pair {
      more = List.copyOf(more);
    }

    Pair(String head, String note) {
      this(head, note, List.of());
    }
  }

  /**
   * One line at the playhead.
   *
   * @param lineId the line
   * @param fishing whether it is being fished
   * @param now its rate now, or where it stands
   * @param rests limits and what they rest on; may be empty
   * @param since how long ago it was fed and bit, or that it has not been fished; may be empty
   */
  public record Card(String lineId, boolean fishing, String now, String rests, String since) {}

  /** Returns the readout of a state with an open session, or empty without one. */
  public static Optional<Readout> of(WorkbenchState state, Units units) {
    OpenSession open = state.open();
    return open == null ? Optional.empty() : Optional.of(new Maker(state, open, units).make());
  }

  /** Puts one readout together. */
  static final class Maker {
    private final Session session;
    private final @Nullable Review review;
    private final boolean hindsight;
    private final ReplayFrame frame;
    private final Units units;
    private final ZoneId zone;
    private final long at;

    Maker(WorkbenchState state, OpenSession open, Units units) {
      this.session = open.session();
      this.review = state.told();
      this.hindsight = state.choices().hindsight();
      this.at = state.playhead().at();
      this.frame = open.track().frameAt(at);
      this.units = units;
      this.zone = session.occasion().zone();
    }

    Readout make() {
      List<Card> cards = new ArrayList<>();
      for (Line line : session.lines()) {
        cards.add(card(line));
      }
      return new Readout(Say.clock(at, zone), toGo(), weight(), pace(), cards);
    }

    private Pair toGo() {
      String fishing =
          frame.fishing() == null
              ? rigOut() == null ? "between lines" : "rig out"
              : session
                  .line(frame.fishing())
                  .map(l -> "fishing " + SentenceText.named(l.name()))
                  .orElse("");
      return switch (frame.phase()) {
        case BEFORE -> new Pair("all in at " + Say.shortClock(session.match().allIn(), zone), "");
        case FISHING -> new Pair(Say.span(session.match().allOut() - at) + " to go", fishing);
        case STOPPED ->
            new Pair("match stopped", Say.span(session.match().allOut() - at) + " to go");
        case AFTER -> new Pair("all out", "");
      };
    }

    private Pair weight() {
      ReplayFrame.Totals totals = frame.totals();
      if (totals.weightG() <= 0 && totals.fish() > 0) {
        return new Pair(Say.fish(totals.fish()), "no weights logged");
      }
      StringBuilder note = new StringBuilder(Say.fish(totals.fish()));
      if (totals.fish() > 0) {
        note.append(totals.weighed() ? ", weighed" : ", estimated");
      }
      List<String> more = new ArrayList<>();
      NetCourse.Standing nets = nets();
      if (hindsight && !session.outcome().weighIn().isEmpty()) {
        double scales = session.outcome().weighIn().stream().mapToDouble(NetWeight::grams).sum();
        String end = "scales at the end " + Say.weight(scales, units);
        // Beside a net there is no room for both in the head of a small window.
        if (nets == null) {
          note.append("; ").append(end);
        } else {
          more.add(Say.capital(end) + ".");
        }
      }
      if (nets != null) {
        NetText words = new NetText(units);
        note.append("; ").append(words.brief(nets.inUse()));
        EstimateError error = Objects.requireNonNull(review).settings().estimates();
        nets.all().forEach(net -> more.add(words.full(net, error)));
      }
      return new Pair(Say.weight(totals.weightG(), units), note.toString(), more);
    }

    /** Returns the nets against their limit, or null where there is none or nothing in them. */
    private NetCourse.@Nullable Standing nets() {
      return review == null || session.match().rules().netLimit() == null
          ? null
          : review.course().nets().at(at);
    }

    private Pair pace() {
      Pace pace = latestPace();
      if (pace == null || frame.phase() == Phase.BEFORE || frame.phase() == Phase.AFTER) {
        return new Pair("–", frame.phase() == Phase.AFTER ? "all out" : "too soon for a finish");
      }
      String sure = "at this rate, " + oddsOf(pace.fish().level());
      String note =
          pace.tiringTells()
              ? sure.replace(" times in ", " in ")
                  + "; "
                  + range(pace.tiring().fish(), pace.tiring().weight())
                  + " if it tires"
              : "by all out " + sure;
      return new Pair(range(pace.fish(), pace.weight()), note);
    }

    private String range(Finish fish, @Nullable Finish weight) {
      return weight == null
          ? Math.round(fish.low()) + "–" + Math.round(fish.high()) + " fish"
          : Say.roughWeights(weight.low(), weight.high(), units);
    }

    private @Nullable Pace latestPace() {
      Pace latest = null;
      if (review != null) {
        for (Pace pace : review.course().pace()) {
          if (pace.at() > at) {
            break;
          }
          latest = pace;
        }
      }
      return latest;
    }

    static String oddsOf(double level) {
      long percent = Math.round(level * 100);
      return percent == 90
          ? "9 times in 10"
          : percent == 95 ? "19 times in 20" : percent + "% sure";
    }

    private Card card(Line line) {
      LineState state = frame.line(line.id()).orElse(new LineState(line.id(), 0, 0, 0, null, null));
      boolean fishing = line.id().equals(frame.fishing());
      Pair now = fishing ? rateNow(line) : standing(line, state);
      String since = since(state);
      if (now.head.isEmpty() && logTellsWhatWasFished()) {
        since = since.isEmpty() ? "not fished yet" : "not fished yet, " + since;
      }
      return new Card(line.id(), fishing, now.head, now.note, since);
    }

    /** A log without moves cannot say that a line had not been fished. */
    private boolean logTellsWhatWasFished() {
      return review != null
          && switch (review.summary().grade()) {
            case FULL, MOVES_AND_FISH -> true;
            case FISH_ONLY, COUNTS -> false;
          };
    }

    private Pair rateNow(Line line) {
      RollingPoint point = pointOf(line);
      if (point == null || point.fish() == null) {
        return new Pair("just begun", "");
      }
      String rests =
          Say.fish(point.caught().landed()) + " in " + Math.round(point.fishedMinutes()) + " min";
      if (point.fishedMinutes() < TOLD_FROM_MINUTES) {
        return new Pair("too soon for a rate", rests);
      }
      if (point.caught().landed() == 0) {
        return new Pair(
            rests, "up to " + Say.number(point.fish().high()) + " an hour not ruled out");
      }
      Rate fish = Objects.requireNonNull(limitsOf(point));
      Rate weight = point.weight();
      if (weight == null) {
        return new Pair(
            Say.number(fish.perHour()) + " fish an hour", Say.limits(fish) + "; " + rests);
      }
      return new Pair(
          Say.roughWeight(weight.perHour(), units)
              + " an hour ("
              + Say.roughWeights(weight.low(), weight.high(), units)
              + ")",
          Say.number(fish.perHour()) + " fish an hour (" + Say.limits(fish) + "), " + rests);
    }

    /** The limits that allow for bunching, as far as it had shown by then. */
    private static @Nullable Rate limitsOf(RollingPoint point) {
      return point.fishWide() != null ? point.fishWide() : point.fish();
    }

    private @Nullable RollingPoint pointOf(Line line) {
      if (review == null) {
        return null;
      }
      for (Rolling rolling : review.course().rolling()) {
        if (rolling.lineId().equals(line.id())) {
          return lastBy(rolling.points());
        }
      }
      return null;
    }

    private @Nullable RollingPoint lastBy(List<RollingPoint> points) {
      if (points.isEmpty()) {
        return null;
      }
      int index = (int) Math.floorDiv(at - points.get(0).at(), MINUTE);
      index = Math.min(index, points.size() - 1);
      return index >= 0 ? points.get(index) : null;
    }

    /** Returns the event that took the rig out, where that is the last seen of it, or null. */
    private @Nullable SessionEvent rigOut() {
      for (int i = frame.eventsSeen() - 1; i >= 0; i--) {
        SessionEvent event = session.events().get(i);
        EventKind.Group group = event.kind().group();
        if (group == EventKind.Group.WATER || group == EventKind.Group.MOVE) {
          boolean out = event.kind() == EventKind.OFF && at - event.at() <= SHORT_OFF;
          return out ? event : null;
        }
      }
      return null;
    }

    private Pair standing(Line line, LineState state) {
      SessionEvent out = rigOut();
      if (out != null && line.id().equals(out.lineId())) {
        return new Pair("rig out", "since " + Say.shortClock(out.at(), zone));
      }
      Spell last = lastSpell(line);
      if (last == null) {
        return new Pair(state.bites() > 0 ? "not being fished" : "", "");
      }
      long left = last.span().to();
      String rested = ", rested " + Say.span(at - left);
      return new Pair("left " + Say.shortClock(left, zone) + rested, gave(last).orElse(""));
    }

    /** Returns what a stay gave, weight first, or empty where it was too short to say. */
    private Optional<String> gave(Spell stay) {
      double hours = stay.fishedHours();
      if (hours * 60 < TOLD_FROM_MINUTES || stay.caught().landed() == 0) {
        return Optional.empty();
      }
      return Optional.of(
          stay.caught().weightG() > 0
              ? "gave " + Say.roughWeight(stay.caught().weightG() / hours, units) + " an hour"
              : "gave " + Say.number(stay.caught().landed() / hours) + " fish an hour");
    }

    private @Nullable Spell lastSpell(Line line) {
      Spell last = null;
      if (review != null) {
        Optional<LineReview> found = review.line(line.id());
        if (found.isPresent()) {
          for (Spell spell : found.get().spells()) {
            if (spell.span().to() <= at) {
              last = spell;
            }
          }
        }
      }
      return last;
    }

    private String since(LineState state) {
      List<String> parts = new ArrayList<>();
      if (state.lastFed() != null) {
        parts.add("fed " + Say.span(at - state.lastFed()));
      }
      if (state.lastBite() != null) {
        parts.add("bite " + Say.span(at - state.lastBite()));
      }
      return parts.isEmpty() ? "" : String.join(", ", parts) + " ago";
    }
  }
}
