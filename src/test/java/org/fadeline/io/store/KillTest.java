package org.fadeline.io.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.fadeline.io.Sessions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * A child program that edits is killed at a moment of chance, again and again, on one document:
 * each time the document opens with every edit that the child said was kept. The long form is
 * {@code -Dkills=200}.
 */
class KillTest {
  private static final int KILLS = Integer.getInteger("kills", 10);

  @Test
  void noAcknowledgedEditIsLostWhenTheProgramIsKilled(@TempDir Path folder, TestReporter reporter)
      throws Exception {
    Path document = folder.resolve("match.session.json");
    Path appData = folder.resolve("app-data");
    SessionStore.create(document, Sessions.small(), appData).close();
    Random random = new Random(20260815);
    Map<Long, String> fingerprints = new HashMap<>();
    long acknowledged = Sessions.small().document().sequence();
    long edits = 0;
    for (int kill = 1; kill <= KILLS; kill++) {
      int lines = 1 + random.nextInt(60);
      long before = acknowledged;
      acknowledged = runAndKill(document, appData, lines, fingerprints);
      edits += acknowledged - before;
      SessionStore.Opened opened = SessionStore.open(document, appData);
      SessionStore store = opened.store().orElseThrow();
      long sequence = store.session().document().sequence();
      String when = "kill " + kill;
      assertTrue(sequence >= acknowledged, when + ": " + sequence + " < " + acknowledged);
      assertTrue(opened.recovered().map(r -> !r.changedOutside()).orElse(true), when);
      if (sequence == acknowledged) {
        assertEquals(fingerprints.get(sequence), KillChild.fingerprint(store.session()), when);
      }
      acknowledged = sequence;
      store.close();
    }
    assertTrue(edits >= KILLS, "the children made " + edits + " edits");
    reporter.publishEntry("kills " + KILLS + ", edits " + edits + ", lost 0");
  }

  private static long runAndKill(
      Path document, Path appData, int lines, Map<Long, String> fingerprints) throws IOException {
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                KillChild.class.getName(),
                document.toString(),
                appData.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    long last = -1;
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(child.getInputStream(), StandardCharsets.US_ASCII))) {
      int seen = 0;
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        String[] parts = line.split(" ", 2);
        if (parts.length == 2 && parts[1].length() == 64) {
          last = Long.parseLong(parts[0]);
          fingerprints.put(last, parts[1]);
        }
        if (++seen == lines) {
          // Through the handle, so that the stream stays open: what the child still prints before
          // it dies is acknowledged as well.
          boolean unused = child.toHandle().destroyForcibly();
        }
      }
    } finally {
      child.destroyForcibly();
    }
    assertTrue(last >= 0, "the child acknowledged nothing");
    return last;
  }
}
