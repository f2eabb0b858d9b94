package org.fadeline.index;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.fadeline.analysis.FeedPut;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.analysis.season.SessionSummary.Behind;
import org.fadeline.analysis.season.SessionSummary.FadeFound;
import org.fadeline.analysis.season.SessionSummary.LineSummary;
import org.fadeline.analysis.season.SessionSummary.PastPlain;
import org.jspecify.annotations.Nullable;

/**
 * Writes kept summaries as plain numbers, each text once and then by its number. A number that is
 * not known is NaN. {@link SummaryReader} reads the same in the same order.
 */
final class SummaryWriter {
  private final Map<String, Integer> texts = new LinkedHashMap<>();
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(bytes);

  void add(String path, KeptSummary kept) throws IOException {
    text(path);
    out.writeLong(kept.size());
    out.writeLong(kept.changed());
    text(kept.hash());
    out.writeLong(kept.sequence());
    texts(kept.warnings());
    about(kept.summary().about());
    result(kept.summary().result());
    out.writeInt(kept.summary().lines().size());
    for (LineSummary line : kept.summary().lines()) {
      line(line);
    }
  }

  /** Writes all that was added: the texts first. */
  void writeTo(DataOutputStream target) throws IOException {
    target.writeInt(texts.size());
    for (String text : texts.keySet()) {
      byte[] encoded = text.getBytes(StandardCharsets.UTF_8);
      target.writeInt(encoded.length);
      target.write(encoded);
    }
    bytes.writeTo(target);
  }

  private void text(@Nullable String text) throws IOException {
    if (text == null) {
      out.writeInt(-1);
    } else {
      Integer number = texts.putIfAbsent(text, texts.size());
      out.writeInt(number == null ? texts.size() - 1 : number);
    }
  }

  private void texts(Collection<String> all) throws IOException {
    out.writeInt(all.size());
    for (String one : all) {
      text(one);
    }
  }

  private void number(@Nullable Double value) throws IOException {
    out.writeDouble(value == null ? Double.NaN : value);
  }

  private void numbers(Collection<Double> values) throws IOException {
    out.writeInt(values.size());
    for (Double value : values) {
      out.writeDouble(value);
    }
  }

  private void about(SessionSummary.About about) throws IOException {
    text(about.id());
    text(about.title());
    out.writeLong(about.date().toEpochDay());
    out.writeBoolean(about.dated());
    text(about.water());
    out.writeDouble(about.matchMinutes());
    number(about.day().waterC());
    number(about.day().airC());
    number(about.day().windFromDegrees());
    number(about.day().windForce());
  }

  private void result(SessionSummary.Result result) throws IOException {
    text(result.grade().name());
    out.writeInt(result.fish());
    out.writeDouble(result.grams());
    text(result.weights().from().name());
    out.writeInt(result.weights().missing());
    number(result.weights().scalesFactor());
    numbers(result.netGrams());
    SessionSummary.Placing placing = result.placing();
    out.writeBoolean(placing != null);
    if (placing != null) {
      // Places count from 1.
      out.writeInt(placing.position() == null ? 0 : placing.position());
      out.writeInt(placing.of() == null ? 0 : placing.of());
    }
  }

  private void line(LineSummary line) throws IOException {
    text(line.name());
    text(line.kind());
    out.writeInt(line.hours().size());
    for (SessionSummary.Hour hour : line.hours()) {
      out.writeInt(hour.hour());
      out.writeDouble(hour.fishedMinutes());
      out.writeInt(hour.fish());
      out.writeDouble(hour.grams());
    }
    out.writeInt(line.firstBites().size());
    for (SessionSummary.FirstBiteRow row : line.firstBites()) {
      text(row.bait());
      out.writeDouble(row.entry());
      out.writeDouble(row.exit());
      out.writeBoolean(row.bite());
      out.writeBoolean(row.opens());
    }
    feed(line.feed());
    out.writeBoolean(line.behind() != null);
    if (line.behind() != null) {
      behind(line.behind());
    }
  }

  private void feed(FeedPut feed) throws IOException {
    out.writeInt(feed.feeds());
    out.writeInt(feed.withoutAmount());
    out.writeInt(feed.openPatterns());
    out.writeInt(feed.amounts().size());
    for (var amount : feed.amounts().entrySet()) {
      text(amount.getKey().name());
      out.writeDouble(amount.getValue());
    }
    texts(feed.baits());
  }

  private void behind(Behind behind) throws IOException {
    out.writeInt(behind.fades().size());
    for (FadeFound fade : behind.fades()) {
      out.writeDouble(fade.probability());
      number(fade.minute());
      number(fade.plainMinute());
      out.writeDouble(fade.leftMinute());
      PastPlain past = fade.pastPlain();
      out.writeBoolean(past != null);
      if (past != null) {
        out.writeDouble(past.minutes());
        out.writeInt(past.fish());
        out.writeDouble(past.grams());
      }
    }
    numbers(behind.hazardLogEvidence());
    out.writeDouble(behind.bunching().departure());
    out.writeInt(behind.bunching().pairs());
  }
}
