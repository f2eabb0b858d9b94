package org.fadeline.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import org.fadeline.ui.start.HeadStart;

/** Opens the workbench's window. Does not extend Application, so that a plain jar can start it. */
public final class WorkbenchLauncher {
  // Kept here: a logger that nobody holds forgets its level.
  private static final Logger JAVAFX = Logger.getLogger("javafx");

  private WorkbenchLauncher() {}

  /**
   * Opens the window and returns once it is closed. Nothing is written to the console.
   *
   * @param session the file to open, or empty for the start screen
   * @throws UnsupportedOperationException if there is no display to open a window on
   */
  public static void launch(Optional<Path> session) {
    JAVAFX.setLevel(Level.SEVERE);
    // Figures measure text with AWT, which must not look for a display of its own.
    System.setProperty("java.awt.headless", "true");
    HeadStart start = session.map(path -> HeadStart.on(path, FileDesk.ofUser())).orElse(null);
    FadelineApp.startFrom(start);
    try {
      Application.launch(FadelineApp.class);
    } catch (UnsupportedOperationException noDisplay) {
      if (start != null) {
        start.close();
      }
      throw noDisplay;
    }
  }
}
