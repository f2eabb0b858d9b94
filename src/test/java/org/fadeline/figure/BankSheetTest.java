package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fadeline.export.FigureExport;
import org.fadeline.figure.BankSheetFigure.Paper;
import org.fadeline.io.SessionReader;
import org.fadeline.io.notes.ProposedEvent;
import org.fadeline.io.notes.Shorthand;
import org.fadeline.io.notes.Vocabulary;
import org.fadeline.model.EventKind;
import org.fadeline.model.LineCodes;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheet filled in by pencil is what the shorthand reads. */
class BankSheetTest {
  static Stream<Session> sessions() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-sessions"))) {
      List<Session> samples =
          files
              .filter(f -> f.toString().endsWith(".session.json"))
              .sorted()
              .map(f -> SessionReader.read(f).session().orElseThrow())
              .toList();
      return Stream.concat(Stream.of(HandMade.session()), samples.stream());
    }
  }

  private static Shorthand.Read read(Session session, String text, Units units) {
    return Shorthand.read(
        "sheet",
        text,
        new Shorthand.Frame(
            session.occasion().date(),
            session.occasion().zone(),
            session.clock(session.match().allIn()).toLocalTime(),
            units.weight(),
            Vocabulary.of(session.lines())));
  }

  @ParameterizedTest
  @MethodSource("sessions")
  void itsExampleIsReadWithoutAProblem(Session session) {
    for (Units units : List.of(Units.LB_OZ_AND_METRES, Units.KG_AND_METRES)) {
      Shorthand.Read read =
          read(session, String.join("\n", BankSheetExample.rows(session, units)), units);
      assertEquals(List.of(), read.report().problems());
      List<SessionEvent> events = read.events().stream().map(ProposedEvent::event).toList();
      assertEquals(
          List.of(
              EventKind.ALL_IN,
              EventKind.FED,
              EventKind.LANDED,
              EventKind.LOST,
              EventKind.MOVE,
              EventKind.CAST),
          events.stream().map(SessionEvent::kind).toList());
      String first = session.lines().get(0).id();
      for (SessionEvent event : events.subList(1, 5)) {
        assertEquals(first, event.lineId());
      }
      assertEquals(session.lines().get(1).id(), events.get(5).lineId());
      assertEquals(session.match().allIn() + 9 * 60_000, events.get(2).at());
      assertEquals("resting", ((SessionEvent.Move) events.get(4)).reason());
    }
  }

  @ParameterizedTest
  @MethodSource("sessions")
  void everyLineHasACodeOfItsOwnThatIsRead(Session session) {
    Map<String, String> codes = LineCodes.of(session.lines());
    assertEquals(session.lines().size(), new HashSet<>(codes.values()).size());
    codes.forEach(
        (id, code) -> {
          Shorthand.Read read = read(session, "12:00 " + code + " bite", Units.LB_OZ_AND_METRES);
          assertEquals(List.of(), read.report().problems(), code);
          assertEquals(id, read.events().get(0).event().lineId(), code);
        });
  }

  @Test
  void aMatchOfFiveHoursIsPrintedWithItsHours(@TempDir Path folder) throws IOException {
    FigureStyle style = FigureStyle.of(Theme.PRINT, Units.LB_OZ_AND_METRES);
    for (Paper paper : Paper.values()) {
      List<Figure> pages = BankSheetFigure.pages(HandMade.session(), style, paper);
      Path file = folder.resolve(paper + ".pdf");
      FigureExport.pdf("Sheet", pages, file, paper.width(), paper.height());
      try (PDDocument document = Loader.loadPDF(file.toFile())) {
        assertEquals(pages.size(), document.getNumberOfPages());
        assertEquals(paper.width(), document.getPage(0).getMediaBox().getWidth(), 0.1);
        String text = new PDFTextStripper().getText(document);
        for (String hour : List.of("10:00", "12:30", "14:30")) {
          assertTrue(text.contains(hour), paper + " lacks " + hour);
        }
        for (String row : BankSheetExample.rows(HandMade.session(), style.units())) {
          assertTrue(text.contains(row), paper + " lacks " + row);
        }
      }
    }
  }
}
