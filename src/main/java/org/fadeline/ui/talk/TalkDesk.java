package org.fadeline.ui.talk;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ChoiceDialog;
import javax.print.PrintService;
import org.fadeline.analysis.Review;
import org.fadeline.export.FileNames;
import org.fadeline.export.TalkDraft;
import org.fadeline.export.TalkMaterial;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.file.PathChooser;
import org.fadeline.ui.control.file.PathChooser.Kind;
import org.fadeline.ui.control.file.PathChooser.Question;
import org.fadeline.ui.state.Activity;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.TaskService.Answer;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** What is done with whole talks: drafting, opening, saving, keeping, writing. */
final class TalkDesk {
  private static final String KEEPING = "talk-keep";
  private static final Kind TALKS = Kind.of("Talks", "*" + TalkFiles.ENDING);

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final TalkModel model;
  private final PathChooser paths;
  private final TalkFiles files;
  private final SlideWork work = new SlideWork();
  private final TalkWriting writing;
  private final Optional<TalkKeeper> keeper;
  private @Nullable Node owner;

  TalkDesk(Workbench bench, PreferenceStore preferences, TalkModel model, PathChooser paths) {
    this.paths = paths;
    this.bench = bench;
    this.preferences = preferences;
    this.model = model;
    this.files = new TalkFiles(bench, model);
    this.writing = new TalkWriting(bench, work);
    this.keeper =
        bench
            .keeping()
            .map(folder -> new TalkKeeper(folder.resolve("talks"), ProcessHandle.current().pid()));
    Watch.part(model.stateProperty(), s -> s.unsaved() ? s.talk() : null, this::keep);
  }

  /** Says which node's window file choosers belong to. */
  void ownedBy(Node node) {
    owner = node;
  }

  SlideWork work() {
    return work;
  }

  TalkWriting writing() {
    return writing;
  }

  /** Returns the session in hand, or null where it has no file or no review yet. */
  SlideWork.@Nullable Open openSession() {
    OpenSession open = bench.state().open();
    Review review = bench.state().review().latest();
    Path file = open == null ? null : open.source().path();
    return file == null || review == null
        ? null
        : new SlideWork.Open(file.toAbsolutePath().normalize(), review);
  }

  /** Returns a talk with the session in hand among its own, where that has a file. */
  Talk withOpen(Talk talk) {
    SlideWork.Open open = openSession();
    if (open == null) {
      tellNoFile();
      return talk;
    }
    return TalkModel.withFile(talk, open.file());
  }

  private void tellNoFile() {
    bench.tell(
        bench.state().open() == null
            ? "Open a match first: a draft is made from its review"
            : "Save the match first: a talk names its matches by their files");
  }

  /** Makes the first draft from the review in hand; undo brings back what was there. */
  void draft() {
    SlideWork.Open open = openSession();
    if (open == null) {
      tellNoFile();
      return;
    }
    List<Source> sources = List.of(new Source("s1", open.file()));
    boolean named = !model.state().talk().discretion().unnamed();
    Look look = model.state().talk().look();
    Look asked =
        model.state().talk().slides().isEmpty() ? look.withUnits(preferences.get().units()) : look;
    Talk draft = TalkDraft.of(sources, new TalkMaterial(Map.of("s1", open.review())), asked, named);
    model.change("Draft the talk", before -> draft.withDiscretion(before.discretion()));
    model.choose(0);
  }

  void addSession() {
    Path chosen =
        paths.open(question("Add a match", Kind.of("Matches", "*.session.json", "*.csv")));
    if (chosen != null) {
      model.change("Add a match", talk -> TalkModel.withFile(talk, chosen));
    }
  }

  void open() {
    letGoFirst(this::chooseAndOpen);
  }

  /** Opens a talk, where the one in hand is saved or may be let go. */
  void open(Path file) {
    letGoFirst(() -> files.open(file));
  }

  private void letGoFirst(Runnable next) {
    if (model.state().unsaved() && !model.state().talk().slides().isEmpty()) {
      bench.report(
          new Activity.Trouble(
              "The talk in hand is not saved",
              "Save it first, or let it go and open the other.",
              List.of(),
              new Activity.Offer("Let it go", next)));
    } else {
      next.run();
    }
  }

  private void chooseAndOpen() {
    Path chosen = paths.open(question("Open a talk", TALKS));
    if (chosen != null) {
      files.open(chosen);
    }
  }

  void save() {
    Path file = model.state().file();
    if (file != null) {
      files.save(file);
      return;
    }
    Path chosen =
        paths.save(question("Save the talk", TALKS).named(name("talk.json")), TalkFiles.ENDING);
    if (chosen != null) {
      files.save(chosen);
    }
  }

  private String name(String ending) {
    String title = model.state().talk().title();
    return FileNames.of(title.isBlank() ? "talk" : title, ending);
  }

  /** What is shown to others does not tell by its name what it leaves out. */
  private String nameToShow(String ending) {
    return model.state().talk().discretion().unnamed()
        ? FileNames.of("talk", ending)
        : name(ending);
  }

  private Question question(String title, Kind... kinds) {
    SlideWork.Open open = openSession();
    Path near =
        model.state().file() != null ? model.state().file() : open == null ? null : open.file();
    return Question.of(title, owner).near(near == null ? null : near.getParent()).ofKinds(kinds);
  }

  /** Asks where, and writes there. */
  void write(Writing as) {
    if (model.state().talk().slides().isEmpty()) {
      bench.tell("The talk has no slides yet");
      return;
    }
    if (as.output() == Writing.Output.PRINT) {
      print(as);
      return;
    }
    Path chosen = whereTo(as.output());
    if (chosen != null) {
      writing.write(
          new TalkWriting.Order(model.state().talk(), model.state().chosen(), as, chosen),
          openSession());
    }
  }

  private @Nullable Path whereTo(Writing.Output output) {
    if (output.isFolder()) {
      return paths.folder(question(output.label() + ": into which new or empty folder"));
    }
    String ending = "." + output.ending();
    return paths.save(
        question(output.label(), Kind.of(output.label(), "*" + ending))
            .named(nameToShow(output.ending())),
        ending);
  }

  private void print(Writing as) {
    bench
        .tasks()
        .submit(
            "talk-printers",
            "Looking for printers",
            progress -> TalkPrinting.printers(),
            new Answer<>(printers -> printOn(printers, as), failure -> printOn(List.of(), as)));
  }

  /** Where there is no printer, the PDF is written for another program to print. */
  private void printOn(List<PrintService> printers, Writing as) {
    if (printers.isEmpty()) {
      bench.tell("No printer answers here: print the PDF from any reader of PDFs");
      write(new Writing(Writing.Output.PDF, as.width(), as.dpi(), as.speed()));
      return;
    }
    ChoiceDialog<String> dialog =
        new ChoiceDialog<>(
            printers.get(0).getName(), printers.stream().map(PrintService::getName).toList());
    if (owner != null && owner.getScene() != null) {
      dialog.initOwner(owner.getScene().getWindow());
    }
    dialog.setTitle("Print the talk");
    dialog.setHeaderText("On which printer?");
    dialog
        .showAndWait()
        .flatMap(n -> printers.stream().filter(p -> p.getName().equals(n)).findFirst())
        .ifPresent(
            printer ->
                writing.print(
                    model.state().talk(), model.state().chosen(), printer, openSession()));
  }

  private void keep(@Nullable Talk talk) {
    keeper.ifPresent(
        kept ->
            bench
                .tasks()
                .submit(
                    KEEPING,
                    "Keeping the talk",
                    progress -> {
                      if (!progress.cancelled()) {
                        kept.keep(talk);
                      }
                      return true;
                    },
                    new Answer<>(
                        done -> {},
                        failure ->
                            bench.tell(
                                "The talk could not be kept against a crash; save it soon"))));
  }

  /** Takes up a talk that an earlier run left unsaved, where nothing was begun here. */
  void recover() {
    keeper
        .filter(kept -> model.state().talk().equals(Talk.EMPTY))
        .ifPresent(
            kept ->
                bench
                    .tasks()
                    .submit(
                        "talk-recover",
                        "Looking for an unsaved talk",
                        progress -> kept.recover(),
                        new Answer<Optional<Talk>>(
                            found -> found.ifPresent(this::recovered), failure -> {})));
  }

  private void recovered(Talk talk) {
    model.recovered(talk);
    bench.tell("The talk you had not saved is back");
  }
}
