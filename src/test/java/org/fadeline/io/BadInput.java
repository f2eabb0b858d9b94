package org.fadeline.io;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Bad input of every kind, made here from good input.
 *
 * @param kind what is bad, in words
 * @param ending of the file's name
 * @param content of the file
 * @param expected text that a message must hold
 * @param readable whether a session comes of it all the same
 */
public record BadInput(
    String kind, String ending, List<Byte> content, String expected, boolean readable) {
  public static final String JSON = ".session.json";
  public static final String CSV = ".csv";

  /** Ending of WebVTT captions. */
  public static final String VTT = ".vtt";

  /** Ending of shorthand. */
  public static final String TXT = ".txt";

  /** A small hand-made session, without hash, so that it can be changed. */
  public static final String GOOD_JSON =
      """
      {"format": "fadeline-session", "version": 1, "title": "T", "date": "2026-08-15",
       "zone": "Europe/London",
       "match": {"allIn": "2026-08-15T10:00", "allOut": "2026-08-15T15:00"},
       "lines": [{"id": "a", "name": "A", "depthM": 2}, {"id": "b", "name": "B"}],
       "events": [
        {"id": "e1", "at": "2026-08-15T10:01", "line": "a", "kind": "cast"},
        {"id": "e2", "at": "2026-08-15T10:05", "line": "a", "kind": "landed", "count": 1,
         "weightG": 850}]}
      """;

  public static final String GOOD_CSV =
      """
      time,event,line,count,weight_g,note
      10:00,all-in,,,,
      10:01,cast,a,,,
      10:05,landed,a,1,850,first
      15:00,all-out,,,,
      """;

  /** Returns the file's content. */
  public byte[] bytes() {
    byte[] bytes = new byte[content.size()];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = content.get(i);
    }
    return bytes;
  }

  @Override
  public String toString() {
    return kind + " (" + ending + ")";
  }

  private static BadInput of(
      String kind, String ending, byte[] bytes, String expected, boolean readable) {
    List<Byte> content = new ArrayList<>(bytes.length);
    for (byte b : bytes) {
      content.add(b);
    }
    return new BadInput(kind, ending, content, expected, readable);
  }

  private static BadInput refused(String kind, String ending, String text, String expected) {
    return of(kind, ending, text.getBytes(StandardCharsets.UTF_8), expected, false);
  }

  private static BadInput warned(String kind, String ending, String text, String expected) {
    return of(kind, ending, text.getBytes(StandardCharsets.UTF_8), expected, true);
  }

  private static String good(String ending) {
    return ending.equals(JSON) ? GOOD_JSON : GOOD_CSV;
  }

  private static String json(String from, String to) {
    if (!GOOD_JSON.contains(from)) {
      throw new IllegalArgumentException(from);
    }
    return GOOD_JSON.replace(from, to);
  }

  private static String csv(String from, String to) {
    if (!GOOD_CSV.contains(from)) {
      throw new IllegalArgumentException(from);
    }
    return GOOD_CSV.replace(from, to);
  }

  /** Returns every kind, those of any file first. */
  public static List<BadInput> all() {
    return Stream.of(anyFile(), json(), domain(), csv(), captions()).flatMap(List::stream).toList();
  }

  /** Kinds that any text file can have. */
  public static List<BadInput> anyFile() {
    List<BadInput> all = new ArrayList<>();
    for (String ending : List.of(JSON, CSV)) {
      byte[] good = good(ending).getBytes(StandardCharsets.UTF_8);
      all.add(of("empty", ending, new byte[0], "the file is empty", false));
      all.add(of("all zeros", ending, new byte[5000], "is not UTF-8 text", false));
      all.add(of("one byte", ending, new byte[] {'x'}, "", false));
      all.add(refused("white space", ending, " \n\t\r\n ", "the file is empty"));
      for (int tenth = 1; tenth < 10; tenth++) {
        byte[] cut = Arrays.copyOf(good, good.length * tenth / 10);
        // These two cuts leave whole rows; the message is that all-out is not there.
        boolean rows = ending.equals(CSV) && (tenth == 6 || tenth == 8);
        all.add(of("cut at tenth " + tenth, ending, cut, "", rows));
      }
      byte[] random = new byte[3000];
      new Random(1).nextBytes(random);
      all.add(of("random bytes", ending, random, "is not UTF-8 text", false));
      all.add(
          of(
              "wrong type",
              ending,
              new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 1, 2, 3},
              "is not UTF-8 text",
              false));
      all.add(warned("UTF-8 byte order mark", ending, "\uFEFF" + good(ending), "byte order mark"));
      for (Charset charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
        all.add(
            of(charset.name(), ending, good(ending).getBytes(charset), "save it as UTF-8", false));
        all.add(
            of(
                charset.name() + " with mark",
                ending,
                ("\uFEFF" + good(ending)).getBytes(charset),
                "save it as UTF-8",
                false));
      }
      String accent =
          good(ending).replace(ending.equals(JSON) ? "\"T\"" : "first", "\"\u00E9t\u00E9\"");
      all.add(
          of(
              "Windows-1252",
              ending,
              accent.getBytes(Charset.forName("windows-1252")),
              "0xE9 here is not UTF-8",
              false));
      byte[] invalid = accent.getBytes(StandardCharsets.UTF_8);
      int at = accent.indexOf('\u00E9');
      invalid[at + 1] = 'x';
      all.add(of("invalid UTF-8", ending, invalid, "0xC3 here is not UTF-8", false));
      byte[] surrogate = accent.getBytes(StandardCharsets.UTF_8);
      surrogate[at] = (byte) 0xED;
      surrogate[at + 1] = (byte) 0xA0;
      all.add(of("lone surrogate in UTF-8", ending, surrogate, "0xED here is not UTF-8", false));
    }
    all.add(refused("lone surrogate", JSON, json("\"T\"", "\"a\\ud800b\""), "half a character"));
    all.add(refused("NUL", JSON, json("\"T\"", "\"a\0b\""), "this is not JSON"));
    all.add(warned("NUL", CSV, csv("first", "fi\0rst"), "NUL sign"));
    all.add(refused("bidi override", JSON, json("\"cast\"", "\"\u202Etsac\""), "\\u202Etsac"));
    all.add(refused("bidi override", CSV, csv("cast", "\u202Etsac"), "\\u202Etsac"));
    all.add(refused("zero width", CSV, csv("cast", "ca\u200Bst"), "ca\\u200Bst"));
    all.add(
        refused(
            "combining flood", CSV, csv("cast", "ca" + "\u0301".repeat(500)), "is no event known"));
    all.add(refused("a table as JSON", JSON, GOOD_CSV, "this is not JSON"));
    all.add(refused("JSON as a table", CSV, GOOD_JSON, "there is no column time"));
    return all;
  }

  /** Kinds of the session JSON. */
  public static List<BadInput> json() {
    List<BadInput> all = new ArrayList<>();
    String weight = "\"weightG\": 850";
    all.add(refused("deep nesting", JSON, "[".repeat(100_000), "deeper than 32 levels"));
    all.add(
        refused(
            "nesting in a field", JSON, json("\"T\"", "[".repeat(40)), "deeper than 32 levels"));
    all.add(
        refused("huge number", JSON, json("850", "8".repeat(1000)), "longer than 32 characters"));
    all.add(
        refused(
            "huge string",
            JSON,
            json("\"T\"", "\"" + "x".repeat(70_000) + "\""),
            "text is longer"));
    all.add(
        refused(
            "huge name",
            JSON,
            json("\"title\"", "\"" + "x".repeat(1000) + "\""),
            "field name is longer"));
    all.add(
        refused(
            "a million elements",
            JSON,
            json("\"lines\": [", "\"lines\": [" + "0,".repeat(1_000_000)),
            "an object {…} is needed here"));
    all.add(
        refused(
            "too many values",
            JSON,
            "[" + "0,".repeat(JsonParse.MOST_VALUES + 1) + "0]",
            "more than 3000000 values"));
    all.add(refused("duplicate key", JSON, json(weight, weight + ", " + weight), "is there twice"));
    all.add(refused("trailing garbage", JSON, GOOD_JSON + "{}", "more text follows the end"));
    all.add(refused("null root", JSON, "null", "a session is an object"));
    all.add(refused("array root", JSON, "[]", "a session is an object"));
    all.add(refused("scalar root", JSON, "7", "a session is an object"));
    all.add(refused("text for a number", JSON, json("850", "\"850\""), "a number is needed here"));
    all.add(refused("number for a text", JSON, json("\"T\"", "7"), "a text is needed here"));
    all.add(
        refused(
            "object for a list",
            JSON,
            json("\"lines\": [{", "\"lines\": {\"x\": [{")
                .replace("}],\n \"events\"", "}]},\n \"events\""),
            "a list […] is needed"));
    all.add(
        refused(
            "null for a number",
            JSON,
            json("\"count\": 1", "\"count\": null"),
            "null is no value"));
    all.add(refused("NaN", JSON, json("850", "NaN"), "this is not JSON"));
    all.add(refused("Infinity", JSON, json("850", "Infinity"), "this is not JSON"));
    all.add(refused("1e400", JSON, json("850", "1e400"), "1e400 is outside"));
    all.add(
        refused("fraction", JSON, json("\"count\": 1", "\"count\": 3.9"), "not a whole number"));
    all.add(
        refused(
            "integer overflow",
            JSON,
            json("\"count\": 1", "\"count\": 99999999999"),
            "is outside"));
    all.add(
        warned("newer version", JSON, json("\"version\": 1", "\"version\": 2"), "newer format 2"));
    all.add(refused("version 0", JSON, json("\"version\": 1", "\"version\": 0"), "0 is outside"));
    all.add(
        refused("missing version", JSON, json(" \"version\": 1,", ""), "\"version\" is missing"));
    all.add(refused("missing format", JSON, "{}", "\"format\" is missing"));
    all.add(
        warned(
            "unknown field",
            JSON,
            json(weight, weight + ", \"depth\": 2"),
            "\"depth\" is not known"));
    all.add(refused("unknown kind", JSON, json("\"cast\"", "\"flick\""), "no kind of event"));
    all.add(
        refused("duplicate event ids", JSON, json("\"e2\"", "\"e1\""), "two events with the id"));
    all.add(
        refused(
            "duplicate line ids",
            JSON,
            json("\"id\": \"b\"", "\"id\": \"a\""),
            "two lines with the id"));
    all.add(
        refused(
            "dangling line",
            JSON,
            json("\"line\": \"a\", \"kind\": \"landed\"", "\"line\": \"z\", \"kind\": \"landed\""),
            "there is no line \"z\""));
    all.add(
        refused(
            "cycle of spots",
            JSON,
            json("\"id\": \"a\",", "\"id\": \"a\", \"spot\": \"b\",")
                .replace("\"id\": \"b\",", "\"id\": \"b\", \"spot\": \"a\","),
            "lies on another spot itself"));
    all.add(
        warned(
            "hash mismatch",
            JSON,
            SessionWriter.toJson(Sessions.small()).replace("2300.5", "2300.6"),
            "does not fit its hash"));
    all.add(
        warned(
            "@class",
            JSON,
            json("\"title\"", "\"@class\": \"java.net.URL\", \"title\""),
            "\"@class\" is not known"));
    all.add(
        refused(
            "path out of the folder",
            JSON,
            json("\"lines\"", "\"media\": [{\"path\": \"../x.mp4\"}], \"lines\""),
            "leads out of the session's folder"));
    return all;
  }

  /** Kinds of what a session says. */
  public static List<BadInput> domain() {
    List<BadInput> all = new ArrayList<>();
    StringBuilder atOnce = new StringBuilder();
    for (int i = 0; i < 10_000; i++) {
      atOnce.append("{\"at\": \"2026-08-15T10:02\", \"line\": \"a\", \"kind\": \"cast\"},\n");
    }
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < 10_000; i++) {
      lines.append("{\"id\": \"l").append(i).append("\"},\n");
    }
    all.add(
        refused("end before start", JSON, json("T15:00", "T09:00"), "does not come after all in"));
    all.add(refused("end before start", CSV, csv("15:00", "09:00"), "does not come after all in"));
    all.add(warned("unsorted", JSON, json("T10:05", "T10:00"), "earlier than the one before"));
    all.add(warned("unsorted", CSV, csv("10:05", "10:00"), "earlier than the one before"));
    all.add(
        warned(
            "10,000 equal instants",
            JSON,
            json("\"events\": [", "\"events\": [" + atOnce),
            "share this instant"));
    all.add(
        refused(
            "year 0", JSON, json("2026-08-15T10:05", "0000-08-15T10:05"), "the year 0 is outside"));
    all.add(
        refused(
            "year 9999",
            JSON,
            json("2026-08-15T10:05", "9999-08-15T10:05"),
            "the year 9999 is outside"));
    all.add(
        refused("year 9999", CSV, csv("10:05", "9999-08-15T10:05"), "the year 9999 is outside"));
    all.add(
        refused(
            "gap of a clock change",
            JSON,
            json("2026-08-15T10:05", "2026-03-29T01:30"),
            "did not exist in"));
    all.add(
        refused(
            "gap of a clock change", CSV, csv("10:05", "2026-03-29T01:30"), "did not exist in"));
    all.add(
        refused(
            "overlap of a clock change",
            JSON,
            json("2026-08-15T10:05", "2026-10-25T01:30"),
            "came twice in"));
    all.add(
        refused(
            "overlap of a clock change", CSV, csv("10:05", "2026-10-25T01:30"), "came twice in"));
    all.add(
        refused(
            "unknown zone",
            JSON,
            json("Europe/London", "Europe/Atlantis"),
            "is no time zone known"));
    all.add(refused("negative weight", JSON, json("850", "-850"), "-850 is outside"));
    all.add(refused("negative weight", CSV, csv("850", "-850"), "-850 is outside"));
    all.add(
        warned(
            "no lines",
            JSON,
            GOOD_JSON.replaceFirst("(?s)\"lines\".*", "\"lines\": [], \"events\": []}"),
            "there are no lines"));
    all.add(
        refused(
            "10,000 lines",
            JSON,
            json("\"lines\": [", "\"lines\": [" + lines),
            "there are 10002 lines"));
    all.add(
        warned("event before the match", JSON, json("T10:01", "T09:01"), "comes before all in"));
    all.add(warned("event after the match", CSV, csv("10:05", "15:05"), "comes after all out"));
    all.add(
        refused(
            "event days away",
            JSON,
            json("2026-08-15T10:05", "2026-08-25T10:05"),
            "more than a day outside"));
    return all;
  }

  /** Kinds of tables. */
  public static List<BadInput> csv() {
    List<BadInput> all = new ArrayList<>();
    all.add(refused("unclosed quote", CSV, csv("first", "\"first"), "is not closed"));
    all.add(
        refused(
            "text after a quote",
            CSV,
            csv("first", "\"first\"x"),
            "is not closed, or text follows"));
    all.add(refused("long row", CSV, csv("first", "first,second"), "more cells than the header"));
    all.add(refused("duplicate header", CSV, csv("note\n", "time\n"), "is there twice"));
    all.add(warned("blank header", CSV, csv("note\n", "\n"), "the column has no name"));
    all.add(warned("unknown header", CSV, csv("note\n", "remark\n"), "\"remark\" is not known"));
    all.add(warned("wrong delimiter", CSV, GOOD_CSV.replace(',', ';'), "separated by semicolons"));
    all.add(refused("decimal comma", CSV, csv("850", "\"850,5\""), "has a comma in it"));
    all.add(warned("formula cell", CSV, csv("first", "=1+1"), "starts like a spreadsheet formula"));
    all.add(
        refused(
            "day and month ambiguous",
            CSV,
            csv("10:05", "03/04/2026 10:05"),
            "day first or month first"));
    all.add(
        warned(
            "value of another kind",
            CSV,
            csv("10:01,cast,a,,,", "10:01,cast,a,3,,"),
            "is not used: cast has no count"));
    all.add(refused("embedded newline", CSV, csv("cast", "\"ca\nst\""), "is no event known here"));
    all.add(
        refused(
            "no line is fished",
            CSV,
            csv("10:01,cast,a", "10:01,cast,"),
            "names no line and none is being fished"));
    return all;
  }

  /** Kinds of captions and of shorthand. */
  public static List<BadInput> captions() {
    List<BadInput> all = new ArrayList<>();
    String cue = "\n\n00:01.000 --> 00:02.000\nlanded one, four pound\n";
    all.add(of("empty", VTT, new byte[0], "the file is empty", false));
    all.add(refused("bad signature", VTT, "WEBVTTX" + cue, "WEBVTT"));
    all.add(refused("captions without signature", VTT, cue.strip(), "WEBVTT"));
    all.add(
        of("UTF-16", VTT, ("WEBVTT" + cue).getBytes(StandardCharsets.UTF_16), "not UTF-8", false));
    all.add(
        of(
            "Windows-1252",
            VTT,
            ("WEBVTT" + cue + "caf\u00E9").getBytes(StandardCharsets.ISO_8859_1),
            "not UTF-8",
            false));
    all.add(refused("only an unterminated NOTE", VTT, "WEBVTT\n\nNOTE never ended", ""));
    all.add(warned("comma in a time", VTT, "WEBVTT" + cue + cue.replace(".000", ",000"), "time"));
    all.add(warned("huge hours", VTT, "WEBVTT" + cue + cue.replace("00:01", "99999999:00:01"), ""));
    all.add(warned("arrow in the text", VTT, "WEBVTT" + cue + "now --> then\n", ""));
    all.add(warned("unterminated STYLE", VTT, "WEBVTT" + cue + "\nSTYLE\n::cue {", ""));
    all.add(of("empty", TXT, new byte[0], "the file is empty", false));
    all.add(refused("no time", TXT, "short landed carp\n", "does not start with a time"));
    all.add(refused("weight of two meanings", TXT, "10:51 a landed carp 8.4\n", "no plain weight"));
    all.add(refused("NUL", TXT, "10:5\0 a bite\n", ""));
    all.add(refused("line of no end", TXT, "10:51 " + "a ".repeat(9000) + "\n", "longer than a"));
    all.add(of("not UTF-8", TXT, new byte[] {'1', '0', (byte) 0xE9}, "UTF-8", false));
    all.add(warned("unknown line", TXT, "10:40 reeds landed carp 4lb\n", "is no line known here"));
    return all;
  }
}
