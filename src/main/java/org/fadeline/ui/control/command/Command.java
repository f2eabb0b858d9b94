package org.fadeline.ui.control.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;

/**
 * Something that can be done, with its keys: one for menu, button and keyboard.
 *
 * @param group heading in the list of keys
 * @param title what it does, in a few words
 * @param keys its keys; may be empty
 * @param inFields whether its keys work while text is being typed too
 * @param oncePerPress whether a key held down does it only once
 * @param action does it
 */
public record Command(
    String group,
    String title,
    List<KeyCombination> keys,
    boolean inFields,
    boolean oncePerPress,
    Runnable action) {
  /** Copies the list. */
  public Command {
    keys = List.copyOf(keys);
  }

  /** Makes a command whose keys are left alone while text is being typed. */
  public static Command of(String group, String title, Runnable action, String... keys) {
    return new Command(group, title, parse(keys), false, false, action);
  }

  /** Makes a command whose keys work everywhere. */
  public static Command everywhere(String group, String title, Runnable action, String... keys) {
    return new Command(group, title, parse(keys), true, false, action);
  }

  /**
   * Makes a command for each title, such as one that goes to a page, on a digit from 1 on.
   *
   * @param modifiers held down with the digit, such as {@code Alt+}
   * @param action is handed the title
   */
  public static List<Command> numbered(
      String group, List<String> titles, String modifiers, Consumer<String> action) {
    List<Command> all = new ArrayList<>();
    for (String title : titles) {
      all.add(of(group, title, () -> action.accept(title), modifiers + (all.size() + 1)));
    }
    return all;
  }

  /** Returns the same done once for each press, however long its key is held. */
  public Command once() {
    return new Command(group, title, keys, inFields, true, action);
  }

  private static List<KeyCombination> parse(String... keys) {
    return Arrays.stream(keys).map(Command::key).toList();
  }

  /**
   * Returns the keys of a text whose last part is a key as {@link KeyCode} spells it, in any case.
   * JavaFX has names of its own ("Page Up", "Backspace") and would take any other text for a typed
   * character.
   */
  private static KeyCombination key(String keys) {
    int plus = keys.lastIndexOf('+');
    String last = keys.substring(plus + 1);
    String name =
        Arrays.stream(KeyCode.values())
            .filter(code -> code.name().equalsIgnoreCase(last))
            .map(KeyCode::getName)
            .findFirst()
            .orElse(last);
    return KeyCombination.valueOf(keys.substring(0, plus + 1) + name);
  }

  /** Returns its keys as the list of keys shows them. */
  public String keysText() {
    return String.join(
        " or ",
        keys.stream()
            .map(KeyCombination::getDisplayText)
            .map(text -> text.replace("+", " + "))
            .toList());
  }
}
