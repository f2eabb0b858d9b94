package org.fadeline.io.notes;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.model.WeightText;
import org.jspecify.annotations.Nullable;

/** Reads a set of notes with the events expected of them, and scores the reader against it. */
final class NoteScores {
  private static final String USUAL = "short,shallow,left edge,right edge,waggler,feeder";

  /** The lines of the angler who speaks, by what the column {@code session} says. */
  private static final Map<String, String> SESSIONS =
      Map.of(
          "carp", "short,shallow,left edge,right edge,waggler",
          "mixed", "feeder,pole 11 m,caster 5 m,whip,long,bomb,top kit + 2",
          "kilos", "pole 13 m,whip,shallow,right edge");

  /** Confidences from here on count as sure. */
  static final double SURE = 0.65;

  /** Edges between the bands of stated confidence. */
  private static final double[] EDGES = {0.5, 0.6, 0.65, 0.7, 0.75};

  private final double[] said = new double[EDGES.length + 1];
  private final int[] inBand = new int[EDGES.length + 1];
  private final int[] rightInBand = new int[EDGES.length + 1];

  int notes;
  int expected;
  int proposed;
  int rightKind;
  int rightKindAndLine;
  int rightInAll;
  int sure;
  int sureRight;
  int doubtful;
  int doubtfulRight;
  final List<String> misses = new ArrayList<>();

  private record Expected(
      EventKind kind,
      String line,
      String to,
      int count,
      @Nullable Double grams,
      String amount,
      @Nullable Long agoMillis,
      @Nullable Double everySeconds) {}

  private record Note(String text, Vocabulary vocabulary, List<Expected> events) {}

  /** Scores a resource, or returns null where there is none. */
  static @Nullable NoteScores of(String resource) {
    List<Note> notes = new ArrayList<>();
    try (var in = NoteScores.class.getResourceAsStream(resource)) {
      if (in == null) {
        return null;
      }
      read(new InputStreamReader(in, StandardCharsets.UTF_8), notes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    NoteScores scores = new NoteScores();
    notes.forEach(scores::score);
    return scores;
  }

  private static void read(Reader in, List<Note> notes) throws IOException {
    Map<String, Note> byId = new LinkedHashMap<>();
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    for (CSVRecord row : format.parse(in)) {
      Note note =
          byId.computeIfAbsent(
              row.get("id"),
              id -> new Note(row.get("note"), vocabulary(told(row, "session")), new ArrayList<>()));
      String event = row.get("event").strip();
      if (event.equals("none")) {
        continue;
      }
      EventKind kind = EventKind.ofWord(event).orElseThrow(() -> new IOException(row.toString()));
      String count = row.get("count").strip();
      String weight = row.get("weight").strip();
      String amount = row.get("amount").strip();
      Expected one =
          new Expected(
              kind,
              row.get("line").strip(),
              row.get("to").strip(),
              count.isEmpty() ? 1 : Integer.parseInt(count),
              weight.isEmpty() ? null : WeightText.grams(weight, Units.Weight.LB_OZ),
              amount.isEmpty() ? "" : amount(Double.parseDouble(amount), row.get("unit").strip()),
              row.isMapped("ago") ? Math.round(1000 * number(told(row, "ago"))) : null,
              row.isMapped("every") ? number(told(row, "every")) : null);
      boolean several = kind == EventKind.BITE || kind == EventKind.LOST;
      for (int i = 0; i < (several ? one.count : 1); i++) {
        note.events.add(one);
      }
    }
    notes.addAll(byId.values());
  }

  private static String told(CSVRecord row, String column) {
    return row.isMapped(column) ? row.get(column).strip() : "";
  }

  private static double number(String text) {
    return text.isEmpty() ? 0 : Double.parseDouble(text);
  }

  private static Vocabulary vocabulary(String session) {
    return Vocabulary.of(
        Stream.of(SESSIONS.getOrDefault(session, USUAL).split(",", -1))
            .map(name -> Line.named(name.replace(' ', '-'), name))
            .toList());
  }

  private static String amount(double value, String unit) {
    return String.format(Locale.ROOT, "%.2f %s", value, unit);
  }

  private void score(Note note) {
    Vocabulary vocabulary = note.vocabulary;
    List<ProposedEvent> events = new NoteReader(vocabulary).read(note.text, 0, "p");
    notes++;
    expected += note.events.size();
    proposed += events.size();
    List<Expected> left = new ArrayList<>(note.events);
    boolean[] right = new boolean[events.size()];
    for (int grade = 2; grade >= 0; grade--) {
      for (int i = 0; i < right.length; i++) {
        for (int k = 0; k < left.size() && !right[i]; k++) {
          if (grade(events.get(i), left.get(k), vocabulary) >= grade) {
            left.remove(k);
            right[i] = true;
            rightKind++;
            rightKindAndLine += grade > 0 ? 1 : 0;
            rightInAll += grade > 1 ? 1 : 0;
            tally(events.get(i).confidence(), grade > 0);
            if (grade < 2) {
              misses.add("part: " + note.text + " -> " + shown(events.get(i), vocabulary));
            }
          }
        }
      }
    }
    for (int i = 0; i < right.length; i++) {
      if (!right[i]) {
        tally(events.get(i).confidence(), false);
        misses.add("wrong: " + note.text + " -> " + shown(events.get(i), vocabulary));
      }
    }
    left.forEach(one -> misses.add("missed: " + note.text + " -> " + one));
  }

  private void tally(double confidence, boolean right) {
    int band = band(confidence);
    said[band] += confidence;
    inBand[band]++;
    rightInBand[band] += right ? 1 : 0;
    if (confidence >= SURE) {
      sure++;
      sureRight += right ? 1 : 0;
    } else {
      doubtful++;
      doubtfulRight += right ? 1 : 0;
    }
  }

  /** Returns 2 where all fields agree, 1 where kind and line do, 0 where the kind does, else −1. */
  private static int grade(ProposedEvent proposed, Expected one, Vocabulary vocabulary) {
    SessionEvent event = proposed.event();
    if (event.kind() != one.kind) {
      return -1;
    }
    boolean line =
        one.line.equals(name(event.lineId(), vocabulary))
            && one.to.equals(name(proposed.towards(), vocabulary));
    if (!line) {
      return 0;
    }
    Fish fish = event.fishOrNull();
    boolean fields = true;
    if (fish != null) {
      fields = Math.max(1, fish.count()) == one.count && near(fish.grams(), one.grams);
    } else if (event instanceof SessionEvent.Fed fed) {
      Feed.Amount amount = fed.feed().amount();
      String told = amount == null ? "" : amount(amount.value(), amount.unit().word());
      Feed.Pattern pattern = fed.feed().pattern();
      double every = pattern == null ? 0 : pattern.everySeconds();
      Double wanted = one.everySeconds;
      fields = told.equals(one.amount) && (wanted == null || wanted == every);
    }
    Long ago = one.agoMillis;
    fields &= ago == null || event.at() == -ago;
    return fields ? 2 : 1;
  }

  private static boolean near(@Nullable Double told, @Nullable Double wanted) {
    if (told == null || wanted == null) {
      return Objects.equals(told, wanted);
    }
    return Math.abs(told - wanted) < 1;
  }

  private static String name(@Nullable String id, Vocabulary vocabulary) {
    return id == null ? "" : vocabulary.line(id).map(Line::name).orElse(id);
  }

  private static String shown(ProposedEvent proposed, Vocabulary vocabulary) {
    SessionEvent event = proposed.event();
    Fish fish = event.fishOrNull();
    String feed = event instanceof SessionEvent.Fed fed ? String.valueOf(fed.feed()) : "";
    return String.format(
        Locale.ROOT,
        "%s [%s>%s] %s %s %.2f",
        event.kind().word(),
        name(event.lineId(), vocabulary),
        name(proposed.towards(), vocabulary),
        fish == null ? "" : fish,
        feed,
        proposed.confidence());
  }

  private static int band(double confidence) {
    int band = 0;
    while (band < EDGES.length && confidence >= EDGES[band]) {
      band++;
    }
    return band;
  }

  /** Returns, by band of stated confidence, its mean and how many proposals were right. */
  String reliability() {
    StringBuilder table = new StringBuilder();
    for (int band = 0; band <= EDGES.length; band++) {
      if (inBand[band] > 0) {
        table.append(
            String.format(
                Locale.ROOT,
                "from %.2f: stated %.2f, right %d of %d%n",
                band == 0 ? 0 : EDGES[band - 1],
                said[band] / inBand[band],
                rightInBand[band],
                inBand[band]));
      }
    }
    return table.toString();
  }

  double precision() {
    return proposed == 0 ? 1 : rightKindAndLine / (double) proposed;
  }

  double recall() {
    return expected == 0 ? 1 : rightKindAndLine / (double) expected;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d notes, %d events expected, %d proposed; right kind %d, and line %d, and all fields %d;"
            + " precision %.3f, recall %.3f; sure (from %.2f) %d of %d right, doubtful %d of %d",
        notes,
        expected,
        proposed,
        rightKind,
        rightKindAndLine,
        rightInAll,
        precision(),
        recall(),
        SURE,
        sureRight,
        sure,
        doubtfulRight,
        doubtful);
  }
}
