package org.fadeline.io;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fadeline.io.Problem.Severity;
import org.fadeline.model.Line;
import org.fadeline.model.SessionEvent;
import org.jspecify.annotations.Nullable;

/** Finds where lines and events stand in a session file. */
final class JsonPlaces implements SessionRules.ProblemPlaces {
  private final String file;
  private final Json.Obj root;
  private final Map<String, Map<String, Integer>> indexes = new HashMap<>();

  JsonPlaces(String file, Json.Obj root) {
    this.file = file;
    this.root = root;
  }

  @Override
  public Problem atEvent(
      SessionEvent event, String field, Severity severity, String what, String whatToDo) {
    return at("events", event.id(), field, severity, what, whatToDo);
  }

  @Override
  public Problem atLine(Line line, String field, Severity severity, String what, String whatToDo) {
    return at("lines", line.id(), field, severity, what, whatToDo);
  }

  @Override
  public Problem atRoot(String field, Severity severity, String what, String whatToDo) {
    return problem(root.members().get(field), "/" + field, severity, what, whatToDo);
  }

  private Problem at(
      String list, String id, String field, Severity severity, String what, String whatToDo) {
    Integer index = indexes.computeIfAbsent(list, this::indexOf).get(id);
    Json all = root.members().get(list);
    if (index == null || !(all instanceof Json.Arr arr)) {
      return problem(all, "/" + list, severity, what, whatToDo);
    }
    Json item = arr.items().get(index);
    Json value = item instanceof Json.Obj obj ? obj.members().get(field) : null;
    return problem(
        value == null ? item : value,
        "/" + list + "/" + index + "/" + field,
        severity,
        what,
        whatToDo);
  }

  /** Ids to positions in the list; events without id count as the reader names them. */
  private Map<String, Integer> indexOf(String list) {
    Map<String, Integer> index = new HashMap<>();
    List<Json> items = root.members().get(list) instanceof Json.Arr arr ? arr.items() : List.of();
    for (int i = 0; i < items.size(); i++) {
      String id = idOf(items.get(i));
      if (id != null) {
        index.putIfAbsent(id, i);
      }
    }
    FreshIds fresh = new FreshIds(Set.copyOf(index.keySet()));
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof Json.Obj && idOf(items.get(i)) == null) {
        index.put(fresh.next(), i);
      }
    }
    return index;
  }

  private static @Nullable String idOf(Json item) {
    return item instanceof Json.Obj obj && obj.members().get("id") instanceof Json.Text text
        ? text.value()
        : null;
  }

  private Problem problem(
      @Nullable Json at, String pointer, Severity severity, String what, String whatToDo) {
    return Problem.at(file, at, pointer, severity, what, whatToDo);
  }
}
