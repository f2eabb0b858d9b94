package org.fadeline.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fadeline.model.EventKind;
import org.fadeline.model.EventText;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** What is said of a mark on the timeline, as far as it is known. */
final class MarkWords {
  private final FigureText words;
  private final Knowledge knowledge;

  MarkWords(FigureText words, Knowledge knowledge) {
    this.words = words;
    this.knowledge = knowledge;
  }

  /**
   * Returns what a mark stands for.
   *
   * @param record the lane, or null for an event of no line
   */
  Hit of(MarkPlaces.Mark mark, @Nullable LaneRecord record) {
    return mark.isColumn() ? column(mark, record) : event(mark.events().get(0), record);
  }

  private static String line(@Nullable LaneRecord record) {
    return record == null ? "" : ", " + record.review.line().name();
  }

  private Hit column(MarkPlaces.Mark mark, @Nullable LaneRecord record) {
    List<SessionEvent> events = mark.events();
    SessionEvent first = events.get(0);
    Map<EventKind, Integer> counts = new EnumMap<>(EventKind.class);
    double grams = 0;
    for (SessionEvent event : events) {
      counts.merge(event.kind(), 1, Integer::sum);
      Fish fish = event.fishOrNull();
      Double weight = fish == null ? null : fish.grams();
      grams += weight == null ? 0 : weight;
    }
    List<String> rows = new ArrayList<>();
    rows.add(
        words.clockSeconds(first.at())
            + "–"
            + words.clockSeconds(events.get(events.size() - 1).at())
            + line(record));
    rows.add(
        counts.entrySet().stream()
                .map(count -> count.getKey().word() + " " + count.getValue())
                .collect(Collectors.joining(", "))
            + (grams > 0 ? ", " + words.fineWeight(grams) : ""));
    rows.add("closer, they come apart");
    return new Hit(
        Hit.Kind.COLUMN,
        first.id(),
        events.stream().map(SessionEvent::id).toList(),
        record == null ? null : record.id(),
        first.at(),
        events.size() + " events in one column",
        rows);
  }

  private Hit event(SessionEvent event, @Nullable LaneRecord record) {
    List<String> rows = new ArrayList<>();
    rows.add(words.clockSeconds(event.at()) + line(record));
    Fish fish = event.fishOrNull();
    if (fish != null) {
      rows.add(fishRow(fish));
    }
    if (event instanceof SessionEvent.Fed fed) {
      rows.addAll(feedRows(fed.feed()));
    }
    String besides = EventText.besidesFishAndFeed(event);
    if (!besides.isEmpty()) {
      rows.add(besides);
    }
    String note = event.note();
    if (note != null && !note.isBlank()) {
      rows.add(note);
    }
    return new Hit(
        Hit.Kind.EVENT,
        event.id(),
        List.of(event.id()),
        record == null ? null : record.id(),
        event.at(),
        FigureText.capital(event.kind().word()),
        rows);
  }

  private String fishRow(Fish fish) {
    StringBuilder row = new StringBuilder();
    row.append(fish.count() == 1 ? "" : fish.count() + " ");
    row.append(fish.species() == null ? "fish" : fish.species());
    if (fish.grams() != null) {
      row.append(", ").append(words.fineWeight(fish.grams()));
      row.append(fish.weighed() ? ", weighed" : ", estimated");
    } else {
      row.append(", no weight given");
    }
    return row.toString();
  }

  private List<String> feedRows(Feed feed) {
    List<String> rows = new ArrayList<>();
    rows.add(EventText.feed(feed));
    Feed.Pattern pattern = feed.pattern();
    if (pattern != null) {
      Long until = pattern.until();
      rows.add(
          EventText.every(pattern)
              + (until == null || !knowledge.knows(until) ? "" : " until " + words.clock(until)));
    }
    rows.removeIf(String::isEmpty);
    return rows;
  }
}
