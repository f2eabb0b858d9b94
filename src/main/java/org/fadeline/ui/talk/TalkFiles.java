package org.fadeline.ui.talk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.fadeline.io.DiskFault;
import org.fadeline.io.TalkReader;
import org.fadeline.io.TalkWriter;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.Activity.Trouble;
import org.fadeline.ui.state.TaskService.Answer;
import org.fadeline.ui.state.Workbench;

/** Opens and saves talks in the background. */
final class TalkFiles {
  static final String ENDING = ".talk.json";
  private static final String CHANNEL = "talk-file";

  private final Workbench bench;
  private final TalkModel model;

  TalkFiles(Workbench bench, TalkModel model) {
    this.bench = bench;
    this.model = model;
  }

  /** Returns whether a file is called as a talk is. */
  static boolean isTalk(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING);
  }

  void open(Path file) {
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Opening " + file.getFileName(),
            progress -> TalkReader.read(file),
            new Answer<>(
                loaded -> opened(file, loaded),
                failure -> trouble("The talk could not be opened", file, failure)));
  }

  private void opened(Path file, TalkReader.Loaded loaded) {
    loaded.talk().ifPresent(talk -> model.opened(talk, file));
    List<Activity.Problem> problems = Activity.Problem.of(loaded.report());
    if (!problems.isEmpty()) {
      bench.report(
          new Trouble(
              file.getFileName() + " could not be opened",
              "Nothing was changed: neither the file nor the talk in hand.",
              problems,
              null));
    }
  }

  void save(Path file) {
    Talk talk = model.state().talk();
    bench
        .tasks()
        .submit(
            CHANNEL,
            "Saving " + file.getFileName(),
            progress -> {
              TalkWriter.write(talk, file);
              return file;
            },
            new Answer<>(
                written -> {
                  model.saved(talk, written);
                  bench.tell("The talk is saved");
                },
                failure ->
                    trouble("The talk was not saved; it is still open here", file, failure)));
  }

  private void trouble(String title, Path file, Exception failure) {
    bench.report(
        failure instanceof IOException fault
            ? Trouble.of(title, DiskFault.of(file, fault) + ". Choose another place.")
            : Trouble.unforeseen(title, failure, "The talk in hand is as it was."));
  }
}
