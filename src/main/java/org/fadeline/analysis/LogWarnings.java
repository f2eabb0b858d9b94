package org.fadeline.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.Course.Warning;
import org.fadeline.analysis.Effort.FishMark;
import org.fadeline.analysis.Effort.LineEffort;
import org.fadeline.model.EventKind;
import org.fadeline.model.SessionEvent;

/** What the log leaves open, and what follows from it. */
final class LogWarnings {
  /** No entry for this long while a line was being fished is called a gap in the log. */
  private static final long GAP_MILLIS = 40 * 60_000L;

  private final Effort effort;
  private final Grade grade;
  private final double precision;
  private final HandlingTimes handling;
  private final SentenceText words;

  LogWarnings(
      Effort effort, Grade grade, double precision, HandlingTimes handling, SentenceText words) {
    this.handling = handling;
    this.effort = effort;
    this.grade = grade;
    this.precision = precision;
    this.words = words;
  }

  List<Warning> list() {
    List<Warning> warnings = new ArrayList<>();
    grade(warnings);
    precision(warnings);
    handling(warnings);
    openings(warnings);
    weights(warnings);
    gaps(warnings);
    return warnings;
  }

  private void grade(List<Warning> warnings) {
    switch (grade) {
      case FULL -> {}
      case MOVES_AND_FISH ->
          warnings.add(
              new Warning(
                  null,
                  "Casts and missed bites are not logged: fades are judged on hook-ups, and time"
                      + " spent playing fish counts as fishing, which flattens a fade."));
      case FISH_ONLY ->
          warnings.add(
              new Warning(
                  null,
                  "Neither casts nor moves are logged: this record cannot tell when a line was"
                      + " left."));
      case COUNTS ->
          warnings.add(
              new Warning(
                  null,
                  "Only clicker counts are logged: nothing finer than the time between two counts"
                      + " can be told."));
    }
  }

  private void precision(List<Warning> warnings) {
    if (precision >= Imputation.COARSE_SECONDS) {
      warnings.add(
          new Warning(
              null,
              "Times are told to "
                  + Math.round(precision / 60)
                  + " min: the moment of a fade is widened to allow for it, and nothing finer can"
                  + " be told."));
    }
  }

  private void handling(List<Warning> warnings) {
    for (LineEffort line : effort.lines()) {
      double seconds = handling.millis(line.line().kind()) / 1000;
      boolean takenOff =
          line.spells().stream().anyMatch(spell -> spell.baitHours() < spell.fishedHours());
      if (seconds > 0 && takenOff && grade != Grade.COUNTS && !casts(line.line().id())) {
        warnings.add(
            new Warning(
                null,
                SentenceText.sentence(words.line(line.line().id()))
                    + ": no cast after a fish is logged; its bites an hour and its fades rest on "
                    + Math.round(seconds)
                    + " s taken off for each fish, as set for that kind of line."));
      }
    }
  }

  /** Returns whether any cast follows a fish of a line: then its own gaps are used. */
  private boolean casts(String line) {
    boolean fish = false;
    for (SessionEvent event : effort.session().events()) {
      if (line.equals(event.lineId())) {
        fish |= event.fishOrNull() != null;
        if (fish && event.kind() == EventKind.CAST) {
          return true;
        }
      }
    }
    return false;
  }

  private void openings(List<Warning> warnings) {
    for (LineEffort line : effort.lines()) {
      long opening = line.spells().stream().filter(Spell::opensWithFish).count();
      if (opening > 0) {
        Spell first = line.spells().stream().filter(Spell::opensWithFish).findFirst().orElseThrow();
        warnings.add(
            new Warning(
                first.span().from(),
                SentenceText.sentence(words.line(line.line().id()))
                    + ": "
                    + (opening == 1 ? "a spell opens" : opening + " spells open")
                    + " with a fish and no cast logged before it; that fish is left out of its"
                    + " rates."));
      }
    }
  }

  private void weights(List<Warning> warnings) {
    int without = 0;
    int all = 0;
    for (LineEffort line : effort.lines()) {
      for (FishMark fish : line.fish()) {
        all++;
        without += fish.grams() == null ? 1 : 0;
      }
    }
    if (without > 0) {
      warnings.add(
          new Warning(
              null,
              without
                  + " of "
                  + all
                  + " fish have no weight: weights an hour of their lines are not given."));
    }
  }

  private void gaps(List<Warning> warnings) {
    List<SessionEvent> events = effort.session().events();
    for (Spell spell : effort.spells()) {
      long last = spell.span().from();
      int first = SortedLists.firstFrom(events, SessionEvent::at, last);
      for (SessionEvent event : events.subList(first, events.size())) {
        if (event.kind().group() == EventKind.Group.FRAME) {
          continue;
        }
        long now = Math.min(event.at(), spell.span().to());
        warnGap(warnings, spell, last, now);
        last = now;
        if (event.at() >= spell.span().to()) {
          break;
        }
      }
      warnGap(warnings, spell, last, spell.span().to());
    }
  }

  private void warnGap(List<Warning> warnings, Spell spell, long from, long to) {
    if (to - from >= GAP_MILLIS) {
      warnings.add(
          new Warning(
              from,
              "Nothing is logged from "
                  + words.clocks(from, to)
                  + " on "
                  + words.line(spell.lineId())
                  + ": nothing happened, or nothing was written down; the figures take it as"
                  + " fished without a bite."));
    }
  }
}
