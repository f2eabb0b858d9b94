package org.fadeline.ui.control.file;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** Asks by the system's own dialogs. */
public final class DialogPathChooser implements PathChooser {
  @Override
  public @Nullable Path open(Question question) {
    return path(files(question).showOpenDialog(window(question.owner())));
  }

  @Override
  public @Nullable Path save(Question question) {
    return path(files(question).showSaveDialog(window(question.owner())));
  }

  @Override
  public @Nullable Path folder(Question question) {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(question.title());
    chooser.setInitialDirectory(folder(question.near()));
    return path(chooser.showDialog(window(question.owner())));
  }

  private static FileChooser files(Question question) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(question.title());
    chooser.setInitialDirectory(folder(question.near()));
    if (!question.name().isEmpty()) {
      chooser.setInitialFileName(question.name());
    }
    for (Kind kind : question.kinds()) {
      chooser
          .getExtensionFilters()
          .add(new FileChooser.ExtensionFilter(kind.label(), kind.patterns()));
    }
    return chooser;
  }

  /** The dialogs refuse to open where their folder is gone. */
  private static @Nullable File folder(@Nullable Path near) {
    return near != null && Files.isDirectory(near) ? near.toFile() : null;
  }

  /** A question without an owner belongs to the window in use, so that it lies over it. */
  private static @Nullable Window window(@Nullable Node owner) {
    return owner == null || owner.getScene() == null
        ? Window.getWindows().stream().filter(Window::isFocused).findFirst().orElse(null)
        : owner.getScene().getWindow();
  }

  private static @Nullable Path path(@Nullable File file) {
    return file == null ? null : file.toPath();
  }
}
