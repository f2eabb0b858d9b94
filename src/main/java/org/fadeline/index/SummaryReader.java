package org.fadeline.index;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.Grade;
import org.fadeline.analysis.Review.WeightFrom;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.analysis.season.SessionSummary.PastPlain;
import org.fadeline.model.Feed;
import org.jspecify.annotations.Nullable;

/** Reads what {@link SummaryWriter} wrote. Any fault in the bytes is a runtime exception. */
final class SummaryReader {
  private final ByteBuffer in;
  private final String[] texts;

  SummaryReader(ByteBuffer in) {
    this.in = in;
    texts = new String[in.getInt()];
    for (int i = 0; i < texts.length; i++) {
      byte[] encoded = new byte[in.getInt()];
      in.get(encoded);
      texts[i] = new String(encoded, StandardCharsets.UTF_8);
    }
  }

  /** Hands on every summary with its path, to the end of the bytes. */
  void readAll(BiConsumer<String, KeptSummary> to) {
    while (in.hasRemaining()) {
      to.accept(text(), kept());
    }
  }

  private KeptSummary kept() {
    long size = in.getLong();
    long changed = in.getLong();
    String hash = text();
    long sequence = in.getLong();
    List<String> warnings = list(this::text);
    SessionSummary summary = new SessionSummary(about(), result(), list(this::line));
    return new KeptSummary(size, changed, hash, sequence, summary, warnings);
  }

  private <T> List<T> list(Supplier<T> item) {
    int size = in.getInt();
    List<T> list = new ArrayList<>(Math.min(size, in.remaining()));
    for (int i = 0; i < size; i++) {
      list.add(item.get());
    }
    return list;
  }

  private String text() {
    return texts[in.getInt()];
  }

  private @Nullable String maybeText() {
    int number = in.getInt();
    return number < 0 ? null : texts[number];
  }

  private @Nullable Double maybeNumber() {
    double value = in.getDouble();
    return Double.isNaN(value) ? null : (Double) value;
  }

  private boolean truth() {
    return in.get() != 0;
  }

  private SessionSummary.About about() {
    return new SessionSummary.About(
        text(),
        text(),
        LocalDate.ofEpochDay(in.getLong()),
        truth(),
        maybeText(),
        in.getDouble(),
        new SessionSummary.Day(maybeNumber(), maybeNumber(), maybeNumber(), maybeNumber()));
  }

  private SessionSummary.Result result() {
    return new SessionSummary.Result(
        Grade.valueOf(text()),
        in.getInt(),
        in.getDouble(),
        new SessionSummary.Weights(WeightFrom.valueOf(text()), in.getInt(), maybeNumber()),
        list(in::getDouble),
        truth() ? new SessionSummary.Placing(place(), place()) : null);
  }

  private @Nullable Integer place() {
    int place = in.getInt();
    return place == 0 ? null : (Integer) place;
  }

  private LineSummary line() {
    return new LineSummary(
        text(),
        maybeText(),
        list(
            () ->
                new SessionSummary.Hour(in.getInt(), in.getDouble(), in.getInt(), in.getDouble())),
        list(
            () ->
                new SessionSummary.FirstBiteRow(
                    maybeText(), in.getDouble(), in.getDouble(), truth(), truth())),
        feed(),
        truth() ? behind() : null);
  }

  private FeedPut feed() {
    int feeds = in.getInt();
    int withoutAmount = in.getInt();
    int openPatterns = in.getInt();
    Map<Feed.Unit, Double> amounts = new TreeMap<>();
    for (int left = in.getInt(); left > 0; left--) {
      amounts.put(Feed.Unit.valueOf(text()), in.getDouble());
    }
    return new FeedPut(
        feeds, withoutAmount, openPatterns, amounts, new LinkedHashSet<>(list(this::text)));
  }

  private Behind behind() {
    return new Behind(
        list(this::fade),
        list(in::getDouble),
        new SessionSummary.BunchingFound(in.getDouble(), in.getInt()));
  }

  private FadeFound fade() {
    return new FadeFound(
        in.getDouble(),
        maybeNumber(),
        maybeNumber(),
        in.getDouble(),
        truth() ? new PastPlain(in.getDouble(), in.getInt(), in.getDouble()) : null);
  }
}
