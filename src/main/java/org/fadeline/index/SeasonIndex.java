package org.fadeline.index;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.analysis.season.SessionSummary;
import org.fadeline.index.SeasonFolder.Bad;
import org.fadeline.index.SeasonFolder.Looked;
import org.fadeline.io.FileText;
import org.fadeline.io.Problem;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.ReadResult;
import org.fadeline.io.Refused;
import org.fadeline.io.SessionNames;
import org.fadeline.io.SessionWriter;
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

  /** Files that could not be used when last looked at. */
  private final Map<Path, Bad> bad = new ConcurrentHashMap<>();

  /** Whether more is known than was loaded or saved last. */
  private volatile boolean unsaved;

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
    Listing listing = Listing.of(folder);
    if (kept.keySet().retainAll(listing.files.keySet())) {
      unsaved = true;
    }
    bad.keySet().retainAll(listing.files.keySet());
    listing.unreadable.forEach(one -> bad.put(one.file(), one));
    AtomicInteger done = new AtomicInteger();
    int of = listing.files.size();
    List<Looked> looked = new ArrayList<>(listing.unreadable);
    List<Path> unknown = new ArrayList<>();
    listing.files.forEach(
        (file, attributes) -> {
          KeptSummary known = kept.get(file);
          if (known != null && known.isOf(attributes) && known.tells(depth)) {
            looked.add(known.good(file));
            tell(watcher, done, of);
          } else {
            unknown.add(file);
          }
        });
    if (!unknown.isEmpty()) {
      looked.addAll(
          look(
              unknown,
              file -> {
                Looked one = look(file, depth);
                if (one instanceof Bad broken) {
                  bad.put(file, broken);
                } else {
                  bad.remove(file);
                }
                tell(watcher, done, of);
                return one;
              }));
    }
    looked.sort(Comparator.comparing(Looked::file));
    return SeasonFolder.of(looked);
  }

  private static void tell(Watcher watcher, AtomicInteger done, int of) {
    if (!watcher.goOn(done.incrementAndGet(), of)) {
      throw new CancellationException("reading the folder was cancelled");
    }
  }

  private static List<Looked> look(List<Path> files, Function<Path, Looked> look) {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS, SeasonIndex::thread);
    try {
      List<Future<Looked>> futures = new ArrayList<>();
      for (Path file : files) {
        futures.add(threads.submit(() -> look.apply(file)));
      }
      List<Looked> looked = new ArrayList<>();
      for (Future<Looked> future : futures) {
        looked.add(future.get());
      }
      return looked;
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

  /**
   * The files of a folder that may hold sessions.
   *
   * @param files by path, in order, each with its size and time of change
   * @param unreadable files and folders in it that cannot be looked at
   */
  private record Listing(TreeMap<Path, BasicFileAttributes> files, List<Bad> unreadable) {
    static Listing of(Path folder) throws IOException {
      Listing listing = new Listing(new TreeMap<>(), new ArrayList<>());
      Files.walkFileTree(
          folder,
          EnumSet.of(FileVisitOption.FOLLOW_LINKS),
          DEPTH,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
              if (attributes.isRegularFile() && isSession(file)) {
                listing.files.put(file, attributes);
              }
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) throws IOException {
              if (file.equals(folder)) {
                throw e;
              }
              listing.unreadable.add(new Bad(file, List.of(SeasonIndex.unreadable(file, e))));
              return FileVisitResult.CONTINUE;
            }
          });
      return listing;
    }
  }

  static boolean isSession(Path file) {
    return !FileText.nameOf(file).startsWith(".") && SessionNames.isSession(file);
  }

  /** Looks at a file whose size or time of change differ: read again only where its bytes do. */
  private Looked look(Path file, Depth depth) {
    try {
      long size = Files.size(file);
      long changed = Files.getLastModifiedTime(file).toMillis();
      KeptSummary known = kept.get(file);
      String hash = SessionWriter.hashOf(FileText.bytes(file));
      if (known != null && known.hash().equals(hash) && known.tells(depth)) {
        KeptSummary same =
            new KeptSummary(
                size, changed, hash, known.sequence(), known.summary(), known.warnings());
        keep(file, same);
        return same.good(file);
      }
      ReadResult result = SessionFiles.read(file, options);
      if (result.session().isEmpty() || result.report().hasErrors()) {
        forget(file);
        // What could have been read all the same is not why the file is left out.
        return new Bad(file, result.report().problems().stream().filter(Problem::isError).toList());
      }
      Session session = result.session().get();
      KeptSummary fresh =
          new KeptSummary(
              size,
              changed,
              hash,
              session.document().sequence(),
              result.undated() ? summary(session, depth).undated() : summary(session, depth),
              result.report().problems().stream()
                  .limit(MOST_WARNINGS)
                  .map(Problem::toString)
                  .toList());
      keep(file, fresh);
      return fresh.good(file);
    } catch (Refused e) {
      forget(file);
      return new Bad(file, List.of(Problem.ofFile(FileText.nameOf(file), e.what(), e.whatToDo())));
    } catch (IOException e) {
      forget(file);
      return new Bad(file, List.of(unreadable(file, e)));
    }
  }

  private void keep(Path file, KeptSummary summary) {
    kept.put(file, summary);
    unsaved = true;
  }

  private void forget(Path file) {
    if (kept.remove(file) != null) {
      unsaved = true;
    }
  }

  private SessionSummary summary(Session session, Depth depth) {
    return depth == Depth.WITH_FADES
        ? SessionSummaries.whole(Reviewer.review(session, settings))
        : SessionSummaries.quick(session);
  }

  private static Problem unreadable(Path file, IOException e) {
    return Problem.ofFile(
        FileText.nameOf(file),
        "cannot be read (" + e.getMessage() + ")",
        "check that you may read it");
  }

  /**
   * Takes over what an earlier run kept; a file that is missing, unreadable or of other settings is
   * passed over, for everything in it can be worked out again.
   */
  public void load(Path file) {
    kept.putAll(KeptSummaries.read(file, folder, basis()));
  }

  /**
   * Keeps what is known for the next run; writes nothing where nothing is new.
   *
   * @throws IOException if the file cannot be written
   */
  public void save(Path file) throws IOException {
    if (unsaved || !Files.exists(file)) {
      unsaved = false;
      try {
        KeptSummaries.write(file, folder, basis(), kept);
      } catch (IOException e) {
        unsaved = true;
        throw e;
      }
    }
  }

  /** What summaries rest on besides the files: how they were read and judged. */
  String basis() {
    return options + " " + settings;
  }

  /** Returns what is known so far, for showing it while the folder is still being read. */
  public SeasonFolder soFar() {
    List<Looked> looked = new ArrayList<>(bad.values());
    kept.forEach((file, summary) -> looked.add(summary.good(file)));
    looked.sort(Comparator.comparing(Looked::file));
    return SeasonFolder.of(looked);
  }

  /** Returns how many files are known. */
  public int known() {
    return kept.size();
  }

  /** Returns what is kept of a file, or null. */
  @Nullable KeptSummary keptOf(Path file) {
    return kept.get(file);
  }
}
