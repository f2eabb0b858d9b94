package org.fadeline.ui.control.file;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Takes a file dropped from another program. */
public final class FileDrops {
  private FileDrops() {}

  /**
   * Lets a node take a dropped file, the first where there are several. Other drags go on to what
   * the node lies on.
   *
   * @param wanted which files
   * @param take is given the file
   */
  public static void on(Node node, Predicate<Path> wanted, Consumer<Path> take) {
    node.addEventHandler(
        DragEvent.DRAG_OVER,
        e ->
            file(e, wanted)
                .ifPresent(
                    file -> {
                      e.acceptTransferModes(TransferMode.COPY);
                      e.consume();
                    }));
    node.addEventHandler(
        DragEvent.DRAG_DROPPED,
        e ->
            file(e, wanted)
                .ifPresent(
                    file -> {
                      take.accept(file);
                      e.setDropCompleted(true);
                      e.consume();
                    }));
  }

  private static Optional<Path> file(DragEvent e, Predicate<Path> wanted) {
    return e.getDragboard().getFiles().stream().map(File::toPath).filter(wanted).findFirst();
  }
}
