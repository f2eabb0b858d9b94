package org.fadeline.io;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
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

  public JsonFields(Scope scope, Json.Obj object, String pointer) {
    this.scope = scope;
    this.object = object;
    this.pointer = pointer;
  }

  /**
   * What the fields of one file share.
   *
   * @param file its name, for messages
   * @param problems where problems go
   * @param unknown place to JSON text of fields that this version does not know
   */
  public record Scope(String file, ImportReport.Collector problems, Map<String, String> unknown) {}

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

  public @Nullable String text(String name) {
    Json value = value(name);
    if (value == null) {
      return null;
    }
    if (!(value instanceof Json.Text text)) {
      error(name, "a text is needed here, not " + value.kindWord(), "put it in quotes");
      return null;
    }
    if (hasLoneSurrogate(text.value())) {
      error(name, "the text holds half a character (a lone surrogate)", "type the text again");
      return null;
    }
    return text.value();
  }

  @Nullable String requiredText(String name, String todo) {
    String text = text(name);
    if (text == null ? isMissing(name) : text.isEmpty()) {
      error(name, "the field \"" + name + "\" is missing or empty", todo);
      return null;
    }
    return text;
  }

  /** Adds an error where a field without which nothing can be said is absent or null. */
  boolean isMissing(String name) {
    return value(name) == null;
  }

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
      error(name, num.digits() + " is outside " + range(low, high), "correct the number");
      return null;
    }
    return read;
  }

  public @Nullable Integer whole(String name, int low, int high) {
    Long read = wholeLong(name, low, high);
    return read == null ? null : Math.toIntExact(read);
  }

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
          num.digits() + " is outside " + range((double) low, (double) high),
          "correct the number");
    } catch (ArithmeticException e) {
      error(name, num.digits() + " is not a whole number", "write a whole number");
    }
    return null;
  }

  private static String range(double low, double high) {
    String to = Json.Num.of(high).digits();
    return low == Double.MIN_VALUE
        ? "more than 0 up to " + to
        : Json.Num.of(low).digits() + " to " + to;
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

  @Nullable Long requiredInstant(String name, ZoneId zone) {
    if (isMissing(name)) {
      error(name, "the field \"" + name + "\" is missing", "write a date and time");
      return null;
    }
    return instant(name, zone);
  }

  @Nullable LocalDate date(String name) {
    String text = text(name);
    try {
      return text == null ? null : ClockTimes.date(text);
    } catch (Refused refused) {
      error(name, refused.what(), refused.whatToDo());
      return null;
    }
  }

  public @Nullable JsonFields object(String name) {
    Json value = value(name);
    if (value == null) {
      return null;
    }
    if (!(value instanceof Json.Obj obj)) {
      error(name, "an object {…} is needed here, not " + value.kindWord(), "correct the field");
      return null;
    }
    return new JsonFields(scope, obj, pointer + "/" + escape(name));
  }

  public List<JsonFields> objects(String name) {
    Json value = value(name);
    List<JsonFields> items = new ArrayList<>();
    if (value == null) {
      return items;
    }
    if (!(value instanceof Json.Arr arr)) {
      error(name, "a list […] is needed here, not " + value.kindWord(), "correct the field");
      return items;
    }
    int index = 0;
    for (Json item : arr.items()) {
      String at = pointer + "/" + escape(name) + "/" + index++;
      if (item instanceof Json.Obj obj) {
        items.add(new JsonFields(scope, obj, at));
      } else {
        add(
            item,
            at,
            Severity.ERROR,
            "an object {…} is needed here, not " + item.kindWord(),
            "correct or remove it");
      }
    }
    return items;
  }

  /** Reads a list of texts; absent is an empty list. */
  List<String> texts(String name) {
    Json value = value(name);
    List<String> items = new ArrayList<>();
    if (value == null) {
      return items;
    }
    if (!(value instanceof Json.Arr arr)) {
      error(name, "a list […] is needed here, not " + value.kindWord(), "correct the field");
      return items;
    }
    int index = 0;
    for (Json item : arr.items()) {
      String at = pointer + "/" + escape(name) + "/" + index++;
      if (!(item instanceof Json.Text text)) {
        String what = "a text is needed here, not " + item.kindWord();
        add(item, at, Severity.ERROR, what, "put it in quotes");
      } else if (hasLoneSurrogate(text.value())) {
        String what = "the text holds half a character (a lone surrogate)";
        add(item, at, Severity.ERROR, what, "type the text again");
      } else {
        items.add(text.value());
      }
    }
    return items;
  }

  /** Returns the whole numbers of a list, each in a range; what is none is an error. */
  List<Integer> wholes(String name, int low, int high) {
    List<Integer> items = new ArrayList<>();
    Json value = value(name);
    if (value != null && !(value instanceof Json.Arr)) {
      error(name, "a list […] is needed here, not " + value.kindWord(), "correct the field");
    }
    if (value instanceof Json.Arr arr) {
      for (Json item : arr.items()) {
        if (item instanceof Json.Num num
            && num.digits().matches("\\d{1,4}")
            && Integer.parseInt(num.digits()) >= low
            && Integer.parseInt(num.digits()) <= high) {
          items.add(Integer.valueOf(num.digits()));
        } else {
          error(
              name,
              "whole numbers " + range((double) low, (double) high) + " are needed here",
              "correct the list");
        }
      }
    }
    return items;
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
        scope.unknown.put(place + "/" + escape(name), JsonText.compact(member.getValue()));
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
  void add(String name, Severity severity, String what, String todo) {
    Json value = object.members().get(name);
    add(value == null ? object : value, pointer + "/" + escape(name), severity, what, todo);
  }

  private void add(Json at, String atPointer, Severity severity, String what, String todo) {
    scope.problems.add(
        new Problem(
            scope.file,
            Math.max(1, at.line()),
            Math.max(1, at.column()),
            atPointer,
            severity,
            what,
            todo));
  }

  /** Escapes a name for a JSON Pointer (RFC 6901, section 3). */
  static String escape(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  static String unescape(String name) {
    return name.replace("~1", "/").replace("~0", "~");
  }

  static boolean hasLoneSurrogate(String text) {
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
