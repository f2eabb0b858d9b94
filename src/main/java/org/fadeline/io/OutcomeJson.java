package org.fadeline.io;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.model.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * What came of a session (weigh-in, result, footage and corrected files), as fields of its JSON
 * object, both ways.
 */
public final class OutcomeJson {
  private static final long DAY = 86_400_000;

  private OutcomeJson() {}

  /** Puts what came of a session into an object, with its unknown fields. */
  public static void put(Outcome outcome, UnknownFields unknown, Json.Obj root) {
    List<Json> nets = new ArrayList<>();
    for (Outcome.NetWeight net : outcome.weighIn()) {
      nets.add(
          unknown.addTo(
              Json.Obj.make()
                  .put("net", (long) net.net())
                  .put("weightG", net.grams())
                  .put("holds", net.holds()),
              "/weighIn/" + nets.size()));
    }
    root.put("weighIn", Json.Arr.of(nets));
    Outcome.Result result = outcome.result();
    if (result != null) {
      root.put("result", result(result, unknown));
    }
    List<Json> media = new ArrayList<>();
    for (Outcome.Media one : outcome.media()) {
      media.add(
          unknown.addTo(
              Json.Obj.make()
                  .put("path", one.path())
                  .put("offsetMs", one.offsetMillis())
                  .put("rate", one.rate()),
              "/media/" + media.size()));
    }
    root.put("media", Json.Arr.of(media));
    List<Json> imports = new ArrayList<>();
    for (Outcome.Imported one : outcome.imports()) {
      imports.add(
          unknown.addTo(
              Json.Obj.make().put("file", one.file()).put("movedMs", one.movedMillis()),
              "/imports/" + imports.size()));
    }
    if (!imports.isEmpty()) {
      root.put("imports", Json.Arr.of(imports));
    }
  }

  private static Json.Obj result(Outcome.Result result, UnknownFields unknown) {
    Json.Obj out =
        Json.Obj.make()
            .put("position", result.position())
            .put("section", result.section())
            .put("sectionPosition", result.sectionPosition())
            .put("of", result.of());
    List<Json> neighbours = new ArrayList<>();
    for (Outcome.NeighbourWeight one : result.neighbours()) {
      neighbours.add(
          unknown.addTo(
              Json.Obj.make().put("peg", one.peg()).put("weightG", one.grams()),
              "/result/neighbours/" + neighbours.size()));
    }
    out.put("neighbours", Json.Arr.of(neighbours));
    return unknown.addTo(out, "/result");
  }

  /** Reads what came of a session; where something is bad its problem is added. */
  public static Outcome read(JsonFields root) {
    List<Outcome.NetWeight> nets = new ArrayList<>();
    int index = 0;
    for (JsonFields one : root.objects("weighIn")) {
      Integer net = one.whole("net", 1, Integer.MAX_VALUE);
      if (one.isMissing("net")) {
        one.error("net", "the net has no number", "write 1 for the first");
      }
      Double grams = one.requiredNumber("weightG", 0, EventJson.MOST_GRAMS);
      String holds = one.text("holds");
      if (net != null && grams != null) {
        nets.add(new Outcome.NetWeight(net, grams, holds));
      }
      one.keepRest("/weighIn/" + index++);
    }
    return new Outcome(nets, result(root.object("result")), media(root), imports(root));
  }

  private static List<Outcome.Imported> imports(JsonFields root) {
    List<Outcome.Imported> imports = new ArrayList<>();
    int index = 0;
    for (JsonFields one : root.objects("imports")) {
      String file = one.requiredText("file", "write the name of the file that was brought in");
      Long moved = one.wholeLong("movedMs", -DAY, DAY);
      if (one.isMissing("movedMs")) {
        one.error("movedMs", "it does not say by how much", "write milliseconds, such as -90000");
      }
      if (file != null && moved != null) {
        imports.add(new Outcome.Imported(file, moved));
      }
      one.keepRest("/imports/" + index++);
    }
    return imports;
  }

  private static Outcome.@Nullable Result result(@Nullable JsonFields fields) {
    if (fields == null) {
      return null;
    }
    List<Outcome.NeighbourWeight> neighbours = new ArrayList<>();
    int index = 0;
    for (JsonFields one : fields.objects("neighbours")) {
      String peg = one.requiredText("peg", "write the peg's number in quotes");
      Double grams = one.requiredNumber("weightG", 0, EventJson.MOST_GRAMS);
      if (peg != null && grams != null) {
        neighbours.add(new Outcome.NeighbourWeight(peg, grams));
      }
      one.keepRest("/result/neighbours/" + index++);
    }
    Outcome.Result result =
        new Outcome.Result(
            fields.whole("position", 1, Integer.MAX_VALUE),
            fields.text("section"),
            fields.whole("sectionPosition", 1, Integer.MAX_VALUE),
            fields.whole("of", 1, Integer.MAX_VALUE),
            neighbours);
    fields.keepRest("/result");
    return result;
  }

  private static List<Outcome.Media> media(JsonFields root) {
    List<Outcome.Media> media = new ArrayList<>();
    int index = 0;
    for (JsonFields one : root.objects("media")) {
      String path = one.requiredText("path", "write where it is from the session file");
      if (path != null && !isInside(path)) {
        one.error(
            "path",
            Shown.value(path) + " leads out of the session's folder",
            "put the footage beside the session and write its name with forward slashes");
        path = null;
      }
      one.notNull("offsetMs");
      one.notNull("rate");
      Long offset = one.wholeLong("offsetMs", -(1L << 53), 1L << 53);
      Double rate = one.number("rate", 0.001, 1000);
      if (path != null) {
        media.add(new Outcome.Media(path, offset == null ? 0 : offset, rate == null ? 1 : rate));
      }
      one.keepRest("/media/" + index++);
    }
    return media;
  }

  /**
   * Returns whether a path of a session file stays in the file's folder: relative, with forward
   * slashes, without drive, scheme, "." or "..".
   */
  private static boolean isInside(String path) {
    for (int i = 0; i < path.length(); i++) {
      char c = path.charAt(i);
      if (c == '\\' || c == ':' || c < ' ') {
        return false;
      }
    }
    for (String step : path.split("/", -1)) {
      if (step.isEmpty() || step.equals(".") || step.equals("..")) {
        return false;
      }
    }
    return true;
  }
}
