package org.fadeline.ui.replay;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import org.fadeline.figure.TimelineLayout;
import org.fadeline.model.SessionEvent;
import org.fadeline.ui.control.NodeMenu;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.picture.PictureMenu;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.Selection;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** The menu on the timeline: for the marks picked, and for the instant it was asked at. */
final class ReplayMenus {
  private static final List<String> FOR_PICKED =
      List.of(
          "Edit what is picked",
          "A second earlier",
          "A second later",
          "Onto what is picked",
          "Delete what is picked");

  private final TimelinePane pane;
  private final Workbench bench;
  private final List<Command> commands;
  private final PictureMenu pictures;

  ReplayMenus(TimelinePane pane, Workbench bench, List<Command> commands, PictureMenu pictures) {
    this.pane = pane;
    this.bench = bench;
    this.commands = commands;
    this.pictures = pictures;
    NodeMenu.on(pane, this::items, this::byKeys);
  }

  private List<MenuItem> items(NodeMenu.Asked asked) {
    List<MenuItem> items = new ArrayList<>();
    TimelineLayout layout = pane.layoutProperty().get();
    if (layout == null) {
      return items;
    }
    Selection selection = bench.state().selection();
    if (!selection.events().isEmpty()) {
      for (String title : FOR_PICKED) {
        commands.stream().filter(c -> c.title().equals(title)).map(this::item).forEach(items::add);
      }
      items.add(new SeparatorMenuItem());
    }
    long at = layout.instantAt(asked.x());
    items.add(NodeMenu.item("Playhead here", () -> bench.transport().seek(at)));
    items.add(NodeMenu.item("Second cursor here", () -> bench.picking().mark(at)));
    items.add(new SeparatorMenuItem());
    items.addAll(pictures.items(pane));
    return items;
  }

  private MenuItem item(Command command) {
    MenuItem item = NodeMenu.item(command.title(), command.action());
    // Shown beside the words; the key itself is the screen's.
    if (!command.keys().isEmpty()) {
      item.setAccelerator(command.keys().get(0));
    }
    return item;
  }

  /** By keys the menu opens at the event picked last, else at the playhead. */
  private Point2D byKeys() {
    TimelineLayout layout = pane.layoutProperty().get();
    if (layout == null) {
      return new Point2D(pane.getWidth() / 2, pane.getHeight() / 2);
    }
    SessionEvent lead = lead();
    long at = lead == null ? bench.state().playhead().at() : lead.at();
    double y =
        layout.lanes().stream()
            .filter(l -> lead != null && l.lineId().equals(lead.lineId()))
            .findFirst()
            .map(l -> l.plot().getCenterY())
            .orElse(layout.plotArea().getCenterY());
    return new Point2D(Math.max(0, Math.min(pane.getWidth(), layout.xOf(at))), y);
  }

  private @Nullable SessionEvent lead() {
    OpenSession open = bench.state().open();
    String id = bench.state().selection().lead();
    return open == null || id == null
        ? null
        : open.session().events().stream().filter(e -> e.id().equals(id)).findFirst().orElse(null);
  }
}
