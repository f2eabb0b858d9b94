package org.fadeline.ui.help;

import java.nio.file.Path;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.fadeline.figure.ProgramVersion;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Overlay;

/** What the program is, what it is made of, and where it keeps its own notes. */
public final class AboutSheet {
  private AboutSheet() {}

  /**
   * Shows it over the window.
   *
   * @param log the folder of the diagnostic log
   */
  public static void show(Overlay overlay, Path log) {
    Label purpose =
        Labels.wrapped(
            "Match replay and analysis for match anglers. It uses no network: nothing you record"
                + " leaves this machine unless you send it.");
    Label licence =
        Labels.wrapped(
            "Apache License 2.0. The typeface IBM Plex Sans is under the SIL Open Font License 1.1."
                + " It is built with these libraries:");
    Label logged =
        Labels.wrapped(
            "Starts and failures are noted in this folder, for whoever mends them; never sent:");
    TextField folder = new TextField(log.toString());
    folder.setEditable(false);
    folder.setAccessibleText("Folder of the diagnostic log");
    TableView<Libraries.Library> table = new TableView<>();
    table.getColumns().add(column("Library", 300, Libraries.Library::name));
    table.getColumns().add(column("Version", 90, Libraries.Library::version));
    table.getColumns().add(column("Licence", 330, Libraries.Library::licence));
    table.getItems().setAll(Libraries.all());
    table.setPrefHeight(300);
    table.setAccessibleText("Libraries and their licences");
    overlay.show(ProgramVersion.NAME, new VBox(10, purpose, licence, table, logged, folder));
  }

  private static TableColumn<Libraries.Library, String> column(
      String title, double width, Function<Libraries.Library, String> text) {
    TableColumn<Libraries.Library, String> column = new TableColumn<>(title);
    column.setPrefWidth(width);
    column.setCellValueFactory(row -> new ReadOnlyStringWrapper(text.apply(row.getValue())));
    return column;
  }
}
