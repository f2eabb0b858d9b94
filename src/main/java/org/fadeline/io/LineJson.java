package org.fadeline.io;

import java.util.function.UnaryOperator;
import org.fadeline.model.Line;
import org.jspecify.annotations.Nullable;

/** One line as a JSON object, both ways. */
public final class LineJson {
  private LineJson() {}

  static Json.Obj write(
      Line line, UnaryOperator<Json.Obj> finishRig, UnaryOperator<Json.Obj> finish) {
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
        finishRig.apply(
            Json.Obj.make()
                .put("floatG", rig.floatG())
                .put("shotting", rig.shotting())
                .put("mainLineMm", rig.mainLineMm())
                .put("hooklengthMm", rig.hooklengthMm())
                .put("hookSize", rig.hookSize())
                .put("hookbait", rig.hookbait()));
    if (!rigOut.members().isEmpty()) {
      out.put("rig", rigOut);
    }
    return finish.apply(out);
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
    String where = "/lines/" + JsonFields.escape(id);
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
