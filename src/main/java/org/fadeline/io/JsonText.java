package org.fadeline.io;

import java.util.Iterator;
import java.util.Map;
import tools.jackson.core.io.JsonStringEncoder;

/**
 * Writes JSON: two spaces a level, members in their order, LF line ends. Objects and lists of plain
 * values that stand in a list take one line each, so that a session has one line an event.
 */
public final class JsonText {
  private final StringBuilder out = new StringBuilder();
  private final boolean pretty;

  private JsonText(boolean pretty) {
    this.pretty = pretty;
  }

  /** Returns the value as indented text that ends with a line end. */
  static String pretty(Json value) {
    JsonText text = new JsonText(true);
    text.write(value, 0, false);
    return text.out.append('\n').toString();
  }

  /** Returns the value on one line. */
  public static String compact(Json value) {
    JsonText text = new JsonText(false);
    text.write(value, 0, false);
    return text.out.toString();
  }

  private void write(Json value, int level, boolean inList) {
    if (value instanceof Json.Obj obj) {
      object(obj, level, inList && isFlat(obj));
    } else if (value instanceof Json.Arr arr) {
      array(arr, level, isPlain(arr));
    } else if (value instanceof Json.Text text) {
      quote(text.value());
    } else if (value instanceof Json.Num num) {
      out.append(num.digits());
    } else if (value instanceof Json.Bool bool) {
      out.append(bool.value());
    } else {
      out.append("null");
    }
  }

  private void object(Json.Obj obj, int level, boolean oneLine) {
    if (obj.members().isEmpty()) {
      out.append("{}");
      return;
    }
    out.append('{');
    Iterator<Map.Entry<String, Json>> members = obj.members().entrySet().iterator();
    boolean first = true;
    while (members.hasNext()) {
      Map.Entry<String, Json> member = members.next();
      separate(first, oneLine, level + 1);
      quote(member.getKey());
      out.append(pretty ? ": " : ":");
      write(member.getValue(), level + 1, oneLine);
      first = false;
    }
    close('}', oneLine, level);
  }

  private void array(Json.Arr arr, int level, boolean oneLine) {
    if (arr.items().isEmpty()) {
      out.append("[]");
      return;
    }
    out.append('[');
    boolean first = true;
    for (Json item : arr.items()) {
      separate(first, oneLine, level + 1);
      write(item, level + 1, true);
      first = false;
    }
    close(']', oneLine, level);
  }

  private void separate(boolean first, boolean oneLine, int level) {
    if (!first) {
      out.append(',');
    }
    if (!pretty) {
      return;
    }
    if (!oneLine) {
      out.append('\n').append("  ".repeat(level));
    } else if (!first) {
      out.append(' ');
    }
  }

  private void close(char end, boolean oneLine, int level) {
    if (pretty && !oneLine) {
      out.append('\n').append("  ".repeat(level));
    }
    out.append(end);
  }

  /** Whether every member is a plain value or an object of such: what reads well on one line. */
  private static boolean isFlat(Json.Obj obj) {
    for (Json value : obj.members().values()) {
      if (value instanceof Json.Arr arr && !arr.items().isEmpty()) {
        return false;
      }
      if (value instanceof Json.Obj inner && !isFlat(inner)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isPlain(Json.Arr arr) {
    return arr.items().stream().noneMatch(i -> i instanceof Json.Obj || i instanceof Json.Arr);
  }

  private void quote(String text) {
    out.append('"').append(JsonStringEncoder.getInstance().quoteAsCharArray(text)).append('"');
  }
}
