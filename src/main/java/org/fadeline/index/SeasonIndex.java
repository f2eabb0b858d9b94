package org.fadeline.index;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.index.SeasonFolder.Bad;
import org.fadeline.index.SeasonFolder.Good;
import org.fadeline.index.SeasonFolder.Looked;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;

/**
 * Reads a folder of sessions on two threads, looking again only at files that changed. Not kept
 * open: {@link #read} may be called again at any time, also by several threads in turn.
 */
public final class SeasonIndex {
  private static final int THREADS = 2;
  static final int DEPTH = 8;

  /** The hidden file of a folder in which the workbench keeps what was worked out. */
  public static final String KEPT = ".fadeline-season";

  /** Warnings kept of one file. */
  public static final int MOST_WARNINGS = 5;

  private final Path folder;
  private final ReadOptions options;
  private final ReviewSettings settings;
  private final Map<Path, KeptSummary> kept = new ConcurrentHashMap<>();

  /**
   * Makes an index that knows nothing yet.
   *
   * @param folder whose sessions are read, those of its folders too
   * @param options for files that do not say everything themselves
   * @param settings what fades rest on
   */
  public SeasonIndex(Path folder, ReadOptions options, ReviewSettings settings) {
    this.folder = folder;
    this.options = options;
    this.settings = settings;
  }

  /** How much is worked out. */
  public enum Depth {
    /** Everything but fades: quick. */
    WITHOUT_FADES,
    /** Everything. */
    WITH_FADES
  }

  /** Watches a reading. */
  public interface Watcher {
    /** A watcher that does nothing and never cancels. */
    Watcher NONE = (done, of) -> true;

    /**
     * Told after each file, from any thread.
     *
     * @param done files done
     * @param of files in all
     * @return whether to go on
     */
    boolean goOn(int done, int of);
  }

  /**
   * Reads the folder. Files that cannot be used are listed, never in the way.
   *
   * @throws IOException if the folder itself cannot be read
   * @throws CancellationException if the watcher says so; what was read by then is kept
   */
  public SeasonFolder read(Depth depth, Watcher watcher) throws IOException {
    List<Path> files = files();
    kept.keySet().retainAll(files);
    AtomicInteger done = new AtomicInteger();
    ExecutorService threads = Executors.newFixedThreadPool(THREADS, SeasonIndex::thread);
    List<Future<Looked>> futures = new ArrayList<>();
    try {
      for (Path file : files) {
        futures.add(
            threads.submit(
                () -> {
                  Looked looked = look(file, depth);
                  if (!watcher.goOn(done.incrementAndGet(), files.size())) {
                    throw new CancellationException("reading the folder was cancelled");
                  }
                  return looked;
                }));
      }
      List<Looked> looked = new ArrayList<>();
      for (Future<Looked> future : futures) {
        looked.add(future.get());
      }
      return SeasonFolder.of(looked);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("reading the folder was interrupted");
    } finally {
      threads.shutdownNow();
    }
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "season index");
    thread.setDaemon(true);
    return thread;
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> found = Files.walk(folder, DEPTH, FileVisitOption.FOLLOW_LINKS)) {
      return found.filter(Files::isRegularFile).filter(SeasonIndex::isSession).sorted().toList();
    } catch (java.io.UncheckedIOException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  static boolean isSession(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return !name.startsWith(".") && (name.endsWith(".session.json") || name.endsWith(".csv"));
  }

  /** Looks at one file: again only where size and time of change, or else its bytes, differ. */
  private Looked look(Path file, Depth depth) {
    try {
      long size = Files.size(file);
      long changed = Files.getLastModifiedTime(file).toMillis();
      KeptSummary known = kept.get(file);
      if (known != null
          && known.size() == size
          && known.changed() == changed
          && known.tells(depth)) {
        return known.good(file);
      }
      String hash = hash(file);
      if (known != null && known.hash().equals(hash) && known.tells(depth)) {
        KeptSummary same =
            new KeptSummary(
                size, changed, hash, known.sequence(), known.summary(), known.warnings());
        kept.put(file, same);
        return same.good(file);
      }
      ReadResult result = SessionFiles.read(file, options);
      if (result.session().isEmpty() || result.report().hasErrors()) {
        kept.remove(file);
        return new Bad(file, result.report().problems());
      }
      Session session = result.session().get();
      KeptSummary fresh =
          new KeptSummary(
              size,
              changed,
              hash,
              session.document().sequence(),
              summary(session, depth),
              result.report().problems().stream()
                  .limit(MOST_WARNINGS)
                  .map(Problem::toString)
                  .toList());
      kept.put(file, fresh);
      return fresh.good(file);
    } catch (IOException e) {
      return new Bad(file, List.of(unreadable(file, e)));
    }
  }

  private SessionSummary summary(Session session, Depth depth) {
    return depth == Depth.WITH_FADES
        ? SessionSummaries.whole(Reviewer.review(session, settings))
        : SessionSummaries.quick(session);
  }

  private static Problem unreadable(Path file, IOException e) {
    return Problem.ofFile(
        String.valueOf(file.getFileName()),
        "cannot be read (" + e.getMessage() + ")",
        "check that you may read it");
  }

  private static String hash(Path file) throws IOException {
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /**
   * Takes over what an earlier run kept; a file that is missing, unreadable or of other settings is
   * passed over, for everything in it can be worked out again.
   */
  public void load(Path file) {
    kept.putAll(KeptSummaries.read(file, folder, basis()));
  }

  /**
   * Keeps what is known for the next run.
   *
   * @throws IOException if the file cannot be written
   */
  public void save(Path file) throws IOException {
    KeptSummaries.write(file, folder, basis(), kept);
  }

  /** What summaries rest on besides the files: how they were read and judged. */
  private String basis() {
    return options + " " + settings;
  }

  /** Returns the sessions known so far, for showing them while the folder is still being read. */
  public SeasonFolder soFar() {
    List<Looked> looked = new ArrayList<>();
    kept.forEach((file, summary) -> looked.add(summary.good(file)));
    return SeasonFolder.of(looked);
  }

  /** Returns how many files are known. */
  public int known() {
    return kept.size();
  }

  /**
   * What is kept of one file.
   *
   * @param size bytes
   * @param changed when it was last changed, epoch milliseconds
   * @param hash SHA-256 of its bytes, hexadecimal
   * @param sequence how many edits the session had seen
   * @param summary what a season needs of it
   * @param warnings what was assumed in reading it
   */
  record KeptSummary(
      long size,
      long changed,
      String hash,
      long sequence,
      SessionSummary summary,
      List<String> warnings) {
    boolean tells(Depth depth) {
      return depth == Depth.WITHOUT_FADES || summary.hasFades();
    }

    Good good(Path file) {
      return new Good(file, summary, sequence, warnings);
    }
  }

  /** Returns what is kept of a file, or null. */
  @Nullable KeptSummary keptOf(Path file) {
    return kept.get(file);
  }
}
