package org.fadeline.io;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The fields of a session file that this version does not know, put back where they stood. */
public final class UnknownFields {
  /** No such fields. */
  public static final UnknownFields NONE = new UnknownFields(Map.of());

  private final TreeMap<String, String> byPlace;

  /**
   * Takes fields as a document keeps them.
   *
   * @param byPlace place, such as {@code /events/e12/colour}, to JSON text
   */
  UnknownFields(Map<String, String> byPlace) {
    this.byPlace = new TreeMap<>(byPlace);
  }

  /**
   * Returns an object with the fields that belong directly to it, in the order of their names.
   *
   * @param place of the object, such as {@code /events/e12}; empty for the root
   * @throws IllegalArgumentException if a field does not hold JSON
   */
  Json.Obj addTo(Json.Obj object, String place) {
    String from = place + "/";
    for (Map.Entry<String, String> entry : byPlace.tailMap(from).entrySet()) {
      if (!entry.getKey().startsWith(from)) {
        break;
      }
      String name = entry.getKey().substring(from.length());
      if (name.indexOf('/') < 0) {
        object.members().putIfAbsent(JsonPointer.unescape(name), value(entry.getValue()));
      }
    }
    return object;
  }

  private static Json value(String text) {
    Json value = JsonParse.parse("", text, new ImportReport.Collector());
    if (value == null) {
      throw new IllegalArgumentException("an unknown field does not hold JSON: " + text);
    }
    return value;
  }

  /** Returns the JSON text of the fields of one event, or null where it has none. */
  @Nullable String ofEvent(String eventId) {
    Json.Obj object = addTo(Json.Obj.make(), EventJson.place(eventId));
    return object.members().isEmpty() ? null : JsonText.compact(object);
  }
}
