package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.fadeline.io.FullDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WholeFolderTest {
  private static final Map<String, String> NEW =
      Map.of("a.csv", "new a", "b.csv", "new b", "c.csv", "new c");

  @TempDir Path folder;

  @BeforeEach
  void twoOfThreeAreThere() throws IOException {
    Files.writeString(folder.resolve("a.csv"), "old a");
    Files.writeString(folder.resolve("c.csv"), "old c");
    Files.writeString(folder.resolve("other.csv"), "another's");
  }

  private static void fill(Path part) throws IOException {
    for (Map.Entry<String, String> file : NEW.entrySet()) {
      Files.writeString(part.resolve(file.getKey()), file.getValue());
    }
  }

  /** Every file below the folder, hidden ones too, and what it holds. */
  private Map<String, String> content() throws IOException {
    Map<String, String> found = new TreeMap<>();
    try (var files = Files.walk(folder)) {
      for (Path file : files.filter(f -> !f.equals(folder)).toList()) {
        found.put(
            folder.relativize(file).toString(),
            Files.isDirectory(file) ? "folder" : Files.readString(file));
      }
    }
    return found;
  }

  @ParameterizedTest
  @CsvSource({"0,true", "1,true", "2,true", "0,false", "1,false", "2,false"})
  void aMoveThatIsRefusedLeavesEveryOldFileAndNoNewOne(int move, boolean links) throws IOException {
    Map<String, String> was = content();
    Path disk = FullDisk.refusing(folder, n -> n == move, links);
    IOException told =
        assertThrows(
            AccessDeniedException.class, () -> WholeFolder.into(disk, WholeFolderTest::fill));
    assertEquals(was, content());
    assertTrue(told.toString().contains("in use by another program"), told::toString);
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void whereNoneIsRefusedAllAreReplaced(boolean links) throws IOException {
    WholeFolder.into(FullDisk.refusing(folder, n -> false, links), WholeFolderTest::fill);
    Map<String, String> expected = new TreeMap<>(NEW);
    expected.put("other.csv", "another's");
    assertEquals(expected, content());
  }

  @Test
  void whereEvenPuttingBackIsRefusedTheOldFilesAreKeptAndTold() throws IOException {
    Path disk = FullDisk.refusing(folder, n -> n >= 2, true);
    IOException told =
        assertThrows(IOException.class, () -> WholeFolder.into(disk, WholeFolderTest::fill));
    Path aside;
    try (var files = Files.list(folder)) {
      aside = files.filter(Files::isDirectory).findFirst().orElseThrow();
    }
    assertTrue(told.toString().contains(aside.toString()), told::toString);
    assertEquals("old a", Files.readString(aside.resolve("a.csv")));
    assertEquals("old c", Files.readString(aside.resolve("c.csv")));
  }

  @Test
  void aFolderInTheWayOfAFileIsToldBeforeAnythingIsReplaced() throws IOException {
    Files.createDirectory(folder.resolve("b.csv"));
    Map<String, String> was = content();
    IOException told =
        assertThrows(IOException.class, () -> WholeFolder.into(folder, WholeFolderTest::fill));
    assertTrue(told.toString().contains("b.csv: a folder of that name"), told::toString);
    assertEquals(was, content());
  }

  @Test
  void anEmptyFolderIsThereAgainWhereItCannotBeReplaced() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Map<String, String> was = content();
    Path disk = FullDisk.refusing(folder, n -> true, true).resolve("empty");
    assertThrows(AccessDeniedException.class, () -> WholeFolder.write(disk, WholeFolderTest::fill));
    assertEquals(was, content());
    assertTrue(Files.isDirectory(empty));
  }
}
