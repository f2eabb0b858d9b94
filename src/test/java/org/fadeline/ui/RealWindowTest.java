package org.fadeline.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.fadeline.io.SessionWriter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** The program as it is started, on a real display. */
@Tag("window")
class RealWindowTest {
  @TempDir Path folder;

  /** Starts the window as a user does. */
  static final class Begin {
    private Begin() {}

    /** Opens the session named by the only argument. */
    public static void main(String[] args) {
      WorkbenchLauncher.launch(Optional.of(Path.of(args[0])));
    }
  }

  private Process start(Path session, String display) throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dprism.order=sw",
                "-cp",
                System.getProperty("java.class.path"),
                Begin.class.getName(),
                session.toString()));
    builder.environment().put("FADELINE_CONFIG", folder.resolve("config").toString());
    builder.environment().put("DISPLAY", display);
    builder.redirectErrorStream(true);
    builder.redirectOutput(folder.resolve("printed.txt").toFile());
    return builder.start();
  }

  private Path session() throws Exception {
    Path session = folder.resolve("match.session.json");
    Files.write(session, SessionWriter.toBytes(HandMade.session()));
    return session;
  }

  private List<String> files() throws Exception {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(p -> p.getFileName().toString()).toList();
    }
  }

  @Test
  void aStartWithASessionPrintsNothing() throws Exception {
    Process process = start(session(), String.valueOf(System.getenv("DISPLAY")));
    try {
      // Told to stop any sooner, the toolkit complains of a start that was broken off.
      WaitForAsyncUtils.waitFor(
          60, TimeUnit.SECONDS, () -> !process.isAlive() || log().contains("first match drawn"));
      assertTrue(process.isAlive(), "the window stays open; files: " + files());
      assertEquals("", printed());
    } finally {
      process.destroy();
      process.waitFor();
    }
    assertEquals("", printed());
  }

  @Test
  void aDisplayThatIsDeadIsAnUnsupportedOperation() throws Exception {
    Process process = start(session(), ":59999");
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    assertTrue(printed().contains("UnsupportedOperationException"), printed());
  }

  private String log() throws Exception {
    Path folderOfLog = folder.resolve("config/log");
    StringBuilder all = new StringBuilder();
    if (Files.isDirectory(folderOfLog)) {
      try (Stream<Path> logs = Files.list(folderOfLog)) {
        for (Path log : logs.filter(p -> p.toString().endsWith(".log")).toList()) {
          all.append(Files.readString(log));
        }
      }
    }
    return all.toString();
  }

  private String printed() throws Exception {
    File file = folder.resolve("printed.txt").toFile();
    return file.exists() ? Files.readString(file.toPath()) : "";
  }
}
