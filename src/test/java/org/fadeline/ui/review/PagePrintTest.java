package org.fadeline.ui.review;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.Reviewer;
import org.fadeline.ui.FakePaths;
import org.fadeline.ui.HandMade;
import org.fadeline.ui.state.DirectTaskService;
import org.fadeline.ui.state.FakeDesk;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The page of the match as a PDF, read back. */
// TestFX calls start before each test, which sets every field.
@SuppressWarnings("NullAway.Init")
@ExtendWith(ApplicationExtension.class)
class PagePrintTest {
  @TempDir Path folder;

  private final FakePaths paths = new FakePaths();
  private Workbench bench;
  private PagePrint page;

  /** The toolkit runs before the first control is made. */
  @Start
  void start(Stage stage) {
    bench =
        new Workbench(
            new FakeDesk().with("a.session.json", HandMade.session()),
            Reviewer::review,
            new DirectTaskService(),
            () -> {});
    page = new PagePrint(bench, new PreferenceStore(Preferences.DEFAULT, changed -> {}), paths);
  }

  private Review open() {
    bench.open(Path.of("a.session.json"));
    return requireNonNull(bench.state().review().latest());
  }

  @Test
  void theSavedPageIsOneSheetOfA5WithEverySpell() throws Exception {
    Review review = open();
    Path file = folder.resolve("page.pdf");
    page.save(page.page(review), file);
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      assertEquals(1, document.getNumberOfPages());
      // ISO 216: A5 is 148 by 210 mm.
      assertEquals(148, document.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.01);
      assertEquals(210, document.getPage(0).getMediaBox().getHeight() / 72 * 25.4, 0.01);
      String text = new PDFTextStripper().getText(document);
      for (String part : new String[] {"10:01", "10:26", "13:01", "an hour"}) {
        assertTrue(text.contains(part), part + " in " + text);
      }
    }
    assertTrue(requireNonNull(bench.state().activity().message()).contains("page.pdf"));
  }

  @Test
  void aFolderThatCannotBeWrittenToIsSaid() throws Exception {
    Path file = Files.writeString(folder.resolve("no folder"), "").resolve("page.pdf");
    page.save(page.page(open()), file);
    assertFalse(Files.exists(file));
    assertNotNull(bench.state().activity().trouble());
  }
}
