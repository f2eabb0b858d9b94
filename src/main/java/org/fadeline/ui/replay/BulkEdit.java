package org.fadeline.ui.replay;

import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.EventEdits;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.state.Workbench;

/** Shifting or stretching several events at once, with what would become of them said first. */
final class BulkEdit {
  private static final Pattern SHIFT =
      Pattern.compile("([+\\-−]?)(\\d{1,3}):(\\d{2})(?::(\\d{2}))?");

  private final Workbench bench;

  BulkEdit(Workbench bench) {
    this.bench = bench;
  }

  /** Returns milliseconds of a typed shift such as "+1:30" or "-0:05"; minutes and seconds. */
  static Optional<Long> shift(String text) {
    Matcher m = SHIFT.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    long first = Long.parseLong(m.group(2));
    long second = Long.parseLong(m.group(3));
    long seconds =
        m.group(4) == null
            ? first * 60 + second
            : first * 3600 + second * 60 + Long.parseLong(m.group(4));
    return Optional.of((m.group(1).isEmpty() || m.group(1).equals("+") ? 1 : -1) * seconds * 1000);
  }

  /**
   * Returns milliseconds of a typed shift, or of what a clock said and the true time then, such as
   * "11:42 was 11:40:30"; a camera's or a watch's clock is put right so.
   *
   * @param near an instant of the match, epoch milliseconds
   */
  static Optional<Long> shift(String text, long near, ZoneId zone) {
    String[] saidAndTrue = text.strip().split("\\s+was\\s+", 2);
    if (saidAndTrue.length < 2) {
      return shift(text);
    }
    return Say.typedTime(saidAndTrue[0], near, zone)
        .flatMap(said -> Say.typedTime(saidAndTrue[1], said, zone).map(right -> right - said));
  }

  List<Node> parts(Session session, List<SessionEvent> picked) {
    ZoneId zone = session.occasion().zone();
    Set<String> ids = new LinkedHashSet<>(picked.stream().map(SessionEvent::id).toList());
    long first = picked.get(0).at();
    long last = picked.get(picked.size() - 1).at();
    Label preview = Inspector.quiet(span(first, last, zone));
    TextField by =
        Inspector.field(
            "",
            11,
            "Shift by minutes and seconds, such as +1:30, or by what the clock said and the true time,"
                + " such as 11:42 was 11:40:30");
    by.setPromptText("+1:30, or 11:42 was 11:40:30");
    by.setPrefColumnCount(19);
    by.setId("bulk-shift");
    by.textProperty()
        .addListener(
            (p, before, text) ->
                preview.setText(
                    span(first, last, zone)
                        + shift(text, first, zone)
                            .map(ms -> " becomes " + span(first + ms, last + ms, zone))
                            .orElse("")));
    by.setOnAction(
        e ->
            shift(by.getText(), first, zone)
                .ifPresentOrElse(
                    ms ->
                        bench
                            .editing()
                            .edit("Shift " + ids.size() + " events", EventEdits.shift(ids, ms)),
                    () ->
                        bench.tell(
                            "Type a shift as minutes and seconds, such as +1:30, or what the clock said"
                                + " and the true time: 11:42 was 11:40:30")));
    TextField to = Inspector.field("", 7, "Stretch so that the last event comes to lie at a time");
    to.setPromptText("stretch to");
    to.textProperty()
        .addListener(
            (p, before, text) ->
                preview.setText(
                    span(first, last, zone)
                        + stretchTo(text, first, last, zone)
                            .map(end -> " becomes " + span(first, end, zone))
                            .orElse("")));
    to.setOnAction(
        e ->
            stretchTo(to.getText(), first, last, zone)
                .ifPresentOrElse(
                    end ->
                        bench
                            .editing()
                            .edit(
                                "Stretch " + ids.size() + " events",
                                EventEdits.stretch(ids, first, last, first, end)),
                    () -> bench.tell("Type a time after the first event, such as 12:48:30")));
    return List.of(preview, by, to);
  }

  private static Optional<Long> stretchTo(String text, long first, long last, ZoneId zone) {
    return Say.typedTime(text, last, zone).filter(end -> end > first && last > first);
  }

  private static String span(long first, long last, ZoneId zone) {
    return Say.clock(first, zone) + "–" + Say.clock(last, zone);
  }
}
