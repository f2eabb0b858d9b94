package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fadeline.export.FigureExport;
import org.fadeline.figure.BankSheetFigure.Paper;
import org.fadeline.io.EventCsv;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.SessionReader;
import org.fadeline.io.SessionWriter;
import org.fadeline.io.notes.Shorthand;
import org.fadeline.io.notes.Vocabulary;
import org.fadeline.model.Line;
import org.fadeline.model.LineCodes;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Why a line was left survives every form that a record takes. */
class MoveReasonTest {
  static Stream<Optional<String>> reasons() {
    return Stream.concat(
        SessionEvent.Move.USUAL_REASONS.stream().map(Optional::of),
        Stream.of(Optional.of("boats, \"two\" of them"), Optional.of("=1+1"), Optional.empty()));
  }

  private static Session leaving(Optional<String> reason) {
    Session session = HandMade.session();
    return session.withEvents(
        session.events().stream()
            .map(
                e ->
                    e instanceof SessionEvent.Move
                        ? new SessionEvent.Move(e.stamp(), reason.orElse(null))
                        : e)
            .toList());
  }

  private static List<Optional<String>> told(Session session) {
    return session.events().stream()
        .filter(SessionEvent.Move.class::isInstance)
        .map(e -> Optional.ofNullable(((SessionEvent.Move) e).reason()))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("reasons")
  void sessionAndTableBringItBack(Optional<String> reason) {
    Session session = leaving(reason);
    List<Optional<String>> expected = told(session);
    assertTrue(expected.size() > 1 && expected.stream().allMatch(reason::equals));
    Session fromJson =
        SessionReader.parse("s", SessionWriter.toJson(session), ReadOptions.DEFAULT)
            .session()
            .orElseThrow();
    assertEquals(session, fromJson);
    Session fromCsv =
        EventCsv.parse(
                "s.csv",
                EventCsv.write(session),
                ReadOptions.of(session.occasion().date(), session.occasion().zone()))
            .session()
            .orElseThrow();
    assertEquals(session.events(), fromCsv.events());
  }

  @Test
  void theBankSheetNamesEachAndItsRowsAreRead(@TempDir Path folder) throws IOException {
    Session session = HandMade.session();
    Path file = folder.resolve("sheet.pdf");
    Paper paper = Paper.A4;
    FigureExport.pdf(
        "Sheet",
        BankSheetFigure.pages(session, FigureStyle.of(Theme.PRINT, Units.LB_OZ_AND_METRES), paper),
        file,
        paper.width(),
        paper.height());
    String printed;
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      printed = new PDFTextStripper().getText(document);
    }
    assertTrue(
        printed.contains("move (" + String.join(", ", SessionEvent.Move.USUAL_REASONS) + ")"),
        printed);
    Map<String, String> codes = LineCodes.of(session.lines());
    for (Line line : session.lines()) {
      String code = codes.getOrDefault(line.id(), "");
      assertTrue(printed.contains(code), code);
      for (String reason : SessionEvent.Move.USUAL_REASONS) {
        for (String words :
            List.of(
                code + " move " + reason,
                "move " + reason + " " + code,
                line.name() + " move " + reason)) {
          Shorthand.Read read =
              Shorthand.read(
                  "sheet.txt",
                  "12:00 " + words,
                  new Shorthand.Frame(
                      session.occasion().date(),
                      session.occasion().zone(),
                      null,
                      Units.Weight.LB_OZ,
                      Vocabulary.of(session.lines())));
          assertEquals(List.of(), read.report().problems(), words);
          SessionEvent.Move move = (SessionEvent.Move) read.events().get(0).event();
          assertEquals(reason, move.reason(), words);
          assertEquals(line.id(), move.lineId(), words);
        }
      }
    }
  }
}
