package org.fadeline.model;

import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The words for what an event holds, the same wherever one is told; amounts as they were logged.
 */
public final class EventText {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);

  private EventText() {}

  /** Returns an event with all it holds: "10:51:20 short landed carp 8 lb 4 oz (slack line)". */
  public static String of(SessionEvent event, Session session, Units units) {
    StringBuilder text = new StringBuilder(session.clock(event.at()).format(CLOCK));
    String id = event.lineId();
    if (id != null) {
      text.append(' ').append(session.line(id).map(Line::name).orElse(id));
    }
    text.append(' ').append(event.kind().word());
    String details = details(event, units);
    text.append(details.isEmpty() ? "" : " " + details);
    if (event.note() != null) {
      text.append(" (").append(event.note()).append(')');
    }
    return text.toString();
  }

  /**
   * Returns what an event holds besides its time, kind, line and note: "carp 8 lb 4 oz", "150 ml of
   * casters, pot"; empty where it holds nothing else.
   */
  public static String details(SessionEvent event, Units units) {
    List<String> words = new ArrayList<>();
    Fish fish = event.fishOrNull();
    if (fish != null) {
      words.add(fish(fish, units));
    }
    if (event instanceof SessionEvent.Fed fed) {
      words.add(feed(fed.feed()));
      Feed.Pattern pattern = fed.feed().pattern();
      words.add(pattern == null ? "" : every(pattern));
    }
    words.add(besidesFishAndFeed(event));
    words.removeIf(String::isEmpty);
    return String.join(", ", words);
  }

  /** Returns a lost fish's species, a new hookbait, the net, a neighbour's peg or the reason. */
  public static String besidesFishAndFeed(SessionEvent event) {
    return switch (event.kind()) {
      case LOST -> orNothing(((SessionEvent.Lost) event).species());
      case CHANGE -> orNothing(((SessionEvent.Change) event).hookbait());
      case NET -> {
        Integer net = ((SessionEvent.Net) event).net();
        yield net == null ? "" : "net " + net;
      }
      case NEIGHBOUR -> {
        String peg = ((SessionEvent.Neighbour) event).peg();
        yield peg == null ? "" : "peg " + peg;
      }
      default -> orNothing(event.reasonOrNull());
    };
  }

  /** Returns how much of what was fed and how: "6 pellets, catapult", "2 balls of groundbait". */
  public static String feed(Feed feed) {
    List<String> words = new ArrayList<>();
    Feed.Amount amount = feed.amount();
    String bait = orNothing(feed.bait());
    if (amount == null) {
      words.add(bait);
    } else if (amount.unit() == Feed.Unit.PIECES) {
      words.add((plain(amount.value()) + " " + bait).strip());
    } else {
      words.add(
          plain(amount.value())
              + " "
              + amount.unit().word()
              + (bait.isEmpty() ? "" : " of " + bait));
    }
    words.add(orNothing(feed.method()));
    words.removeIf(String::isEmpty);
    return String.join(", ", words);
  }

  /** Returns how often a feed was repeated: "every 40 s". */
  public static String every(Feed.Pattern pattern) {
    return "every " + plain(pattern.everySeconds()) + " s";
  }

  private static String fish(Fish fish, Units units) {
    List<String> words = new ArrayList<>();
    words.add(fish.count() == 1 ? "" : String.valueOf(fish.count()));
    words.add(fish.species() == null ? fish.count() == 1 ? "" : "fish" : fish.species());
    words.add(fish.grams() == null ? "" : WeightText.formatFine(fish.grams(), units.weight()));
    words.removeIf(String::isEmpty);
    return String.join(" ", words);
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  private static String orNothing(@Nullable String words) {
    return words == null ? "" : words;
  }
}
