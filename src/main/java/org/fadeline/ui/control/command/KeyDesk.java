package org.fadeline.ui.control.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.event.EventTarget;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/**
 * Gives keys to commands, and leaves them to the control in focus where that needs them: letters
 * and Ctrl+Z to a text field, Space to a button, arrows to a slider or a list.
 */
public final class KeyDesk {
  private static final Set<KeyCode> PRESS = Set.of(KeyCode.SPACE, KeyCode.ENTER);
  private static final Set<KeyCode> ALONG =
      Set.of(
          KeyCode.LEFT,
          KeyCode.RIGHT,
          KeyCode.UP,
          KeyCode.DOWN,
          KeyCode.HOME,
          KeyCode.END,
          KeyCode.PAGE_UP,
          KeyCode.PAGE_DOWN);
  private static final Set<KeyCode> LIST =
      Set.of(
          KeyCode.UP,
          KeyCode.DOWN,
          KeyCode.HOME,
          KeyCode.END,
          KeyCode.PAGE_UP,
          KeyCode.PAGE_DOWN,
          KeyCode.SPACE,
          KeyCode.ENTER);

  private final List<Command> everywhere;
  private final BooleanSupplier covered;
  private final Runnable leaveField;
  private Supplier<List<Command>> screen = List::of;
  private @Nullable KeyCode down;
  private boolean taken;

  /**
   * Makes a desk.
   *
   * @param everywhere the commands that every screen has
   * @param covered whether something lies over the screen, which then gets all keys
   * @param leaveField takes the focus out of a text field
   */
  public KeyDesk(List<Command> everywhere, BooleanSupplier covered, Runnable leaveField) {
    this.everywhere = List.copyOf(everywhere);
    this.covered = covered;
    this.leaveField = leaveField;
  }

  /** Listens to a scene's keys. */
  public void listenTo(Scene scene) {
    scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> take(event, scene.getFocusOwner()));
    scene.addEventFilter(KeyEvent.KEY_RELEASED, event -> down = null);
    // Where another window has the keys, this one does not hear of a key let go.
    scene
        .windowProperty()
        .flatMap(Window::focusedProperty)
        .addListener((property, before, now) -> down = null);
    // A command may lead into a field: the letter of its own key must not be typed there.
    scene.addEventFilter(
        KeyEvent.KEY_TYPED,
        event -> {
          if (taken) {
            event.consume();
          }
        });
  }

  /** Sets where the commands of the screen now shown are asked for; they may change. */
  public void screenCommands(Supplier<List<Command>> commands) {
    screen = commands;
  }

  /** Returns every command that has keys now. */
  public List<Command> commands() {
    List<Command> all = new ArrayList<>(screen.get());
    all.addAll(everywhere);
    return all;
  }

  private void take(KeyEvent event, EventTarget focus) {
    boolean held = event.getCode() == down;
    boolean repeats = held && taken;
    taken = false;
    down = event.getCode();
    if (covered.getAsBoolean() || menuOpen()) {
      return;
    }
    if (repeats && isText(focus)) {
      // Held a little long, the key that led into the field must not be typed there.
      taken = true;
      event.consume();
      return;
    }
    boolean own = focus instanceof OwnKeys control && control.uses(event);
    if (isText(focus) && event.getCode() == KeyCode.ESCAPE && !own) {
      event.consume();
      leaveField.run();
      return;
    }
    for (Command command : commands()) {
      boolean matches = command.keys().stream().anyMatch(k -> k.match(event));
      if (matches && !leftTo(focus, event, command)) {
        event.consume();
        taken = true;
        if (!(held && command.oncePerPress())) {
          command.action().run();
        }
        return;
      }
    }
  }

  /** The window hears of keys before the menu that lies over it does. */
  private static boolean menuOpen() {
    return Window.getWindows().stream().anyMatch(w -> w instanceof ContextMenu && w.isShowing());
  }

  private static boolean leftTo(EventTarget focus, KeyEvent event, Command command) {
    if (isText(focus) || isWithin(focus, Spinner.class)) {
      return !command.inFields() && !(isStep(event) && !hasStep(focus, event));
    }
    if (focus instanceof OwnKeys own && own.uses(event)) {
      return true;
    }
    boolean plain = !event.isShortcutDown() && !event.isAltDown();
    if (!plain) {
      return focus instanceof TableView && event.getCode() == KeyCode.C;
    }
    KeyCode code = event.getCode();
    if (focus instanceof ButtonBase) {
      return PRESS.contains(code);
    }
    if (focus instanceof ComboBoxBase || focus instanceof ChoiceBox) {
      return PRESS.contains(code) || ALONG.contains(code);
    }
    if (focus instanceof Slider) {
      return ALONG.contains(code);
    }
    if (focus instanceof TableView) {
      return LIST.contains(code) || ALONG.contains(code);
    }
    return (focus instanceof ListView && LIST.contains(code))
        || (focus instanceof ScrollPane && LIST.contains(code) && code != KeyCode.SPACE);
  }

  /** Text is typed into a field, and into a box that takes words of one's own. */
  private static boolean isText(EventTarget focus) {
    return focus instanceof TextInputControl
        || (focus instanceof ComboBoxBase<?> box && box.isEditable());
  }

  private static boolean isStep(KeyEvent event) {
    return event.isShortcutDown() && (event.getCode() == KeyCode.Z || event.getCode() == KeyCode.Y);
  }

  /**
   * A field where nothing was typed has nothing to take back or do again: the record's own step is
   * meant.
   */
  private static boolean hasStep(EventTarget focus, KeyEvent event) {
    if (!(focus instanceof TextInputControl field)) {
      return true;
    }
    boolean again = event.getCode() == KeyCode.Y || event.isShiftDown();
    return again ? field.isRedoable() : field.isUndoable();
  }

  private static boolean isWithin(EventTarget target, Class<?> kind) {
    Node node = target instanceof Node n ? n : null;
    while (node != null) {
      if (kind.isInstance(node)) {
        return true;
      }
      node = node.getParent();
    }
    return false;
  }
}
