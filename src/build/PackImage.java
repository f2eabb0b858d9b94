import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Packs the program with a trimmed Java runtime: jlink, jpackage, and an archive of loaded classes
 * that shortens the start. Run by the profile {@code image} once the jar and its libraries stand in
 * the build folder; it uses nothing but the JDK it runs on.
 *
 * <p>Arguments: the build folder, the version, the jar of Monocle, which lets the start be
 * rehearsed without a display, and whether to make a Debian package too.
 */
final class PackImage {
  /** What the program and its libraries use of the JDK. */
  private static final String MODULES =
      "java.base,java.desktop,java.logging,java.management,java.naming,java.net.http,java.prefs,"
          + "java.scripting,java.sql,java.xml,jdk.localedata,jdk.unsupported,jdk.zipfs";

  /** The parts of JavaFX that make windows and draw in them. */
  private static final Pattern WINDOW_CLASS =
      Pattern.compile("com/sun/(glass/ui|prism/(es2|d3d|mtl|sw|ps|impl))/.*\\.class");

  private static final String NAME = "Fadeline";

  /** What a Linux desktop is told of session files. */
  private static final String FILE_TYPES = "fadeline-session.xml";

  private static final List<String> OPTIONS =
      Stream.concat(
              Stream.of(
                  "-XX:SharedArchiveFile=$APPDIR/fadeline.jsa",
                  "-Xshare:auto",
                  "-XX:+UseSerialGC",
                  // What a start makes has room without a collection.
                  "-XX:NewSize=160m",
                  // A hundred times the usual: the costly compiler leaves the start alone and takes
                  // up what a long calculation repeats.
                  "-XX:Tier4InvocationThreshold=500000",
                  "-XX:Tier4MinInvocationThreshold=60000",
                  "-XX:Tier4CompileThreshold=1500000",
                  "-XX:Tier4BackEdgeThreshold=4000000"),
              // Known on Linux only; elsewhere Java would refuse to start.
              isLinux() ? Stream.of("-XX:+UseTransparentHugePages") : Stream.<String>of())
          .toList();

  private final Path build;
  private final Path image;
  private final String version;
  private final Path monocle;

  private PackImage(Path build, String version, Path monocle) {
    this.build = build;
    this.image = build.resolve("image");
    this.version = version;
    this.monocle = monocle;
  }

  public static void main(String[] args) throws IOException, InterruptedException {
    PackImage pack = new PackImage(Path.of(args[0]).toAbsolutePath(), args[1], Path.of(args[2]));
    pack.clean();
    pack.linkRuntime();
    pack.layOutInput();
    pack.addReadStyles();
    pack.makeImage("app-image");
    pack.shortenClassPath();
    if (isLinux()) {
      pack.writeStarter();
    }
    pack.archiveClasses();
    if (Boolean.parseBoolean(args[3]) && isLinux() && canMakeDeb()) {
      pack.makeImage("deb");
    }
    System.out.println("Packed: " + pack.image);
  }

  private void clean() throws IOException {
    if (Files.exists(image)) {
      try (Stream<Path> all = Files.walk(image)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
    Files.createDirectories(image);
  }

  private void linkRuntime() throws IOException, InterruptedException {
    run(
        tool("jlink"),
        "--add-modules",
        MODULES,
        "--include-locales=en",
        "--strip-java-debug-attributes",
        "--no-header-files",
        "--no-man-pages",
        "--output",
        image.resolve("runtime").toString());
  }

  private void layOutInput() throws IOException {
    Path input = Files.createDirectories(image.resolve("input"));
    Files.copy(build.resolve("fadeline.jar"), input.resolve("fadeline.jar"));
    copyFolder(build.resolve("lib"), input.resolve("lib"));
    copyFolder(build.resolveSibling("sample-sessions"), input.resolve("sample-sessions"));
    if (isLinux()) {
      Path types = build.resolveSibling("src").resolve("package").resolve(FILE_TYPES);
      Files.copy(types, input.resolve(FILE_TYPES));
    }
  }

  /** Puts the style sheet into the jar as JavaFX reads it: words take longer to understand. */
  private void addReadStyles() throws IOException, InterruptedException {
    String styles = "org/fadeline/ui/fadeline";
    Path read = image.resolve("styles").resolve(styles + ".bss");
    Files.createDirectories(read.getParent());
    run(
        tool("java"),
        "-cp",
        image.resolve("input/lib") + "/*",
        "com.sun.javafx.css.parser.Css2Bin",
        build.resolve("classes").resolve(styles + ".css").toString(),
        read.toString());
    run(
        tool("jar"),
        "--update",
        "--file",
        image.resolve("input/fadeline.jar").toString(),
        "-C",
        image.resolve("styles").toString(),
        styles + ".bss");
  }

  private static void copyFolder(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(f -> !f.toString().endsWith(".lock")).toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }

  private void makeImage(String type) throws IOException, InterruptedException {
    Path sources = build.resolveSibling("src").resolve("package");
    List<String> command = new ArrayList<>(List.of(tool("jpackage"), "--type", type));
    command.addAll(List.of("--name", NAME, "--app-version", version, "--vendor", NAME));
    command.addAll(
        List.of("--description", "Match replay and analysis workbench for match anglers"));
    command.addAll(List.of("--dest", image.toString()));
    if (type.equals("app-image")) {
      command.addAll(List.of("--input", image.resolve("input").toString()));
      command.addAll(List.of("--main-jar", "fadeline.jar", "--main-class", "org.fadeline.Main"));
      command.addAll(List.of("--runtime-image", image.resolve("runtime").toString()));
      if (isLinux()) {
        command.addAll(List.of("--icon", sources.resolve("fadeline.png").toString()));
      }
      OPTIONS.forEach(option -> command.addAll(List.of("--java-options", option)));
    } else {
      command.addAll(List.of("--app-image", image.resolve(NAME).toString()));
      command.addAll(List.of("--linux-package-name", "fadeline", "--linux-shortcut"));
      command.addAll(List.of("--linux-app-category", "Science"));
      command.addAll(List.of("--linux-package-deps", "libgtk-3-0, libgl1, libxxf86vm1, libxtst6"));
      command.addAll(List.of("--license-file", build.resolveSibling("LICENSE").toString()));
      command.addAll(
          List.of("--file-associations", sources.resolve("session.properties").toString()));
      command.addAll(List.of("--resource-dir", sources.resolve("deb").toString()));
    }
    run(command.toArray(String[]::new));
  }

  /** Leaves the libraries to the jar's own list of them: one path to look up, not seventy. */
  private void shortenClassPath() throws IOException {
    Path settings = appFolder().resolve(NAME + ".cfg");
    List<String> kept =
        Files.readAllLines(settings).stream()
            .filter(line -> !line.startsWith("app.classpath=") || line.endsWith("fadeline.jar"))
            .toList();
    Files.write(settings, kept);
  }

  /**
   * Puts a script in the place of jpackage's own starter, which on Linux asks the package manager
   * twice who it belongs to before it starts Java: a third of a second.
   */
  private void writeStarter() throws IOException {
    List<String> lines =
        List.of(
            "#!/bin/sh",
            "APPDIR=$(dirname \"$(readlink -f \"$0\")\")/../lib/app",
            "APPDIR=$(cd \"$APPDIR\" && pwd)",
            "exec \"$APPDIR/../runtime/bin/java\" "
                + OPTIONS.stream().map(o -> '"' + o + '"').collect(Collectors.joining(" "))
                + " -cp \"$APPDIR/fadeline.jar\" org.fadeline.Main \"$@\"");
    Files.write(image.resolve(NAME).resolve("bin").resolve(NAME), lines);
  }

  /** Lists the classes of a rehearsed start and review, and has the image archive them. */
  private void archiveClasses() throws IOException, InterruptedException {
    Path list = appFolder().resolve("classes.list");
    Path reviewList = image.resolve("review.list");
    Path sample =
        Files.copy(
            image.resolve("input/sample-sessions/quillthorn-first-open.session.json"),
            image.resolve("rehearsal.session.json"));
    String classPath =
        join(image.resolve("input/fadeline.jar").toString(), image.resolve("input/lib") + "/*");
    run(
        tool("java"),
        "-XX:DumpLoadedClassList=" + list,
        "-Dglass.platform=Monocle",
        "-Dmonocle.platform=Headless",
        "-Dprism.order=sw",
        "-Dprism.text=t2k",
        "-cp",
        join(classPath, monocle.toString(), build.resolve("test-classes").toString()),
        "org.fadeline.ui.StartRehearsal",
        sample.toString());
    run(
        tool("java"),
        "-XX:DumpLoadedClassList=" + reviewList,
        "-cp",
        classPath,
        "org.fadeline.Main",
        "review",
        sample.toString(),
        "--json",
        image.resolve("rehearsal.json").toString());
    Files.write(list, Files.readAllLines(reviewList), StandardOpenOption.APPEND);
    Files.write(list, windowClasses(), StandardOpenOption.APPEND);
    run(
        runtimeJava().toString(),
        "-cp",
        appFolder().resolve("fadeline.jar").toString(),
        "org.fadeline.ui.start.StartArchive");
  }

  /** The classes that a real window needs and a rehearsal without a display cannot list. */
  private List<String> windowClasses() throws IOException {
    List<String> names = new ArrayList<>();
    try (Stream<Path> libraries = Files.list(image.resolve("input/lib"))) {
      for (Path jar :
          libraries.filter(p -> p.getFileName().toString().contains("javafx-graphics")).toList()) {
        try (JarFile file = new JarFile(jar.toFile())) {
          file.stream()
              .map(JarEntry::getName)
              .filter(WINDOW_CLASS.asMatchPredicate())
              .map(name -> name.substring(0, name.length() - ".class".length()))
              .forEach(names::add);
        }
      }
    }
    return names;
  }

  private Path appFolder() {
    Path root = image.resolve(isMac() ? NAME + ".app" : NAME);
    return root.resolve(isMac() ? "Contents/app" : isLinux() ? "lib/app" : "app");
  }

  private Path runtimeJava() {
    Path root = image.resolve(isMac() ? NAME + ".app" : NAME);
    String runtime =
        isMac() ? "Contents/runtime/Contents/Home" : isLinux() ? "lib/runtime" : "runtime";
    return root.resolve(runtime).resolve("bin").resolve(isLinux() || isMac() ? "java" : "java.exe");
  }

  private static boolean canMakeDeb() {
    return Stream.of("dpkg-deb", "fakeroot")
        .allMatch(tool -> Files.isExecutable(Path.of("/usr/bin", tool)));
  }

  private static String tool(String name) {
    return Path.of(System.getProperty("java.home"), "bin", name).toString();
  }

  private static boolean isLinux() {
    return system().contains("linux");
  }

  private static boolean isMac() {
    return system().contains("mac");
  }

  private static String system() {
    return System.getProperty("os.name").toLowerCase(Locale.ROOT);
  }

  private static String join(String... parts) {
    return String.join(System.getProperty("path.separator"), parts);
  }

  private void run(String... command) throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectOutput(image.resolve("pack.log").toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT);
    builder.environment().put("FADELINE_CONFIG", image.resolve("config").toString());
    int code = builder.start().waitFor();
    if (code != 0) {
      throw new UncheckedIOException(
          new IOException(Path.of(command[0]).getFileName() + " ended with " + code));
    }
  }
}
