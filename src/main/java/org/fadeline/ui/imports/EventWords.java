package org.fadeline.ui.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** What an event holds besides its time, kind and line, in a few words. */
final class EventWords {
  private EventWords() {}

  static String details(SessionEvent event, Units units) {
    List<String> words = new ArrayList<>();
    Fish fish = event.fishOrNull();
    if (fish != null) {
      add(words, fish.count() == 1 ? null : String.valueOf(fish.count()));
      add(words, fish.species());
      add(words, fish.grams() == null ? null : Say.fishWeight(fish.grams(), units));
    }
    if (event instanceof SessionEvent.Lost lost) {
      add(words, lost.species());
    }
    if (event instanceof SessionEvent.Change change) {
      add(words, change.hookbait());
    }
    if (event instanceof SessionEvent.Net net && net.net() != null) {
      add(words, "net " + net.net());
    }
    if (event instanceof SessionEvent.Fed fed) {
      feed(words, fed.feed());
    }
    add(words, event.reasonOrNull());
    return String.join(", ", words);
  }

  private static void feed(List<String> words, Feed feed) {
    Feed.Amount amount = feed.amount();
    if (amount == null) {
      add(words, feed.bait());
    } else {
      boolean pieces = amount.unit() == Feed.Unit.PIECES;
      String unit = pieces ? "" : " " + amount.unit().word();
      String of = feed.bait() == null ? "" : (pieces ? " " : " of ") + feed.bait();
      add(words, Say.number(amount.value()) + unit + of);
    }
    add(words, feed.method());
    Feed.Pattern pattern = feed.pattern();
    if (pattern != null) {
      add(words, String.format(Locale.ROOT, "every %.0f s", pattern.everySeconds()));
    }
  }

  private static void add(List<String> words, @Nullable String word) {
    if (word != null) {
      words.add(word);
    }
  }
}
