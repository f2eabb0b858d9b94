package org.fadeline.analysis.merge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.fadeline.analysis.merge.Clash.Choice;
import org.fadeline.analysis.merge.Pairing.Pair;
import org.fadeline.model.EventKind;
import org.fadeline.model.EventText;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.jspecify.annotations.Nullable;

/**
 * Two records of one match, such as the angler's and a friend's, put together. What both tell alike
 * is taken once; what one tells alone is taken; what they tell differently is a {@link Clash}.
 * Nothing is dropped without being named.
 */
public final class Merge {
  /** Farther apart than this, and two events are two. */
  private static final long TOLERANCE_MILLIS = 90_000;

  /** Closer than this, and a fish told by both is one fish. */
  private static final long SURELY_ONE_MILLIS = 20_000;

  private final Session mine;
  private final ClockOffset offset;
  private final List<Line> lines;
  private final List<SessionEvent> kept = new ArrayList<>();
  private final List<SessionEvent> added = new ArrayList<>();
  private final List<Clash> clashes = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private Outcome outcome;
  private int same;

  private Merge(Session mine, Session theirs, @Nullable ClockOffset given) {
    this.mine = mine;
    this.lines = new ArrayList<>(mine.lines());
    this.outcome = mine.outcome();
    Map<String, String> lineIds = mapLines(theirs);
    List<SessionEvent> own = renamed(theirs.events(), lineIds);
    if (given == null) {
      offset = Pairing.offset(mine.events(), own).orElse(ClockOffset.given(0));
      if (offset.inStep() == 0) {
        remarks.add(
            "Too few events are in step to compare the clocks; their times are taken as they are.");
      }
    } else {
      offset = given;
    }
    pair(own.stream().map(e -> e.retimed(at -> at - offset.millis())).toList());
    parts(theirs);
  }

  /**
   * Puts two records together.
   *
   * @param mine the first record, whose clock, title and rules are kept
   * @param theirs the second record
   * @param offset how far the second clock is ahead, or null: then it is found from the events
   */
  public static Merge of(Session mine, Session theirs, @Nullable ClockOffset offset) {
    return new Merge(mine, theirs, offset);
  }

  /** Returns how far the second clock was ahead. */
  public ClockOffset offset() {
    return offset;
  }

  /** Returns how many events both records tell alike. */
  public int same() {
    return same;
  }

  /** Returns the events that only the second record has, on the first one's clock. */
  public List<SessionEvent> added() {
    return List.copyOf(added);
  }

  /** Returns what the records tell differently, in time order. */
  public List<Clash> clashes() {
    return List.copyOf(clashes);
  }

  /** Returns what else is to be known: what was filled in and what was left where it is. */
  public List<String> remarks() {
    return List.copyOf(remarks);
  }

  private Map<String, String> mapLines(Session theirs) {
    Map<String, String> ids = new HashMap<>();
    // Lines of one spot share its feed here too: that of a line both know, else that of the first.
    Map<String, String> spots = new HashMap<>();
    List<Line> more = new ArrayList<>();
    Set<String> used = new HashSet<>();
    mine.lines().forEach(l -> used.add(l.id()));
    for (Line line : theirs.lines()) {
      Line known =
          mine.lines().stream()
              .filter(l -> l.name().equalsIgnoreCase(line.name()))
              .findFirst()
              .orElse(null);
      if (known != null) {
        ids.put(line.id(), known.id());
        spots.putIfAbsent(line.spot(), known.spot());
        if (!known.place().equals(line.place()) || !known.rig().equals(line.rig())) {
          remarks.add("Place or rig of " + known.name() + " differ; the first record's are kept.");
        }
        continue;
      }
      String id = line.id();
      for (int i = 2; !used.add(id); i++) {
        id = line.id() + "-" + i;
      }
      ids.put(line.id(), id);
      more.add(line);
      remarks.add("The line " + line.name() + " comes from the second record.");
    }
    for (Line line : more) {
      String id = ids.getOrDefault(line.id(), line.id());
      String spot = spots.computeIfAbsent(line.spot(), own -> id);
      lines.add(new Line(id, line.name(), line.kind(), spot, line.place(), line.rig()));
    }
    return ids;
  }

  private static List<SessionEvent> renamed(List<SessionEvent> events, Map<String, String> ids) {
    List<SessionEvent> all = new ArrayList<>();
    for (SessionEvent event : events) {
      String line = event.lineId();
      all.add(
          line == null
              ? event
              : event.withStamp(event.stamp().withLine(ids.getOrDefault(line, line))));
    }
    return all;
  }

  private void pair(List<SessionEvent> theirs) {
    List<SessionEvent> own = mine.events();
    Map<Integer, Integer> partner = new HashMap<>();
    Set<Integer> taken = new HashSet<>();
    Set<String> paired = new HashSet<>();
    Set<String> pairedOfTheirs = new HashSet<>();
    for (Pair pair : Pairing.pairs(own, theirs, TOLERANCE_MILLIS, Pairing::sameKind)) {
      partner.put(pair.mine(), pair.theirs());
      taken.add(pair.theirs());
      paired.add(own.get(pair.mine()).id());
      pairedOfTheirs.add(theirs.get(pair.theirs()).id());
    }
    Pairing.Likeness rest =
        (a, b) ->
            a.kind().isOutcome()
                && b.kind().isOutcome()
                && a.kind() != b.kind()
                && Pairing.linesAgree(a, b)
                && !paired.contains(a.id())
                && !pairedOfTheirs.contains(b.id());
    for (Pair pair : Pairing.pairs(own, theirs, SURELY_ONE_MILLIS, rest)) {
      partner.put(pair.mine(), pair.theirs());
      taken.add(pair.theirs());
    }
    for (int i = 0; i < own.size(); i++) {
      Integer other = partner.get(i);
      kept.add(other == null ? own.get(i) : together(own.get(i), theirs.get(other)));
    }
    boolean singles = own.stream().anyMatch(e -> e.kind() == EventKind.LANDED);
    for (int j = 0; j < theirs.size(); j++) {
      SessionEvent event = theirs.get(j);
      if (taken.contains(j)) {
        continue;
      }
      if (event.kind().group() == EventKind.Group.FRAME) {
        clashes.add(new Clash(Clash.Kind.CALL, null, event));
      } else if (event.kind() == EventKind.COUNT && singles) {
        clashes.add(new Clash(Clash.Kind.COUNT, null, event));
      } else {
        added.add(event);
      }
    }
    clashes.sort(Comparator.comparingLong(c -> c.theirs().at()));
  }

  /**
   * Returns the first record's event, filled in from the second; notes a clash where they differ.
   */
  private SessionEvent together(SessionEvent one, SessionEvent other) {
    Clash.Kind kind = clash(one, other);
    if (kind != null) {
      clashes.add(new Clash(kind, one, other));
      return one;
    }
    same++;
    Fish fish = one.fishOrNull();
    Fish more = other.fishOrNull();
    String note = one.note() == null ? other.note() : one.note();
    String line = one.lineId() == null ? other.lineId() : one.lineId();
    Stamp stamp = new Stamp(one.id(), one.at(), line, note);
    boolean reason = one instanceof SessionEvent.Move m && m.reason() == null;
    SessionEvent told = (reason ? other : one).withStamp(stamp);
    return fish == null || more == null ? told : told.withFish(filledIn(fish, more));
  }

  private static Fish filledIn(Fish fish, Fish more) {
    boolean weightOfOther = fish.grams() == null;
    return new Fish(
        fish.count(),
        fish.species() == null ? more.species() : fish.species(),
        weightOfOther ? more.grams() : fish.grams(),
        weightOfOther ? more.weighed() : fish.weighed());
  }

  private static Clash.@Nullable Kind clash(SessionEvent one, SessionEvent other) {
    if (one.kind() != other.kind()) {
      return Clash.Kind.FATE;
    }
    if (one.kind().isOutcome() && Math.abs(one.at() - other.at()) > SURELY_ONE_MILLIS) {
      return Clash.Kind.TWICE;
    }
    Fish fish = one.fishOrNull();
    Fish more = other.fishOrNull();
    if (fish != null && more != null) {
      if (differ(fish.grams(), more.grams())) {
        return Clash.Kind.WEIGHT;
      }
      return fish.count() != more.count() || differ(fish.species(), more.species())
          ? Clash.Kind.DETAIL
          : null;
    }
    if (one instanceof SessionEvent.Move a && other instanceof SessionEvent.Move b) {
      return differ(a.reason(), b.reason()) ? Clash.Kind.DETAIL : null;
    }
    boolean words = differ(one.note(), other.note());
    return words || !one.withStamp(other.stamp()).equals(other) ? Clash.Kind.DETAIL : null;
  }

  private static boolean differ(@Nullable Object a, @Nullable Object b) {
    return a != null && b != null && !a.equals(b);
  }

  private void parts(Session theirs) {
    Outcome other = theirs.outcome();
    if (outcome.weighIn().isEmpty() && !other.weighIn().isEmpty()) {
      outcome = outcome.withWeighIn(other.weighIn());
      remarks.add("The weigh-in comes from the second record.");
    } else {
      note("weigh-in", outcome.weighIn(), other.weighIn(), List.of());
    }
    if (outcome.result() == null && other.result() != null) {
      outcome = outcome.withResult(other.result());
      remarks.add("The result comes from the second record.");
    } else {
      note("result", outcome.result(), other.result(), null);
    }
    note("footage", outcome.media(), other.media(), List.of());
    note("rules of the match", mine.match().rules(), theirs.match().rules(), null);
    note(
        "calls",
        mine.match().allIn() + "-" + mine.match().allOut(),
        theirs.match().allIn()
            - offset.millis()
            + "-"
            + (theirs.match().allOut() - offset.millis()),
        null);
    note("peg", mine.occasion().peg(), theirs.occasion().peg(), null);
    note("water", mine.occasion().venue(), theirs.occasion().venue(), null);
    note("weather", mine.occasion().weather(), theirs.occasion().weather(), List.of());
    int unknown = theirs.document().unknown().size();
    if (unknown > 0) {
      remarks.add(
          unknown + " fields that this version does not know stay in the second file alone.");
    }
  }

  private void note(
      String what, @Nullable Object one, @Nullable Object other, @Nullable Object none) {
    if (!Objects.equals(one, other) && !Objects.equals(other, none)) {
      remarks.add(
          "The two records differ in their "
              + what
              + "; the first one's stays, the other file is"
              + " unchanged.");
    }
  }

  /**
   * Returns the merged session.
   *
   * @param choice what is kept at a clash
   * @param units in which a note tells what the other record says
   */
  public Session session(Function<Clash, Choice> choice, Units units) {
    Map<SessionEvent, Clash> byMine = new HashMap<>();
    clashes.forEach(
        c -> {
          if (c.mine() != null) {
            byMine.put(c.mine(), c);
          }
        });
    List<SessionEvent> all = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    mine.events().forEach(e -> ids.add(e.id()));
    Session named = mine.withLines(lines);
    for (SessionEvent event : kept) {
      Clash clash = byMine.get(event);
      Choice what = clash == null ? Choice.MINE : choice.apply(clash);
      if (clash == null) {
        all.add(event);
      } else if (what == Choice.BOTH) {
        all.add(event);
        all.add(fresh(clash.theirs(), ids));
      } else {
        SessionEvent winner = what == Choice.MINE ? event : clash.theirs();
        SessionEvent other = what == Choice.MINE ? clash.theirs() : event;
        all.add(noted(winner, event.id(), EventText.of(other, named, units)));
      }
    }
    for (Clash clash : clashes) {
      if (clash.mine() == null && choice.apply(clash) != Choice.MINE) {
        all.add(fresh(clash.theirs(), ids));
      } else if (clash.mine() == null) {
        Stamp s = clash.theirs().stamp();
        SessionEvent note = new SessionEvent.Note(new Stamp(s.id(), s.at(), null, null));
        SessionEvent told = noted(note, s.id(), EventText.of(clash.theirs(), named, units));
        all.add(fresh(told, ids));
      }
    }
    added.forEach(e -> all.add(fresh(e, ids)));
    return named.withEvents(all).withOutcome(outcome);
  }

  private static SessionEvent noted(SessionEvent event, String id, String other) {
    Stamp s = event.stamp();
    String words = (s.note() == null ? "" : s.note() + "; ") + "other record: " + other;
    return event.withStamp(new Stamp(id, s.at(), s.lineId(), words));
  }

  private static SessionEvent fresh(SessionEvent event, Set<String> ids) {
    Stamp s = event.stamp();
    String id = s.id();
    for (int i = 2; !ids.add(id); i++) {
      id = String.format(Locale.ROOT, "%s-%d", s.id(), i);
    }
    return event.withStamp(new Stamp(id, s.at(), s.lineId(), s.note()));
  }
}
