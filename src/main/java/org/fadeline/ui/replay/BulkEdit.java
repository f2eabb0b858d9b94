package org.fadeline.ui.replay;

import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongUnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.fadeline.io.ClockCorrection;
import org.fadeline.io.Refused;
import org.fadeline.model.EventEdits;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.state.Workbench;

/** Shifting or stretching several events at once, with what would become of them said first. */
final class BulkEdit {
  private final Workbench bench;
  private final Label preview = Labels.line("", "quiet");

  BulkEdit(Workbench bench) {
    this.bench = bench;
    preview.setId("bulk-preview");
  }

  /** Returns milliseconds of a typed shift such as "+1:30" or "-0:05"; minutes and seconds. */
  static Optional<Long> shift(String text) {
    try {
      return Optional.of(ClockCorrection.offset(text).movedMillis());
    } catch (Refused notAShift) {
      return Optional.empty();
    }
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

  /** Returns the words on what would become of them; they grow, so they stand behind the fields. */
  Label preview() {
    return preview;
  }

  List<Node> fields(Session session, List<SessionEvent> picked) {
    ZoneId zone = session.occasion().zone();
    Set<String> ids = new LinkedHashSet<>(picked.stream().map(SessionEvent::id).toList());
    long first = picked.get(0).at();
    long last = picked.get(picked.size() - 1).at();
    preview.setText(span(first, last, zone));
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
                            .map(
                                ms ->
                                    " becomes "
                                        + span(first + ms, last + ms, zone)
                                        + flagged(session, ids, at -> at + ms))
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
                            .map(
                                end ->
                                    " becomes "
                                        + span(first, end, zone)
                                        + flagged(
                                            session,
                                            ids,
                                            at ->
                                                first
                                                    + Math.round(
                                                        (at - first)
                                                            * ((end - first)
                                                                / (double) (last - first)))))
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
    return List.of(by, to);
  }

  private static Optional<Long> stretchTo(String text, long first, long last, ZoneId zone) {
    return Say.typedTime(text, last, zone).filter(end -> end > first && last > first);
  }

  private static String flagged(Session session, Set<String> ids, LongUnaryOperator time) {
    return Retimed.of(session, ids, time).words().map(words -> ". " + words).orElse("");
  }

  private static String span(long first, long last, ZoneId zone) {
    return Say.clock(first, zone) + "–" + Say.clock(last, zone);
  }
}
