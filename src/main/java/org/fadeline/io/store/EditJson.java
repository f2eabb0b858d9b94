package org.fadeline.io.store;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.fadeline.io.ClockTimes;
import org.fadeline.io.EventJson;
import org.fadeline.io.ImportReport;
import org.fadeline.io.Json;
import org.fadeline.io.JsonFields;
import org.fadeline.io.LineJson;
import org.fadeline.io.MatchJson;
import org.fadeline.io.OccasionJson;
import org.fadeline.io.OutcomeJson;
import org.fadeline.io.Refused;
import org.fadeline.io.UnknownFields;
import org.fadeline.model.Edit;
import org.fadeline.model.Line;
import org.fadeline.model.Occasion;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/**
 * An edit as JSON, both ways. Parts of a session are written as a session file writes them; times
 * are in UTC, so that an edit may change the zone as well.
 */
final class EditJson {
  private static final ZoneId UTC = ZoneOffset.UTC;

  private EditJson() {}

  static Json.Obj write(Edit edit) {
    Json.Obj out = Json.Obj.make().put("name", edit.name());
    if (!edit.events().isEmpty()) {
      List<Json> runs = new ArrayList<>();
      for (Edit.EventRun run : edit.events()) {
        runs.add(
            Json.Obj.make()
                .put("from", (long) run.from())
                .put("removed", events(run.removed()))
                .put("to", (long) run.to())
                .put("added", events(run.added())));
      }
      out.put("events", Json.Arr.of(runs));
    }
    put(
        out,
        "lines",
        edit.lines(),
        (l, to) -> to.put("lines", LineJson.write(l, UnknownFields.NONE)));
    put(
        out,
        "match",
        edit.match(),
        (m, to) -> to.put("match", MatchJson.write(m, UTC, UnknownFields.NONE)));
    put(
        out,
        "occasion",
        edit.occasion(),
        (o, to) -> OccasionJson.put(o, UTC, UnknownFields.NONE, to));
    put(out, "outcome", edit.outcome(), (o, to) -> OutcomeJson.put(o, UnknownFields.NONE, to));
    return out;
  }

  private static Json.Arr events(List<SessionEvent> events) {
    return EventJson.write(events, UTC, UnknownFields.NONE);
  }

  private static <T> void put(
      Json.Obj out, String name, Edit.@Nullable Swap<T> swap, BiConsumer<T, Json.Obj> write) {
    if (swap != null) {
      Json.Obj before = Json.Obj.make();
      write.accept(swap.before(), before);
      Json.Obj after = Json.Obj.make();
      write.accept(swap.after(), after);
      out.put(name, Json.Obj.make().put("before", before).put("after", after));
    }
  }

  /** Reads an edit that {@link #write} wrote; anything else is refused. */
  static Edit read(Json.Obj object) throws Refused {
    ImportReport.Collector problems = new ImportReport.Collector();
    JsonFields fields = JsonFields.of("journal", object, problems);
    String name = fields.text("name");
    List<Edit.EventRun> runs = new ArrayList<>();
    for (JsonFields run : fields.objects("events")) {
      Integer from = run.whole("from", 0, Integer.MAX_VALUE);
      Integer to = run.whole("to", 0, Integer.MAX_VALUE);
      if (from == null || to == null) {
        throw notAnEdit();
      }
      runs.add(new Edit.EventRun(from, events(run, "removed"), to, events(run, "added")));
    }
    Edit edit =
        new Edit(
            name == null ? "" : name,
            runs,
            swap(fields, "lines", EditJson::lines),
            swap(fields, "match", f -> MatchJson.read(f, UTC)),
            swap(fields, "occasion", EditJson::occasion),
            swap(fields, "outcome", OutcomeJson::read));
    if (problems.errors() > 0) {
      throw notAnEdit();
    }
    return edit;
  }

  private static Refused notAnEdit() {
    return new Refused("the record holds no edit", "the edits before it are kept");
  }

  private static List<SessionEvent> events(JsonFields run, String name) throws Refused {
    List<SessionEvent> events = new ArrayList<>();
    for (JsonFields one : run.objects(name)) {
      String id = one.text("id");
      SessionEvent event = id == null ? null : EventJson.read(one, id, UTC);
      if (event == null) {
        throw notAnEdit();
      }
      events.add(event);
    }
    return events;
  }

  private static <T> Edit.@Nullable Swap<T> swap(
      JsonFields fields, String name, Function<JsonFields, @Nullable T> read) throws Refused {
    JsonFields both = fields.object(name);
    if (both == null) {
      return null;
    }
    JsonFields before = both.object("before");
    JsonFields after = both.object("after");
    T first = before == null ? null : read.apply(before);
    T second = after == null ? null : read.apply(after);
    if (first == null || second == null) {
      throw notAnEdit();
    }
    return new Edit.Swap<>(first, second);
  }

  private static List<Line> lines(JsonFields fields) {
    List<Line> lines = new ArrayList<>();
    for (JsonFields one : fields.objects("lines")) {
      Line line = LineJson.read(one);
      if (line != null) {
        lines.add(line);
      }
    }
    return lines;
  }

  private static @Nullable Occasion occasion(JsonFields fields) {
    String zone = fields.text("zone");
    try {
      return zone == null ? null : OccasionJson.read(fields, null, ClockTimes.zone(zone));
    } catch (Refused refused) {
      return null;
    }
  }
}
