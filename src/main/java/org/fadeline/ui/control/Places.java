package org.fadeline.ui.control;

import java.io.File;
import java.nio.file.Path;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import org.jspecify.annotations.Nullable;

/** Asks the user for places; tests answer in the user's stead. */
public interface Places {
  /**
   * Returns a folder, or null where none was chosen.
   *
   * @param title of the question
   * @param near where to begin, or null
   */
  @Nullable Path folder(String title, @Nullable Path near);

  /**
   * Returns a file to write, or null where none was chosen.
   *
   * @param title of the question
   * @param name offered
   */
  @Nullable Path file(String title, String name);

  /**
   * Returns a file to read, or null where none was chosen.
   *
   * @param title of the question
   * @param kind what the files are, such as "Sessions"
   * @param patterns of their names, such as {@code *.csv}
   */
  default @Nullable Path open(String title, String kind, String... patterns) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, patterns));
    File chosen = chooser.showOpenDialog(null);
    return chosen == null ? null : chosen.toPath();
  }

  /** The system's own dialogs. */
  Places DIALOGS =
      new Places() {
        @Override
        public @Nullable Path folder(String title, @Nullable Path near) {
          DirectoryChooser chooser = new DirectoryChooser();
          chooser.setTitle(title);
          if (near != null) {
            chooser.setInitialDirectory(near.toFile());
          }
          return path(chooser.showDialog(null));
        }

        @Override
        public @Nullable Path file(String title, String name) {
          FileChooser chooser = new FileChooser();
          chooser.setTitle(title);
          chooser.setInitialFileName(name);
          int dot = name.lastIndexOf('.');
          if (dot >= 0) {
            String ending = name.substring(dot + 1);
            chooser
                .getExtensionFilters()
                .add(
                    new FileChooser.ExtensionFilter(
                        ending.toUpperCase(java.util.Locale.ROOT), "*." + ending));
          }
          return path(chooser.showSaveDialog(null));
        }

        private @Nullable Path path(@Nullable File file) {
          return file == null ? null : file.toPath();
        }
      };
}
