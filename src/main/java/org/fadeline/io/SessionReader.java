package org.fadeline.io;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.fadeline.model.Document;
import org.fadeline.model.Line;
import org.fadeline.model.Match;
import org.fadeline.model.Occasion;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * Reads session JSON, version 1 and, for looking at only, newer ones.
 *
 * <p>A file without document id gets one worked out from its content, so that opening it twice
 * gives the same document. A file whose hash does not fit its content is read, with a warning: it
 * was edited by hand, or damaged.
 */
public final class SessionReader {
  private static final String KIND = "session";

  private final String file;
  private final ReadOptions options;
  private final ImportReport.Collector problems;
  private final Map<String, String> unknown = new HashMap<>();
  private @Nullable String readOnly;

  private SessionReader(String file, ReadOptions options, ImportReport.Collector problems) {
    this.file = file;
    this.options = options;
    this.problems = problems;
  }

  /** Reads a file, all or nothing. */
  public static ReadResult read(Path path) {
    return read(path, ReadOptions.DEFAULT);
  }

  /** Reads a file; of the options, {@link ReadOptions#skipBad()} leaves bad events out. */
  public static ReadResult read(Path path, ReadOptions options) {
    ImportReport.Collector problems = new ImportReport.Collector();
    String text = FileText.read(path, problems);
    return text == null
        ? ReadResult.refused(problems.report())
        : new SessionReader(FileText.nameOf(path), options, problems).parse(text);
  }

  /**
   * Reads text.
   *
   * @param name of the file, for messages
   */
  public static ReadResult parse(String name, String text, ReadOptions options) {
    return new SessionReader(name, options, new ImportReport.Collector()).parse(text);
  }

  /** Reads bytes, which must be UTF-8. */
  public static ReadResult parse(String name, byte[] bytes, ReadOptions options) {
    ImportReport.Collector problems = new ImportReport.Collector();
    String text = FileText.decode(name, bytes, problems);
    return text == null
        ? ReadResult.refused(problems.report())
        : new SessionReader(name, options, problems).parse(text);
  }

  private ReadResult parse(String text) {
    Json.Obj root = JsonParse.object(file, text, KIND, problems);
    Session session = root == null ? null : root(root, text);
    return new ReadResult(
        Optional.ofNullable(session), problems.report(), Optional.ofNullable(readOnly));
  }

  private @Nullable Session root(Json.Obj read, String text) {
    Json.Obj root = migrated(read);
    if (root == null) {
      return null;
    }
    JsonFields fields = JsonFields.of(new JsonFields.Scope(file, problems, unknown), root);
    fields.raw("format");
    fields.raw("version");
    boolean own = hashFits(fields, root, text);
    String id = fields.text("id");
    Long sequence = fields.wholeLong("sequence", 0, 1L << 53);
    fields.notNull("sequence");
    ZoneId zone = zone(fields);
    Match match = MatchJson.read(fields, zone);
    Occasion occasion = OccasionJson.read(fields, dateOf(match, zone), zone);
    List<Line> lines = lines(fields);
    int errorsBefore = problems.errors();
    List<SessionEvent> events = events(fields, zone);
    int bad = problems.errors() - errorsBefore;
    Outcome outcome = OutcomeJson.read(fields);
    fields.keepRest("");
    if (match == null || occasion == null || !usable(problems.errors() - bad)) {
      return null;
    }
    Document document =
        new Document(
            id == null || id.isEmpty() ? idFrom(text) : id,
            sequence == null ? 0 : sequence,
            unknown);
    Session session = new Session(document, occasion, match, lines, events, outcome);
    int before = problems.errors();
    Set<String> badIds =
        SessionRules.check(session, events, new JsonPlaces(file, root), own, problems);
    bad += badIds.isEmpty() ? 0 : problems.errors() - before;
    if (!usable(problems.errors() - bad)) {
      return null;
    }
    return badIds.isEmpty()
        ? session
        : session.withEvents(events.stream().filter(e -> !badIds.contains(e.id())).toList());
  }

  /** Whether the session can be used at all, with so many errors outside its events. */
  private boolean usable(int errorsElsewhere) {
    return problems.errors() == 0
        || readOnly != null
        || (options.skipBad() && errorsElsewhere == 0);
  }

  /** Returns the root in the current version, or null where it is no session. */
  private Json.@Nullable Obj migrated(Json.Obj root) {
    JsonFields fields = JsonFields.of(file, root, problems);
    Integer version = fields.version(SessionWriter.FORMAT, KIND);
    if (version == null) {
      return null;
    }
    if (version > SessionWriter.VERSION) {
      readOnly =
          "This file was written by a newer version of Fadeline (format "
              + version
              + "; this one knows "
              + SessionWriter.VERSION
              + "). It opens for reading only, so that nothing it holds is lost.";
      fields.warning(
          "version",
          "the file is of the newer format " + version,
          "it opens for reading only; use a newer version of Fadeline to change it");
      return root;
    }
    return Migrations.KNOWN.toCurrent(root, version);
  }

  private boolean hashFits(JsonFields fields, Json.Obj root, String text) {
    String hash = fields.text(SessionWriter.HASH);
    if (hash == null) {
      return false;
    }
    Json value = root.members().get(SessionWriter.HASH);
    if (value == null || !hash.matches("[0-9a-f]{64}")) {
      fields.error(
          SessionWriter.HASH,
          "the hash is not 64 hexadecimal digits",
          "take the field away if you changed the file by hand");
      return false;
    }
    String found = "\"" + hash + "\"";
    int at = text.indexOf(found, offset(text, value.line(), value.column()));
    String empty = text.substring(0, at + 1) + text.substring(at + found.length() - 1);
    boolean fits = SessionWriter.hashOf(empty).equals(hash);
    if (!fits) {
      fields.warning(
          SessionWriter.HASH,
          "the content does not fit its hash: the file was changed outside Fadeline, or damaged",
          "look it over before saving; a backup may hold the last good state");
    }
    return fits;
  }

  private static int offset(String text, int line, int column) {
    int at = 0;
    for (int i = 1; i < line; i++) {
      at = text.indexOf('\n', at) + 1;
    }
    // A lone CR also ends a line for the parser: looking from the start is then right but slower.
    return at == 0 ? 0 : Math.max(0, Math.min(text.length(), at + column - 2));
  }

  private ZoneId zone(JsonFields fields) {
    String name = fields.requiredText("zone", "write the water's zone, such as Europe/London");
    try {
      return name == null ? ZoneOffset.UTC : ClockTimes.zone(name);
    } catch (Refused refused) {
      fields.error("zone", refused.what(), refused.whatToDo());
      return ZoneOffset.UTC;
    }
  }

  private static @Nullable LocalDate dateOf(@Nullable Match match, ZoneId zone) {
    return match == null ? null : Instant.ofEpochMilli(match.allIn()).atZone(zone).toLocalDate();
  }

  private List<Line> lines(JsonFields fields) {
    List<Line> lines = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (JsonFields one : fields.objects("lines")) {
      Line line = LineJson.read(one);
      if (line != null && !ids.add(line.id())) {
        one.error(
            "id",
            "there are two lines with the id " + Shown.value(line.id()),
            "give each line an id of its own");
      } else if (line != null) {
        lines.add(line);
      }
    }
    return lines;
  }

  private List<SessionEvent> events(JsonFields fields, ZoneId zone) {
    List<JsonFields> all = fields.objects("events");
    Set<String> taken = new HashSet<>();
    for (JsonFields one : all) {
      String id = one.text("id");
      if (id != null && !taken.add(id)) {
        one.error(
            "id",
            "there are two events with the id " + Shown.value(id),
            "give each event an id of its own, or none");
      } else if (id != null && id.isEmpty()) {
        one.error("id", "the id is empty", "give the event an id, or leave the field out");
      }
    }
    List<SessionEvent> events = new ArrayList<>();
    Set<String> used = new HashSet<>();
    FreshIds fresh = new FreshIds(taken);
    for (JsonFields one : all) {
      String given = one.raw("id") instanceof Json.Text text ? text.value() : null;
      String id = given == null ? fresh.next() : given;
      SessionEvent event = EventJson.read(one, id, zone);
      one.keepRest(EventJson.place(id));
      if (event != null && used.add(id)) {
        events.add(event);
      }
    }
    return events;
  }

  /** Returns an id that the same content always gives. */
  public static String idFrom(String text) {
    return UUID.nameUUIDFromBytes(SessionWriter.hashOf(text).getBytes(StandardCharsets.US_ASCII))
        .toString();
  }
}
