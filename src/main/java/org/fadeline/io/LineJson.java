package org.fadeline.io;

import java.util.List;
import org.fadeline.model.Line;
import org.jspecify.annotations.Nullable;

/** One line as a JSON object, both ways. */
public final class LineJson {
  private LineJson() {}

  /** Returns lines with their unknown fields. */
  public static Json.Arr write(List<Line> lines, UnknownFields unknown) {
    return Json.Arr.of(lines.stream().map(line -> write(line, unknown)).toList());
  }

  private static String place(String lineId) {
    return "/lines/" + JsonPointer.escape(lineId);
  }

  private static Json.Obj write(Line line, UnknownFields unknown) {
    String where = place(line.id());
    Line.Place place = line.place();
    Json.Obj out =
        Json.Obj.make().put("id", line.id()).put("name", line.name()).put("kind", line.kind());
    if (!line.spot().equals(line.id())) {
      out.put("spot", line.spot());
    }
    out.put("distanceM", place.distanceM())
        .put("sections", place.sections())
        .put("bearingDegrees", place.bearingDegrees())
        .put("depthM", place.depthM());
    Line.Rig rig = line.rig();
    Json.Obj rigOut =
        unknown.addTo(
            Json.Obj.make()
                .put("floatG", rig.floatG())
                .put("shotting", rig.shotting())
                .put("mainLineMm", rig.mainLineMm())
                .put("hooklengthMm", rig.hooklengthMm())
                .put("hookSize", rig.hookSize())
                .put("hookbait", rig.hookbait()),
            where + "/rig");
    if (!rigOut.members().isEmpty()) {
      out.put("rig", rigOut);
    }
    return unknown.addTo(out, where);
  }

  /** Reads a line, or returns null after adding its problems. */
  public static @Nullable Line read(JsonFields fields) {
    int before = fields.scope().problems().errors();
    String id = fields.requiredText("id", "give the line a short word of its own");
    String name = fields.text("name");
    String kind = fields.text("kind");
    String spot = fields.text("spot");
    Line.Place place =
        new Line.Place(
            fields.number("distanceM", 0, 200),
            fields.text("sections"),
            fields.number("bearingDegrees", -180, 180),
            fields.number("depthM", 0, 100));
    JsonFields rigFields = fields.object("rig");
    Line.Rig rig = Line.Rig.UNKNOWN;
    if (rigFields != null) {
      rig =
          new Line.Rig(
              rigFields.number("floatG", 0, 100),
              rigFields.text("shotting"),
              rigFields.number("mainLineMm", 0, 2),
              rigFields.number("hooklengthMm", 0, 2),
              rigFields.text("hookSize"),
              rigFields.text("hookbait"));
    }
    if (id == null) {
      return null;
    }
    String where = place(id);
    if (rigFields != null) {
      rigFields.keepRest(where + "/rig");
    }
    fields.keepRest(where);
    if (fields.scope().problems().errors() > before) {
      return null;
    }
    return new Line(id, name == null ? id : name, kind, spot == null ? id : spot, place, rig);
  }
}
