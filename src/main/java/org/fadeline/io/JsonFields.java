package org.fadeline.io;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fadeline.io.Problem.Severity;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one JSON object, read one by one: each with its type and range checked, every
 * problem added with its place. A field that is absent or bad reads as null; null in the file means
 * absent for fields that may be.
 */
public final class JsonFields {
  private final Scope scope;
  private final Json.Obj object;
  private final String pointer;
  private final Set<String> asked = new HashSet<>();

  private JsonFields(Scope scope, Json.Obj object, String pointer) {
    this.scope = scope;
    this.object = object;
    this.pointer = pointer;
  }

  /** Returns the fields of the root of a file whose unknown fields are not written back. */
  public static JsonFields of(String file, Json.Obj root, ImportReport.Collector problems) {
    return of(new Scope(file, problems, new HashMap<>()), root);
  }

  /** Returns the fields of the root of a file. */
  static JsonFields of(Scope scope, Json.Obj root) {
    return new JsonFields(scope, root, "");
  }

  /**
   * What the fields of one file share.
   *
   * @param file its name, for messages
   * @param problems where problems go
   * @param unknown place to JSON text of fields that this version does not know
   */
  record Scope(String file, ImportReport.Collector problems, Map<String, String> unknown) {}

  Scope scope() {
    return scope;
  }

  /** Returns the value as it stands, or null where absent. */
  @Nullable Json raw(String name) {
    asked.add(name);
    return object.members().get(name);
  }

  /** Returns the names of all fields, in file order. */
  List<String> names() {
    return List.copyOf(object.members().keySet());
  }

  /** Whether the field is there, even as null. */
  boolean has(String name) {
    return object.members().containsKey(name);
  }

  private @Nullable Json value(String name) {
    Json value = raw(name);
    return value instanceof Json.Null ? null : value;
  }

  /** Reads a text, possibly empty. */
  public @Nullable String text(String name) {
    Json value = value(name);
    return value == null ? null : text(value, pointerTo(name));
  }

  private @Nullable String text(Json value, String at) {
    if (!(value instanceof Json.Text text)) {
      String what = "a text is needed here, not " + value.kindWord();
      add(value, at, Severity.ERROR, what, "put it in quotes");
      return null;
    }
    if (hasLoneSurrogate(text.value())) {
      String what = "the text holds half a character (a lone surrogate)";
      add(value, at, Severity.ERROR, what, "type the text again");
      return null;
    }
    return text.value();
  }

  /**
   * Reads which version of a format the file is in.
   *
   * @param format the value its field {@code format} must have
   * @param kind what such a file is called in messages
   * @return the version, 1 or later, or null after adding an error
   */
  @Nullable Integer version(String format, String kind) {
    String found = text("format");
    if (!format.equals(found)) {
      error(
          "format",
          found == null
              ? "this is no " + kind + ": the field \"format\" is missing"
              : "this is no " + kind + " but " + Shown.value(found),
          "choose a " + kind + " file, or write \"format\": \"" + format + "\"");
      return null;
    }
    if (isMissing("version")) {
      error("version", "the field \"version\" is missing", "write \"version\": 1");
      return null;
    }
    return whole("version", 1, Integer.MAX_VALUE);
  }

  /** Reads a text, adding an error that says what to do where it is absent or empty. */
  @Nullable String requiredText(String name, String todo) {
    String text = text(name);
    if (text == null ? isMissing(name) : text.isEmpty()) {
      error(name, "the field \"" + name + "\" is missing or empty", todo);
      return null;
    }
    return text;
  }

  /** Returns whether a field is absent or null. */
  boolean isMissing(String name) {
    return value(name) == null;
  }

  /** Reads a number from low to high; {@link Double#MIN_VALUE} stands for "above 0". */
  @Nullable Double number(String name, double low, double high) {
    Json value = value(name);
    if (value == null) {
      return null;
    }
    if (!(value instanceof Json.Num num)) {
      String todo = value instanceof Json.Text ? "take the quotes away" : "write a number";
      error(name, "a number is needed here, not " + value.kindWord(), todo);
      return null;
    }
    // Adding zero turns a negative zero into a plain one.
    double read = Double.parseDouble(num.digits()) + 0.0;
    if (!(read >= low && read <= high)) {
      error(name, num.digits() + " is outside " + Shown.range(low, high), "correct the number");
      return null;
    }
    return read;
  }

  /** Reads a number, adding an error where it is absent. */
  @Nullable Double requiredNumber(String name, double low, double high) {
    if (isMissing(name)) {
      error(name, "the field \"" + name + "\" is missing", "write a number");
      return null;
    }
    return number(name, low, high);
  }

  /** Reads a whole number from low to high. */
  public @Nullable Integer whole(String name, int low, int high) {
    Long read = wholeLong(name, low, high);
    return read == null ? null : Math.toIntExact(read);
  }

  /** Reads a whole number from low to high, each at most 2⁵³ from 0. */
  public @Nullable Long wholeLong(String name, long low, long high) {
    if (number(name, (double) low, (double) high) == null
        || !(value(name) instanceof Json.Num num)) {
      return null;
    }
    try {
      long read = new BigDecimal(num.digits()).longValueExact();
      if (read >= low && read <= high) {
        return read;
      }
      error(
          name,
          num.digits() + " is outside " + Shown.range((double) low, (double) high),
          "correct the number");
    } catch (ArithmeticException e) {
      error(name, num.digits() + " is not a whole number", "write a whole number");
    }
    return null;
  }

  /** Reads true or false; absent is {@code otherwise}, null is refused. */
  boolean flag(String name, boolean otherwise) {
    Json value = raw(name);
    if (value == null) {
      return otherwise;
    }
    if (!(value instanceof Json.Bool bool)) {
      error(name, "true or false is needed here, not " + value.kindWord(), "write true or false");
      return otherwise;
    }
    return bool.value();
  }

  /** Refuses null in a field that has a value of its own when absent. */
  void notNull(String name) {
    if (raw(name) instanceof Json.Null) {
      error(name, "null is no value here", "write the number, or leave the field out");
    }
  }

  /** Reads a date and time, with offset or on the zone's clock, as epoch milliseconds. */
  public @Nullable Long instant(String name, ZoneId zone) {
    String text = text(name);
    if (text == null) {
      return null;
    }
    try {
      return ClockTimes.instant(text, zone);
    } catch (Refused refused) {
      error(name, refused.what(), refused.whatToDo());
      return null;
    }
  }

  /** Reads a date and time, adding an error where it is absent. */
  @Nullable Long requiredInstant(String name, ZoneId zone) {
    if (isMissing(name)) {
      error(name, "the field \"" + name + "\" is missing", "write a date and time");
      return null;
    }
    return instant(name, zone);
  }

  /** Reads a date. */
  @Nullable LocalDate date(String name) {
    String text = text(name);
    try {
      return text == null ? null : ClockTimes.date(text);
    } catch (Refused refused) {
      error(name, refused.what(), refused.whatToDo());
      return null;
    }
  }

  /** Reads an object. */
  public @Nullable JsonFields object(String name) {
    Json value = value(name);
    if (value == null) {
      return null;
    }
    if (!(value instanceof Json.Obj obj)) {
      error(name, "an object {…} is needed here, not " + value.kindWord(), "correct the field");
      return null;
    }
    return new JsonFields(scope, obj, pointerTo(name));
  }

  /** Returns the items of a list; absent is an empty list. */
  private List<Json> items(String name) {
    Json value = value(name);
    if (value instanceof Json.Arr arr) {
      return arr.items();
    }
    if (value != null) {
      error(name, "a list […] is needed here, not " + value.kindWord(), "correct the field");
    }
    return List.of();
  }

  private String pointerTo(String name) {
    return pointer + "/" + JsonPointer.escape(name);
  }

  private String pointerTo(String list, int index) {
    return pointerTo(list) + "/" + index;
  }

  /** Reads a list of objects, passing over what is none; absent is an empty list. */
  public List<JsonFields> objects(String name) {
    List<JsonFields> objects = new ArrayList<>();
    int index = 0;
    for (Json item : items(name)) {
      String at = pointerTo(name, index++);
      if (item instanceof Json.Obj obj) {
        objects.add(new JsonFields(scope, obj, at));
      } else {
        String what = "an object {…} is needed here, not " + item.kindWord();
        add(item, at, Severity.ERROR, what, "correct or remove it");
      }
    }
    return objects;
  }

  /** Reads a list of texts, passing over what is none; absent is an empty list. */
  List<String> texts(String name) {
    List<String> texts = new ArrayList<>();
    int index = 0;
    for (Json item : items(name)) {
      String text = text(item, pointerTo(name, index++));
      if (text != null) {
        texts.add(text);
      }
    }
    return texts;
  }

  /** Reads a list of whole numbers from low to high, each below 10,000; absent is an empty list. */
  List<Integer> wholes(String name, int low, int high) {
    List<Integer> wholes = new ArrayList<>();
    for (Json item : items(name)) {
      if (item instanceof Json.Num num
          && num.digits().matches("\\d{1,4}")
          && Integer.parseInt(num.digits()) >= low
          && Integer.parseInt(num.digits()) <= high) {
        wholes.add(Integer.valueOf(num.digits()));
      } else {
        error(
            name,
            "whole numbers " + Shown.range((double) low, (double) high) + " are needed here",
            "correct the list");
      }
    }
    return wholes;
  }

  /** Refuses the fields nobody asked for, where they could not be written back. */
  void refuseRest() {
    for (String name : object.members().keySet()) {
      if (!asked.contains(name)) {
        error(
            name,
            "the field " + Shown.value(name) + " is not known here",
            "check its spelling, or take it away");
      }
    }
  }

  /**
   * Keeps the fields nobody asked for, to be written back.
   *
   * @param place where they belong, such as {@code /events/e12}
   */
  void keepRest(String place) {
    for (Map.Entry<String, Json> member : object.members().entrySet()) {
      String name = member.getKey();
      if (!asked.contains(name)) {
        scope.unknown.put(
            place + "/" + JsonPointer.escape(name), JsonText.compact(member.getValue()));
        warning(
            name,
            "the field " + Shown.value(name) + " is not known here",
            "check its spelling; it is kept and written back as it is");
      }
    }
  }

  void error(String name, String what, String todo) {
    add(name, Severity.ERROR, what, todo);
  }

  void warning(String name, String what, String todo) {
    add(name, Severity.WARNING, what, todo);
  }

  /** Adds a problem at a field, or at the object where the field is absent. */
  private void add(String name, Severity severity, String what, String todo) {
    Json value = object.members().get(name);
    add(value == null ? object : value, pointerTo(name), severity, what, todo);
  }

  private void add(Json at, String atPointer, Severity severity, String what, String todo) {
    scope.problems.add(Problem.at(scope.file, at, atPointer, severity, what, todo));
  }

  private static boolean hasLoneSurrogate(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isHighSurrogate(c)
          && i + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(i + 1))) {
        i++;
      } else if (Character.isSurrogate(c)) {
        return true;
      }
    }
    return false;
  }
}
