package org.fadeline.io.notes;

import java.util.List;
import org.fadeline.io.EventJson;
import org.fadeline.io.notes.Piece.Kind;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/** Turns the pieces that belong to one event into the event. */
final class NoteFields {
  private static final int MOST_FISH = 200;

  private NoteFields() {}

  /** Returns the event of a kind that the pieces tell. */
  static SessionEvent event(EventKind kind, Stamp stamp, List<Piece> pieces, String words) {
    return switch (kind) {
      case CAST -> new SessionEvent.Cast(stamp);
      case BITE -> new SessionEvent.Bite(stamp);
      case HOOKED -> new SessionEvent.Hooked(stamp);
      case LANDED -> new SessionEvent.Landed(stamp, fish(pieces, 1));
      case LOST -> new SessionEvent.Lost(stamp, name(pieces, Kind.SPECIES));
      case FOUL -> new SessionEvent.Foul(stamp, fish(pieces, 1));
      case MOVE -> new SessionEvent.Move(stamp, reason(words));
      case OFF -> new SessionEvent.Off(stamp, offReason(words));
      case STOPPED -> new SessionEvent.Stopped(stamp, stopReason(words));
      case RESUMED -> new SessionEvent.Resumed(stamp);
      case FED -> new SessionEvent.Fed(stamp, feed(pieces, words));
      case COUNT -> new SessionEvent.Count(stamp, fish(pieces, 0));
      case CHANGE -> new SessionEvent.Change(stamp, name(pieces, Kind.BAIT));
      case NET -> new SessionEvent.Net(stamp, net(pieces, words));
      case INDICATION -> new SessionEvent.Indication(stamp);
      case SIGN -> new SessionEvent.Sign(stamp);
      case NEIGHBOUR -> new SessionEvent.Neighbour(stamp, name(pieces, Kind.PEG), fish(pieces, 1));
      case WEATHER -> new SessionEvent.Weather(stamp);
      case NOTE -> new SessionEvent.Note(stamp);
      case ALL_IN -> new SessionEvent.AllIn(stamp);
      case ALL_OUT -> new SessionEvent.AllOut(stamp);
    };
  }

  static @Nullable String name(List<Piece> pieces, Kind kind) {
    for (Piece piece : pieces) {
      if (piece.is(kind)) {
        return piece.name();
      }
    }
    return null;
  }

  private static Fish fish(List<Piece> pieces, int least) {
    int count = count(pieces, least);
    Double grams = grams(pieces, count);
    boolean weighed = pieces.stream().anyMatch(piece -> piece.isWord("weighed"));
    boolean scales = pieces.stream().anyMatch(piece -> piece.isWord("scales"));
    return new Fish(count, name(pieces, Kind.SPECIES), grams, weighed || scales);
  }

  /** Returns how many fish: a whole number before a fish, or one that counts nothing else. */
  static int count(List<Piece> pieces, int least) {
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      if (!piece.is(Kind.NUMBER) || piece.value() != Math.rint(piece.value())) {
        continue;
      }
      boolean pair = i + 1 < pieces.size() && pieces.get(i + 1).is(Kind.NUMBER);
      boolean second = i > 0 && pieces.get(i - 1).is(Kind.NUMBER);
      boolean afterFish = i > 0 && pieces.get(i - 1).is(Kind.SPECIES);
      boolean numbered = i > 0 && pieces.get(i - 1).isWord("number");
      boolean fits = piece.value() >= 1 && piece.value() <= MOST_FISH;
      if (!pair && !numbered && !second && !afterFish && fits) {
        return (int) piece.value();
      }
    }
    return least;
  }

  /** Returns the weight of all the fish, or null. A correction ("no, five pound") wins. */
  private static @Nullable Double grams(List<Piece> pieces, int count) {
    Double grams = null;
    boolean each =
        pieces.stream().anyMatch(piece -> piece.isWord("both") || piece.isWord("each"))
            || allAbout(pieces);
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      if (piece.is(Kind.WEIGHT) && (grams == null || corrected(pieces, i))) {
        grams = piece.value();
        each |=
            "each".equals(piece.name())
                || (i + 1 < pieces.size() && pieces.get(i + 1).isWord("each"))
                || (i + 1 < pieces.size() && pieces.get(i + 1).isWord("apiece"));
      }
    }
    if (grams == null) {
      grams = plainPair(pieces);
    }
    if (grams == null) {
      grams = fraction(pieces);
    }
    if (grams == null) {
      return null;
    }
    double total = each && count > 1 ? grams * count : grams;
    return total <= EventJson.MOST_GRAMS ? total : null;
  }

  /** "All about a pound" is said of each. */
  private static boolean allAbout(List<Piece> pieces) {
    for (int i = 0; i + 1 < pieces.size(); i++) {
      if (pieces.get(i).isWord("all")
          && List.of("about", "around", "roughly", "over", "under", "of")
              .contains(pieces.get(i + 1).said())) {
        return true;
      }
    }
    return false;
  }

  private static boolean corrected(List<Piece> pieces, int i) {
    for (int k = Math.max(0, i - 4); k < i; k++) {
      Piece piece = pieces.get(k);
      if (List.of("no", "sorry", "make", "call", "actually", "mean", "rather", "like")
          .contains(piece.said())) {
        return true;
      }
    }
    return false;
  }

  /** "carp 8 4" is eight pounds four ounces. */
  static @Nullable Double plainPair(List<Piece> pieces) {
    for (int i = 0; i + 1 < pieces.size(); i++) {
      Piece pounds = pieces.get(i);
      Piece ounces = pieces.get(i + 1);
      boolean numbers = pounds.is(Kind.NUMBER) && ounces.is(Kind.NUMBER);
      boolean last = i + 2 >= pieces.size() || !pieces.get(i + 2).is(Kind.NUMBER);
      boolean whole =
          pounds.value() == Math.rint(pounds.value())
              && ounces.value() == Math.rint(ounces.value());
      if (numbers && last && whole && ounces.value() < 16 && pounds.value() < 60) {
        return (pounds.value() * 16 + ounces.value()) * WeightText.GRAMS_PER_OUNCE;
      }
    }
    return null;
  }

  /** "Four and a quarter" of a fish is pounds. */
  private static @Nullable Double fraction(List<Piece> pieces) {
    for (Piece piece : pieces) {
      double quarters = piece.value() * 4;
      boolean part = quarters == Math.rint(quarters) && piece.value() != Math.rint(piece.value());
      if (piece.is(Kind.NUMBER) && part && piece.value() < 60) {
        return piece.value() * WeightText.GRAMS_PER_POUND;
      }
    }
    return null;
  }

  private static Feed feed(List<Piece> pieces, String words) {
    Feed.Amount amount = null;
    String method = null;
    for (Piece piece : pieces) {
      boolean grams = piece.is(Kind.WEIGHT) && "g".equals(piece.name());
      if (amount == null && (piece.is(Kind.AMOUNT) || grams)) {
        String unit = grams ? "g" : String.valueOf(piece.name());
        amount = amount(piece.value(), unit);
        method = methodOf(unit);
      }
    }
    String said = method(words);
    return new Feed(
        name(pieces, Kind.BAIT), amount, said == null ? method : said, pattern(pieces, words));
  }

  private static Feed.@Nullable Amount amount(double value, String unit) {
    if (!(value > 0 && value <= EventJson.MOST_FEED)) {
      return null;
    }
    return switch (unit) {
      case "cup ml" -> new Feed.Amount(value, Feed.Unit.ML);
      default -> Feed.Unit.ofWord(unit).map(known -> new Feed.Amount(value, known)).orElse(null);
    };
  }

  private static @Nullable String methodOf(String unit) {
    return switch (unit) {
      case "balls" -> "ball";
      case "pouchfuls" -> "catapult";
      case "hand" -> "hand";
      case "pot", "cup ml" -> "pot";
      case "feeder" -> "feeder";
      default -> null;
    };
  }

  private static @Nullable String method(String words) {
    if (words.contains("pott") || words.contains("cupp")) {
      return "pot";
    }
    if (words.contains("catapult") || words.matches(".*\\bping(?:ed|ing)\\b.*")) {
      return "catapult";
    }
    return words.contains("by hand") || words.contains("loose") ? "hand" : null;
  }

  private static Feed.@Nullable Pattern pattern(List<Piece> pieces, String words) {
    if (!words.contains("every") && pieces.stream().noneMatch(piece -> piece.isWord("every"))) {
      return null;
    }
    for (Piece piece : pieces) {
      if (piece.is(Kind.DURATION) && piece.value() > 0 && piece.value() <= 86_400) {
        return new Feed.Pattern(piece.value(), null);
      }
    }
    return words.contains("every minute") ? new Feed.Pattern(60, null) : null;
  }

  private static @Nullable String reason(String words) {
    if (words.matches(
        ".*\\b(?:dead|died|dying|dried|nothing|no bites|faded|slow\\w*|gone quiet)\\b.*")) {
      return "dead";
    }
    if (words.matches(".*\\b(?:rest\\w*|breather|break)\\b.*")) {
      return "resting";
    }
    if (words.matches(".*\\b(?:wind|sun|rain|weather|ripple|storm)\\b.*")) {
      return "weather";
    }
    if (words.matches(".*(?:#p|next door|next peg|opposite|neighbour).*")) {
      return "neighbour";
    }
    return words.matches(".*\\b(?:plan|planned)\\b.*") ? "plan" : null;
  }

  private static @Nullable String offReason(String words) {
    if (words.contains("tangl") || words.contains("nest") || words.contains("mess")) {
      return "tangle";
    }
    if (words.contains("snag") || words.contains("stuck") || words.contains("caught in")) {
      return "snag";
    }
    return words.contains("sna") || words.contains("bro") || words.contains("lost")
        ? "break"
        : "re-rigging";
  }

  private static @Nullable String stopReason(String words) {
    return words.contains("lightning") || words.contains("thunder") || words.contains("storm")
        ? "lightning"
        : null;
  }

  private static @Nullable Integer net(List<Piece> pieces, String words) {
    List<String> ordinals = List.of("second", "third", "fourth", "fifth", "sixth");
    for (int i = 0; i < ordinals.size(); i++) {
      if (words.contains(ordinals.get(i))) {
        return i + 2;
      }
    }
    for (Piece piece : pieces) {
      boolean fits = piece.value() >= 1 && piece.value() <= 20;
      if (piece.is(Kind.NUMBER) && fits && piece.value() == Math.rint(piece.value())) {
        return (int) piece.value();
      }
    }
    return null;
  }
}
