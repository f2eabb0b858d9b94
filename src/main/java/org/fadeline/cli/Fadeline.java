package org.fadeline.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line as a whole. */
@Command(
    name = "fadeline",
    mixinStandardHelpOptions = true,
    version = "Fadeline " + Fadeline.VERSION,
    description = {
      "Replays a fishing match and says what each line paid and when it faded.",
      "Without a command the workbench opens."
    })
public final class Fadeline implements Callable<Integer> {
  /** The program's version. */
  public static final String VERSION = "0.1.0";

  private final Console console;
  private final WindowLauncher window;

  private Fadeline(Console console, WindowLauncher window) {
    this.console = console;
    this.window = window;
  }

  /**
   * Runs one command.
   *
   * @return the exit code: 0 done, 1 the input or output is at fault, 2 wrong usage, 70 our fault
   */
  public static int run(Console console, WindowLauncher window, String... args) {
    if (isPlainOpen(args) && OpenCommand.mayHaveDisplay(System.getenv())) {
      return open(console, window, args);
    }
    CommandLine line = new CommandLine(new Fadeline(console, window));
    Map<String, Supplier<Object>> commands = commands(console, window);
    // A command named first is made alone: making them all takes a good part of a start.
    boolean named = args.length > 0 && commands.containsKey(args[0]);
    if (args.length > 0) {
      commands.entrySet().stream()
          .filter(command -> !named || command.getKey().equals(args[0]))
          .forEach(command -> line.addSubcommand(command.getValue().get()));
    }
    line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExecutionExceptionHandler((failure, command, result) -> tell(console, failure));
    return line.execute(args);
  }

  /** Whether a window is asked for and nothing else, as when a file is opened on a desktop. */
  private static boolean isPlainOpen(String... args) {
    boolean named = args.length > 0 && args[0].equals("open");
    // Anything else that begins so is an option or a file of arguments.
    boolean plainFile =
        args.length == 2
            && !args[1].isEmpty()
            && !args[1].startsWith("-")
            && !args[1].startsWith("@");
    return args.length == 0 || (named && (args.length == 1 || plainFile));
  }

  /** Opens the window without the command line's machinery, which takes a part of the start. */
  private static int open(Console console, WindowLauncher window, String... args) {
    try {
      return new OpenCommand(console, window).open(args.length == 2 ? Path.of(args[1]) : null);
    } catch (RuntimeException failure) {
      return tell(console, failure);
    }
  }

  private static Map<String, Supplier<Object>> commands(Console console, WindowLauncher window) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("open", () -> new OpenCommand(console, window));
    commands.put("review", () -> new ReviewCommand(console));
    commands.put("compare", () -> new CompareCommand(console));
    commands.put("talk", () -> new TalkCommand(console));
    commands.put("season", () -> new SeasonCommand(console));
    commands.put("merge", () -> new MergeCommand(console));
    commands.put("sheet", () -> new SheetCommand(console));
    commands.put("check", () -> new CheckCommand(console));
    commands.put("convert", () -> new ConvertCommand(console));
    return commands;
  }

  private static int tell(Console console, Exception failure) {
    if (failure instanceof InputFault fault) {
      String message = fault.getMessage();
      if (message != null && !message.isEmpty()) {
        console.err().println(message);
      }
      return ExitCode.INPUT;
    }
    console
        .err()
        .println(
            "Fadeline failed: "
                + failure
                + ". This is a fault of the program, not of your file; nothing was changed.");
    return ExitCode.OURS;
  }

  @Override
  public Integer call() {
    return new OpenCommand(console, window).open(null);
  }
}
