package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.figure.Fixtures;
import org.fadeline.figure.SlideFigure;
import org.fadeline.io.SessionWriter;
import org.fadeline.model.Fish;
import org.fadeline.model.Match;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a talk leaves out is nowhere in it. */
class UnnamedTest {
  /** Stands in every place of a record that can name somebody or somewhere. */
  private static final String NAME = "Zanderby";

  private static final String PEG = "Q937";

  @TempDir Path folder;

  private static Session named() {
    Session plain = Fixtures.carpMatch().session();
    Occasion was = plain.occasion();
    List<SessionEvent> events = new ArrayList<>();
    for (SessionEvent event : plain.events()) {
      Stamp stamp = new Stamp(event.id(), event.at(), event.lineId(), NAME + " said so");
      events.add(
          event instanceof SessionEvent.Move
              ? new SessionEvent.Move(stamp, NAME + " told me to")
              : event.withStamp(stamp));
    }
    long at = plain.match().allIn() + 60_000;
    events.add(
        0, new SessionEvent.Neighbour(new Stamp("nb", at, null, NAME), NAME + "'s", Fish.ONE));
    events.sort(Comparator.comparingLong(SessionEvent::at));
    return plain
        .withEvents(events)
        .withOccasion(
            new Occasion(
                NAME + " Open",
                was.date(),
                was.zone(),
                new Venue(NAME + " Water", 52.123, 1.234),
                new Peg(PEG, 10.0, null, List.of()),
                List.of(new WeatherNote(at, null, null, 20.0, null, NAME + " felt cold"))))
        .withMatch(
            new Match(
                plain.match().allIn(),
                plain.match().allOut(),
                new MatchRules(0, false, false, null, NAME + " decides")))
        .withOutcome(
            new Outcome(
                plain.outcome().weighIn(),
                new Outcome.Result(
                    1, NAME, 1, 20, List.of(new Outcome.NeighbourWeight(PEG + "1", 1000))),
                List.of(new Outcome.Media(NAME + ".mp4", 0, 1))));
  }

  private final Review review = Reviewer.review(named(), ReviewSettings.DEFAULT);
  private final TalkMaterial material =
      new TalkMaterial(
          Map.of("a", review, "b", review),
          Map.of(
              "a",
              SeasonBuilder.build(
                  List.of(SessionSummaries.whole(review), SessionSummaries.whole(review)),
                  SeasonFilter.ALL)));

  /** A talk drafted with names, every picture there is added, and names in its own words. */
  private Talk talk() {
    List<Source> sources = List.of(new Source("a", Path.of("a")), new Source("b", Path.of("b")));
    Talk draft = TalkDraft.of(sources, material, Look.USUAL, true);
    List<Slide> slides = new ArrayList<>(draft.slides());
    String line = review.lines().get(0).line().id();
    for (Picture.Kind kind : Picture.Kind.values()) {
      Picture picture =
          kind.sessions() == 2
              ? Picture.of(kind, "a", "b")
              : kind.ofOneLine() ? Picture.ofLine(kind, "a", line) : Picture.of(kind, "a");
      slides.add(
          Slide.EMPTY
              .withTitle(kind.label())
              .withWords(List.of("At " + NAME + " Water I drew Peg " + PEG + ", says Ada Lund."))
              .withPicture(picture)
              .withNotes("Thank zanderby open and ADA LUND."));
    }
    return draft.withSlides(slides).withDiscretion(new Discretion(true, List.of("Ada Lund")));
  }

  @Test
  void noFigureAndNoWordNamesAnybody() throws IOException {
    Unnamed shown = Unnamed.of(talk(), material);
    for (SlideFigure page : TalkPages.of(shown.talk(), shown.material())) {
      String said = page.title() + page.words() + page.description() + page.foot();
      check(said);
    }
    for (Slide slide : shown.talk().slides()) {
      check(slide.notes());
    }
    assertEquals(
        "At the water I drew the peg, says somebody.",
        shown.talk().slides().get(shown.talk().slides().size() - 1).words().get(0));
    String season = shown.material().season("a").toString();
    check(season);
    assertFalse(season.contains(review.session().occasion().date().toString()), season);
    check(SessionWriter.toJson(shown.material().review("a").session()));
  }

  private void check(String said) {
    String low = said.toLowerCase(Locale.ROOT);
    assertFalse(low.contains("zander"), said);
    assertFalse(low.contains("q937"), said);
    assertFalse(low.contains("ada lund"), said);
    assertFalse(low.contains("52.123") || low.contains("1.234"), said);
  }

  @Test
  void noExportHoldsAName() throws IOException {
    Path pdf = folder.resolve("t.pdf");
    TalkExport.pdf(talk(), material, pdf, ExportMonitor.NONE);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      check(new PDFTextStripper().getText(document));
      check(document.getDocumentInformation().getTitle());
    }
    Path pptx = folder.resolve("t.pptx");
    TalkExport.pptx(talk(), material, pptx, ExportMonitor.NONE);
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(pptx))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        if (entry.getName().endsWith(".xml")) {
          assertFalse(text.toLowerCase(Locale.ROOT).contains("zander"), entry.getName());
        }
      }
    }
    Path tables = folder.resolve("tables");
    TalkExport.tables(talk(), material, tables, ExportMonitor.NONE);
    try (var files = Files.list(tables)) {
      for (Path file : files.toList()) {
        check(file.getFileName() + Files.readString(file));
      }
    }
  }

  @Test
  void whatIsLeftOutIsListed() {
    String list = String.join("\n", Unnamed.of(talk(), material).leftOut());
    for (String part :
        List.of(
            "the title “Zanderby Open”",
            "the water's name “Zanderby Water”",
            "where the water lies",
            "the number of peg Q937",
            "the date ",
            "notes and reasons of the record",
            "the organiser's rules",
            "the placing and other pegs' weights",
            "the names of footage files",
            "the name “Ada Lund”")) {
      assertTrue(list.contains(part), part + " in " + list);
    }
  }

  @Test
  void noNumberChanges() {
    Review after = Unnamed.of(talk(), material).material().review("a");
    assertEquals(review.lines(), after.lines());
    Review again = Reviewer.review(after.session(), ReviewSettings.DEFAULT);
    assertEquals(review.summary(), again.summary());
    assertEquals(review.stays(), again.stays());
  }

  @Test
  void aTalkThatLeavesNothingOutStaysAsItIs() {
    Talk open = talk().withDiscretion(Discretion.NONE);
    Unnamed same = Unnamed.of(open, material);
    assertSame(open, same.talk());
    assertSame(material, same.material());
    assertEquals(List.of(), same.leftOut());
  }
}
