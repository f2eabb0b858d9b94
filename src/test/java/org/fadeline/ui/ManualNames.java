package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.fadeline.ui.help.Manual;
import org.fadeline.ui.window.MainWindow;
import org.jspecify.annotations.Nullable;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** The names that a page of the manual sets in bold, looked for in a window and pressed. */
final class ManualNames {
  /** How the manual writes the keys that {@link KeyCode} calls otherwise. */
  private static final Map<String, String> KEYS =
      Map.of(
          "Escape", "Esc",
          "/", "Slash",
          ".", "Period",
          ",", "Comma",
          "Page Up", "Page Up",
          "Ctrl", "Shortcut");

  private final Manual manual = new Manual();
  private final FxRobot robot = new FxRobot();
  private final MainWindow window;
  private final Map<String, List<Node>> found = new HashMap<>();
  private final Set<String> words = new TreeSet<>();

  ManualNames(MainWindow window) {
    this.window = window;
  }

  boolean isShown(String word) {
    return words.contains(plain(word));
  }

  /** Returns the names in bold; words with a figure in them, such as a finding, are an example. */
  private static List<String> bold(String markdown) {
    List<String> names = new ArrayList<>();
    Parser.builder()
        .build()
        .parse(markdown)
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(StrongEmphasis strong) {
                StringBuilder name = new StringBuilder();
                for (var part = strong.getFirstChild(); part != null; part = part.getNext()) {
                  name.append(part instanceof Text text ? text.getLiteral() : " ");
                }
                if (!name.toString().matches("(?s).*\\s\\d.*")) {
                  names.add(name.toString());
                }
              }
            });
    return names;
  }

  /** Reads every text of a screen, in each state its own switches lead to. */
  void readAll(Parent view) {
    read(view);
    List<ToggleButton> switches = new ArrayList<>();
    List<TabPane> tabs = new ArrayList<>();
    each(
        view,
        node -> {
          if (node instanceof ToggleButton b && b.getStyleClass().contains("segment")) {
            switches.add(b);
          } else if (node instanceof TabPane pane) {
            tabs.add(pane);
          }
        });
    for (ToggleButton one : switches) {
      robot.interact(one::fire);
      WaitForAsyncUtils.waitForFxEvents();
      read(view);
    }
    for (TabPane pane : tabs) {
      for (Tab tab : pane.getTabs()) {
        robot.interact(() -> pane.getSelectionModel().select(tab));
        WaitForAsyncUtils.waitForFxEvents();
        read(view);
      }
    }
  }

  void read(Parent view) {
    robot.interact(
        () -> {
          view.applyCss();
          view.layout();
          each(view, this::take);
        });
  }

  private void take(Node node) {
    if (node instanceof Labeled labeled) {
      add(labeled.getText(), node);
    } else if (node instanceof TextInputControl field) {
      add(field.getPromptText(), node);
    } else if (node instanceof ComboBox<?> box) {
      box.getItems().forEach(item -> add(said(box, item), node));
      add(box.getPromptText(), node);
    } else if (node instanceof ChoiceBox<?> box) {
      box.getItems().forEach(item -> add(String.valueOf(item), node));
    } else if (node instanceof TabPane pane) {
      pane.getTabs().forEach(tab -> add(tab.getText(), node));
    }
    if (node instanceof MenuButton menu) {
      menu.getItems().forEach(item -> take(item, node));
    }
  }

  @SuppressWarnings("unchecked") // a box knows its own items
  private static <T> String said(ComboBox<T> box, Object item) {
    return box.getConverter() == null
        ? String.valueOf(item)
        : box.getConverter().toString((T) item);
  }

  private void take(MenuItem item, Node owner) {
    add(item.getText() == null ? null : item.getText().replaceAll("\t.*", ""), owner);
    if (item instanceof Menu menu) {
      menu.getItems().forEach(inner -> take(inner, owner));
    }
  }

  private void add(@Nullable String text, Node node) {
    if (text != null && !text.isBlank()) {
      words.add(plain(text));
      found.computeIfAbsent(plain(text), key -> new ArrayList<>()).add(node);
    }
  }

  private static String plain(String text) {
    return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  private static void each(Node node, Consumer<Node> visit) {
    visit.accept(node);
    if (node instanceof ScrollPane pane && pane.getContent() != null) {
      each(pane.getContent(), visit);
    } else if (node instanceof TabPane tabs) {
      tabs.getTabs().forEach(tab -> each(tab.getContent(), visit));
    } else if (node instanceof Parent parent) {
      List.copyOf(parent.getChildrenUnmodifiable()).forEach(child -> each(child, visit));
    }
  }

  /** Returns whether a name is a key, alone or with others, and what it would be called. */
  static Optional<KeyCombination> key(String name) {
    String[] parts = name.equals("+") ? new String[] {name} : name.split(Pattern.quote("+"), -1);
    List<String> called = new ArrayList<>();
    for (String part : parts) {
      called.add(KEYS.getOrDefault(part, part));
    }
    String last = called.get(called.size() - 1);
    boolean isKey =
        Stream.of(KeyCode.values())
            .anyMatch(c -> c.getName().equals(last) || c.name().equalsIgnoreCase(last));
    if (!isKey) {
      return Optional.empty();
    }
    String code =
        Stream.of(KeyCode.values())
            .filter(c -> c.getName().equals(last) || c.name().equalsIgnoreCase(last))
            .findFirst()
            .orElseThrow()
            .getName();
    called.set(called.size() - 1, code);
    return Optional.of(KeyCombination.valueOf(String.join("+", called)));
  }

  boolean doesSomething(KeyCombination key) {
    // Escape and Enter also belong to the fields and sheets themselves.
    return key.getName().equals("Esc")
        || window.commands().stream()
            .map(command -> command.keys())
            .anyMatch(keys -> keys.contains(key));
  }

  /** Checks every name of a page, and presses the buttons among them. */
  void check(String file) {
    List<String> missing = new ArrayList<>();
    Set<String> pressed = new TreeSet<>();
    read(window.scene().getRoot());
    for (String name : bold(manual.page(file).orElseThrow().markdown())) {
      if (isShown(name)) {
        pressed.add(plain(name));
      } else if (key(name).filter(this::doesSomething).isEmpty()) {
        missing.add(name);
      }
    }
    assertEquals(List.of(), missing, file + ": not on the screen; there are " + words);
    pressed.forEach(this::pressAll);
  }

  private void pressAll(String name) {
    for (Node node : found.getOrDefault(name, List.of())) {
      if (node instanceof ButtonBase button && !(node instanceof MenuButton)) {
        robot.interact(
            () -> {
              if (!button.isDisabled() && button.getScene() != null) {
                button.fire();
              }
            });
        WaitForAsyncUtils.waitForFxEvents();
      }
    }
  }
}
