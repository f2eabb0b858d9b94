package org.fadeline.ui;

import com.sun.javafx.scene.input.DragboardHelper;
import com.sun.javafx.tk.TKClipboard;
import com.sun.javafx.tk.Toolkit;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;

/**
 * Drops files on nodes as the window system does. No other way leads there: a robot can drag within
 * the program alone, and JavaFX opens no public way to a board with files.
 */
final class Drops {
  private Drops() {}

  /** Drags files over a node and lets them go there; on the window's thread. */
  static void drop(Node target, Path... files) {
    Dragboard board = DragboardHelper.createDragboard(clipboard());
    DragboardHelper.setDataAccessRestriction(board, false);
    board.setContent(Map.of(DataFormat.FILES, Arrays.stream(files).map(Path::toFile).toList()));
    fire(target, board, DragEvent.DRAG_OVER);
    fire(target, board, DragEvent.DRAG_DROPPED);
  }

  /** Returns a clipboard of the toolkit's own, but that it can also say what a drag allows. */
  private static TKClipboard clipboard() {
    TKClipboard local = Toolkit.getToolkit().createLocalClipboard();
    return (TKClipboard)
        Proxy.newProxyInstance(
            Drops.class.getClassLoader(),
            new Class<?>[] {TKClipboard.class},
            (proxy, method, arguments) ->
                method.getName().equals("getTransferModes")
                    ? EnumSet.of(TransferMode.COPY)
                    : method.invoke(local, arguments));
  }

  private static void fire(Node target, Dragboard board, EventType<DragEvent> type) {
    target.fireEvent(new DragEvent(type, board, 1, 1, 1, 1, TransferMode.COPY, null, target, null));
  }
}
