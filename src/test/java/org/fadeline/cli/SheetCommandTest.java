package org.fadeline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SheetCommandTest extends CommandHarness {
  private static final String SAMPLE = "sample-sessions/brackwith-spring.session.json";

  @Test
  void writesAPdf() throws Exception {
    Path out = folder.resolve("sheet.pdf");
    assertEquals(0, run("sheet", SAMPLE, "--out", out.toString(), "--paper", "a5"), err());
    assertEquals("%PDF", Files.readString(out, StandardCharsets.ISO_8859_1).substring(0, 4));
    assertTrue(out().contains("pages"), out());
  }

  @Test
  void refusesAnotherEnding() {
    Path out = folder.resolve("sheet.doc");
    assertEquals(1, run("sheet", SAMPLE, "--out", out.toString()));
    assertTrue(err().contains(".pdf"), err());
    assertFalse(Files.exists(out));
  }

  @Test
  void knowsTwoSizesOfPaper() {
    assertEquals(2, run("sheet", SAMPLE, "--out", "x.pdf", "--paper", "A3"));
  }
}
