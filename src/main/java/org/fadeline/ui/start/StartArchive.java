package org.fadeline.ui.start;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.CodeSource;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The archive of loaded classes that shortens the start of a packaged program. Java 17 takes it
 * only where the program stands in the folder it was made for; a program that was moved makes it
 * anew, and starts without it until then.
 */
public final class StartArchive {
  private static final String ARCHIVE = "fadeline.jsa";
  private static final String PLACE = "fadeline.jsa.place";
  private static final String CLASSES = "classes.list";
  private static final String PATH_KEY = "app.classpath=";

  private final Path folder;

  private StartArchive(Path folder) {
    this.folder = folder;
  }

  /**
   * Makes the archive of the packaged program this class was loaded from.
   *
   * @throws IOException if it is not a packaged program, or the archive cannot be made or written
   * @throws InterruptedException if the thread is interrupted meanwhile
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    of(StartArchive.class)
        .orElseThrow(() -> new IOException("this is not a packaged program"))
        .make();
  }

  /** Returns the archive of a packaged program, or empty where this is not one. */
  public static Optional<StartArchive> ofProgram() {
    return of(StartArchive.class);
  }

  private static Optional<StartArchive> of(Class<?> anchor) {
    CodeSource source = anchor.getProtectionDomain().getCodeSource();
    if (source == null) {
      return Optional.empty();
    }
    try {
      Path folder = Path.of(source.getLocation().toURI()).getParent();
      if (folder == null || !Files.isRegularFile(folder.resolve(CLASSES))) {
        return Optional.empty();
      }
      return Optional.of(new StartArchive(folder));
    } catch (URISyntaxException | IllegalArgumentException notAFile) {
      return Optional.empty();
    }
  }

  /** Returns whether the archive was made for another folder and can be made anew here. */
  public boolean moved() throws IOException {
    Path place = folder.resolve(PLACE);
    return Files.isWritable(folder)
        && !(Files.isRegularFile(place) && Files.readString(place).equals(folder.toString()));
  }

  /**
   * Makes the archive in another process; the old one stays until the new one is whole.
   *
   * @throws IOException if it cannot be made or written
   * @throws InterruptedException if the thread is interrupted meanwhile
   */
  public void make() throws IOException, InterruptedException {
    Path fresh = Files.createTempFile(folder, "fadeline", ".jsa");
    Files.delete(fresh);
    Process dump =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:dump",
                "-XX:SharedClassListFile=" + folder.resolve(CLASSES),
                "-XX:SharedArchiveFile=" + fresh,
                "-cp",
                classPath())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    int code = dump.waitFor();
    if (code != 0 || !Files.isRegularFile(fresh)) {
      Files.deleteIfExists(fresh);
      throw new IOException("the start archive could not be made: java ended with " + code);
    }
    Files.move(fresh, folder.resolve(ARCHIVE), StandardCopyOption.REPLACE_EXISTING);
    Files.writeString(folder.resolve(PLACE), folder.toString());
  }

  /** The class path as the launcher gives it: the archive is only taken for the same one. */
  private String classPath() throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("Fadeline.cfg"));
    return lines.stream()
        .filter(line -> line.startsWith(PATH_KEY))
        .map(line -> line.substring(PATH_KEY.length()).replace("$APPDIR", folder.toString()))
        .collect(Collectors.joining(System.getProperty("path.separator")));
  }
}
