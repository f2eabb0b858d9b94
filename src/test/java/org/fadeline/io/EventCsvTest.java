package org.fadeline.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Document;
import org.fadeline.model.EventKind;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.WeightText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EventCsvTest {
  private static final ReadOptions ON_THE_DAY =
      ReadOptions.of(LocalDate.of(2026, 8, 15), Sessions.LONDON);

  private static ReadResult read(String csv) {
    return EventCsv.parse("match.csv", csv, ON_THE_DAY);
  }

  private static Session session(ReadResult result) {
    return SessionJsonTest.sessionOf(result);
  }

  private static String problems(ReadResult result) {
    return SessionJsonTest.listed(result);
  }

  @Provide
  Arbitrary<Session> sessions() {
    return Sessions.any();
  }

  @Provide
  Arbitrary<String> texts() {
    return Sessions.text();
  }

  @Property(tries = 400)
  void everyFieldOfEveryEventComesBackEqual(@ForAll("sessions") Session session) {
    String csv = EventCsv.write(session);
    ReadResult result =
        EventCsv.parse("x.csv", csv, ReadOptions.of(null, session.occasion().zone()));
    if (session.events().isEmpty()) {
      assertTrue(problems(result).contains("there is no event") || result.session().isPresent());
      return;
    }
    Session back = session(result);
    assertEquals(session.events(), back.events());
    assertEquals(session.match().allIn(), back.match().allIn());
    assertEquals(session.match().allOut(), back.match().allOut());
    assertEquals(csv, EventCsv.write(back.withLines(session.lines())));
  }

  @Property
  void aGuardedTextComesBackAndNeverStartsAFormula(@ForAll("texts") String text) {
    String cell = CsvText.guard(text);
    assertEquals(text, CsvText.unguard(cell));
    assertFalse(CsvText.startsLikeFormula(cell));
  }

  @Test
  void unknownFieldsOfEventsTravelInTheirOwnColumn() {
    Session session = Sessions.small();
    session =
        session.withDocument(
            new Document("d", 1, Map.of("/events/e5/swim~1side", "{\"a\":[1,2.50]}")));
    String csv = EventCsv.write(session);
    assertTrue(csv.lines().findFirst().orElseThrow().endsWith(",note,peg,line_id,other"), csv);
    assertEquals(session.document().unknown(), session(read(csv)).document().unknown());
  }

  @Test
  void readsWhatAPersonTypes() {
    ReadResult result =
        read(
            """
            Time,Event,Line,Count,Weight,Note
            10:00,all in,,,,
            10:01,cast,Short,,,
            10:05:30,Landed,short,,2lb 4oz,"first one, small"
            10:20,fed,Short,10,,

            10:31,landed,short,2,8-4
            15:00,all out
            """);
    Session session = session(result);
    assertEquals(List.of(), result.report().problems(), () -> problems(result));
    assertEquals(1, session.lines().size());
    assertEquals("Short", session.lines().get(0).name());
    assertEquals("short", session.lines().get(0).id());
    assertEquals(4, session.events().size());
    SessionEvent.Landed first = (SessionEvent.Landed) session.events().get(1);
    assertEquals(Sessions.at("10:05:30"), first.at());
    assertEquals("first one, small", first.note());
    assertEquals(
        new Fish(2, null, 132 * WeightText.GRAMS_PER_OUNCE, false),
        ((SessionEvent.Landed) session.events().get(3)).fish());
    assertEquals(
        new Feed.Amount(10, Feed.Unit.PIECES),
        ((SessionEvent.Fed) session.events().get(2)).feed().amount());
    assertEquals(Sessions.at("15:00:00"), session.match().allOut());
  }

  @Test
  void aFileWithoutFrameTakesFirstAndLastEventAndSaysSo() {
    ReadResult result = read("time,event,line\n10:07,cast,a\n11:30,bite,a\n");
    assertEquals(Sessions.at("10:07:00"), session(result).match().allIn());
    assertEquals(Sessions.at("11:30:00"), session(result).match().allOut());
    assertTrue(problems(result).contains("no all-in and no all-out"), problems(result));
  }

  @Test
  void clockTimesMoreThanSixHoursBeforeAllInAreAfterMidnight() {
    ReadResult result =
        read(
            """
            time,event,line
            20:00,all-in,
            14:00,note,
            13:59,note,
            23:30,cast,a
            01:15,landed,a
            02:00,all-out,
            """);
    List<Long> at = session(result).events().stream().map(SessionEvent::at).toList();
    long day = 86_400_000;
    assertEquals(
        List.of(
            Sessions.at("14:00:00"),
            Sessions.at("23:30:00"),
            Sessions.at("01:15:00") + day,
            Sessions.at("13:59:00") + day),
        at);
    assertEquals(Sessions.at("02:00:00") + day, session(result).match().allOut());
  }

  @Test
  void defaultsOfDateAndZoneAreStated(@TempDir Path folder) throws Exception {
    String csv = "time,event,line\n10:07,cast,a\n11:30,bite,a\n";
    Path named = Files.writeString(folder.resolve("withy-2026-05-03.csv"), csv);
    ReadResult result = SessionFiles.read(named, ReadOptions.DEFAULT);
    assertEquals(LocalDate.of(2026, 5, 3), session(result).occasion().date());
    assertTrue(problems(result).contains("that in the file's name is taken: 2026-05-03"));
    assertTrue(problems(result).contains("the machine's is taken: " + ZoneId.systemDefault()));
    Path plain = Files.writeString(folder.resolve("withy.csv"), csv);
    assertTrue(
        problems(SessionFiles.read(plain, ReadOptions.DEFAULT)).contains("the file's last change"));
  }

  @Test
  void semicolonsAndDecimalCommasOfASpreadsheetAreReadAndSaid() {
    ReadResult result =
        read("time;event;line;weight_g\n10:00;cast;a;\n10:05;landed;a;850,5\n15:00;all-out;;\n");
    assertEquals(850.5, ((SessionEvent.Landed) session(result).events().get(1)).fish().grams());
    assertTrue(problems(result).contains("separated by semicolons"), problems(result));
  }

  @Test
  void everyBadCellIsListedWithRowColumnAndRemedy() {
    ReadResult result =
        read(
            """
            time,event,line,count,weight_g,unit,amount
            10:00,all-in,,,,,
            25:00,cast,a,,,,
            10:01,ate,a,,,,
            10:02,landed,a,3.5,"1,2",,
            10:03,landed,a,0,-4,,
            ,cast,a,,,,
            10:04,fed,a,,,buckets,3
            10:05,landed,a,1,1e400,,
            10:06,landed,a,1,NaN,,,,surplus
            2026-10-25T01:30,note,a,,,,
            15:00,all-out,,,,,
            15:30,all-out,,,,,
            """);
    assertTrue(result.session().isEmpty());
    String all = problems(result);
    for (String expected :
        List.of(
            "match.csv:3:1: time: \"25:00\" is no time of the day; hours go from 00 to 23",
            "match.csv:4:2: event: \"ate\" is no event known here; write one of cast,",
            "match.csv:5:4: count: 3.5 is not a whole number",
            "match.csv:5:5: weight_g: \"1,2\" has a comma in it; write a decimal point",
            "match.csv:6:4: count: 0 is outside 1 to 100000",
            "match.csv:6:5: weight_g: -4 is outside 0 to 1000000",
            "match.csv:7:1: time: the row has no time",
            "match.csv:8:6: unit: \"buckets\" is no unit of bait",
            "match.csv:9:5: weight_g: 1e400 is outside",
            "match.csv:10:5: weight_g: \"NaN\" is not a number",
            "match.csv:10:9: the row has more cells than the header",
            "match.csv:11:1: time: 2026-10-25T01:30 came twice in Europe/London",
            "match.csv:13:2: event: there is a second all-out")) {
      assertTrue(all.contains(expected), () -> expected + "\nnot in\n" + all);
    }
    assertEquals(11, result.report().rejects().size(), "header and ten rows");
  }

  @Test
  void skippingBadRowsKeepsTheRestAndTheRejectsReadAgain() {
    String csv =
        """
        time,event,line,note
        10:00,all-in,,
        10:01,cast,a,
        10:02,ate,a,"=2+2, and
        more"
        10:03,landed,a,
        15:00,all-out,,
        """;
    assertTrue(read(csv).session().isEmpty());
    ReadResult part = EventCsv.parse("match.csv", csv, ON_THE_DAY.withSkipBad(true));
    assertEquals(2, session(part).events().size());
    String rejects = EventCsv.rejects(part.report());
    assertEquals("time,event,line,note\r\n10:02,ate,a,\"'=2+2, and\nmore\"\r\n", rejects);
    ReadResult mended = read(rejects.replace("ate", "bite") + "10:03,note,,\r\n");
    assertEquals("=2+2, and\nmore", session(mended).events().get(0).note());
  }

  @Test
  void headersAreChecked() {
    assertTrue(
        problems(read("time,event,line,,Time\n10:00,cast,a\n"))
            .contains("match.csv:1:5: time: the column \"Time\" is there twice"));
    assertTrue(
        problems(read("time,event,line,,x\n10:00,cast,a\n11:00,cast,a\n"))
            .contains("match.csv:1:4: warning: the column has no name"));
    String noTime = problems(read("when,event\n10:00,cast\n"));
    assertTrue(noTime.contains("there is no column time; the header reads \"when,event\""), noTime);
    assertTrue(
        problems(read("time,event,note\n10:00,note,x\n10:01,note,\"open\n"))
            .contains("match.csv:3:1: a quotation mark in this row is not closed"));
  }

  @Test
  void aMappingNamesColumnsWordsDatesAndPounds() {
    CsvMapping mapping =
        new CsvMapping(
            Map.of(
                "time",
                "Zeit",
                "date",
                "Tag",
                "event",
                "Was",
                "line",
                "Bahn",
                "weight_lb",
                "Pfund",
                "weight_oz",
                "Unzen"),
            Map.of("fisch", EventKind.LANDED, "wurf", EventKind.CAST),
            CsvMapping.DateOrder.DAY_MONTH_YEAR,
            ';',
            true);
    ReadResult result =
        EventCsv.parse(
            "m.csv",
            """
            Tag;Zeit;Was;Bahn;Pfund;Unzen
            03/04/2026;10:00;Wurf;a;;
            03/04/2026;10:30;Fisch;a;8;4,5
            """,
            ReadOptions.of(null, Sessions.LONDON).withMapping(mapping));
    assertEquals(LocalDate.of(2026, 4, 3), session(result).occasion().date());
    Double grams = ((SessionEvent.Landed) session(result).events().get(1)).fish().grams();
    assertEquals(132.5 * 453.59237 / 16, grams == null ? 0 : grams, 1e-9);
    CsvMapping.Loaded back = CsvMapping.parse("map.json", mapping.toJson());
    assertEquals(mapping, back.mapping().orElseThrow());
    assertEquals(mapping.toJson(), back.mapping().orElseThrow().toJson());
  }

  @Test
  void aDateThatCouldBeReadTwoWaysIsNotGuessed() {
    ReadResult result = read("date,time,event,line\n03/04/2026,10:00,cast,a\n");
    assertTrue(
        problems(result).contains("\"03/04/2026\" can be read day first or month first"),
        problems(result));
  }

  @Test
  void aBadMappingSaysWhatIsWrong() {
    CsvMapping.Loaded loaded =
        CsvMapping.parse(
            "map.json",
            "{\"format\": \"fadeline-csv-mapping\", \"version\": 1, \"delimiter\": \"x\","
                + " \"dateOrder\": \"ymd\", \"events\": {\"fish\": \"eaten\"},"
                + " \"columns\": {\"time\": \"t\", \"event\": \"t\", \"tme\": \"u\"}}");
    assertTrue(loaded.mapping().isEmpty());
    String all = String.valueOf(loaded.report().problems());
    for (String expected :
        List.of(
            "/delimiter: \"x\" cannot stand between cells",
            "/dateOrder: \"ymd\" is no order of dates",
            "/events/fish: \"eaten\" is no kind of event",
            "/columns/event: \"t\" is named twice",
            "/columns/tme: the field \"tme\" is not known here")) {
      assertTrue(all.contains(expected), () -> expected + " not in " + all);
    }
  }
}
