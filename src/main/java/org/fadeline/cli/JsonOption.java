package org.fadeline.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.fadeline.io.WholeFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The option for a result as JSON: to a file beside the words, or alone on standard output. */
final class JsonOption {
  private static final String STANDARD_OUTPUT = "-";

  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "writes the result as JSON; - prints JSON alone")
  private @Nullable String target;

  private boolean alone() {
    return STANDARD_OUTPUT.equals(target);
  }

  /** Returns where notices go: not to standard output where that holds JSON alone. */
  PrintStream notices(Console console) {
    return alone() ? console.err() : console.out();
  }

  /** Prints JSON alone or the words, and writes the file that was asked for. */
  void tell(Console console, Supplier<String> json, Supplier<String> words) {
    if (alone()) {
      console.out().print(json.get());
      console.out().flush();
      return;
    }
    console.out().print(words.get());
    if (target != null) {
      Path file = Path.of(target);
      Output.to(file, () -> WholeFile.write(file, json.get()));
    }
  }
}
