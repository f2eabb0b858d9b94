package org.fadeline.ui.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.fadeline.model.MatchRules;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.WeatherNote;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.form.Entry;
import org.fadeline.ui.control.form.EntryBox;

/** Where, when, by which rules and in what weather. */
final class MatchPane {
  private final List<Form> forms = new ArrayList<>();
  private final CheckBox foul;
  private final CheckBox live;
  private final Rows weather;
  private final Rows marks;
  private final EntryBox.Commit<Session> commit;
  private final ScrollPane view;

  MatchPane(EntryBox.Commit<Session> commit) {
    this.commit = commit;
    foul =
        rule(
            "foul-counts",
            "Foul-hooked fish that are landed count",
            (r, on) -> r.withFoulHookedCounts(on));
    live =
        rule(
            "live-figures",
            "Rates and forecasts are allowed while the match is on",
            (r, on) -> r.withLiveFiguresAllowed(on));
    weather = new Rows(weatherNotes(), commit);
    marks = new Rows(marks(), commit);
    List<Entry<Session>> nets = RuleEntries.nets();
    VBox body =
        new VBox(
            8,
            Labels.wrapped("The match", "title"),
            form(1, List.of(OccasionEntries.title())),
            form(2, List.of(OccasionEntries.water(), OccasionEntries.coordinates())),
            form(3, OccasionEntries.peg()),
            form(3, List.of(TimeEntries.date(), TimeEntries.allIn(), TimeEntries.allOut())),
            Labels.wrapped("Its rules", "title"),
            form(1, List.of(RuleEntries.extraMinutes())),
            foul,
            live,
            Labels.wrapped(
                "Some matches restrict electronic aids. Without this the program only records"
                    + " during a match. Your water's rules and the match organiser decide.",
                "quiet"),
            form(2, nets.subList(0, 2)),
            form(1, List.of(nets.get(2), RuleEntries.organiser())),
            Labels.wrapped("Weather", "title"),
            weather.view(),
            Labels.wrapped("Marks in the swim", "title"),
            marks.view());
    body.setStyle("-fx-padding: 1em 1.1em 1.2em 1.1em;");
    view = Nodes.scroll(body);
  }

  Node view() {
    return view;
  }

  void show(Session session, Units units, boolean editable) {
    forms.forEach(f -> f.show(session, units, editable));
    weather.show(session, units, editable);
    marks.show(session, units, editable);
    show(foul, session, editable, MatchRules::foulHookedCounts);
    show(live, session, editable, MatchRules::liveFiguresAllowed);
  }

  private static void show(
      CheckBox box, Session session, boolean editable, Predicate<MatchRules> value) {
    box.setSelected(value.test(session.match().rules()));
    box.setDisable(!editable);
  }

  private Node form(int columns, List<Entry<Session>> entries) {
    Form form = new Form(columns, entries, commit);
    forms.add(form);
    return form.view();
  }

  private CheckBox rule(String id, String words, BiFunction<MatchRules, Boolean, MatchRules> set) {
    CheckBox box = new CheckBox(words);
    box.setId(id);
    box.setWrapText(true);
    box.setOnAction(
        e -> {
          boolean on = box.isSelected();
          commit.change(
              "Set a rule",
              s -> s.withMatch(s.match().withRules(set.apply(s.match().rules(), on))));
        });
    return box;
  }

  private static Rows.Kind weatherNotes() {
    return new Rows.Kind(
        "weather note",
        s -> s.occasion().weather().size(),
        OccasionEntries::weather,
        s -> {
          List<WeatherNote> notes = new ArrayList<>(s.occasion().weather());
          long at =
              notes.isEmpty() ? s.match().allIn() : notes.get(notes.size() - 1).at() + 3_600_000;
          notes.add(new WeatherNote(at, null, null, null, null, null));
          return withWeather(s, notes);
        },
        (s, i) -> {
          List<WeatherNote> notes = new ArrayList<>(s.occasion().weather());
          notes.remove((int) i);
          return withWeather(s, notes);
        });
  }

  private static Session withWeather(Session session, List<WeatherNote> notes) {
    return session.withOccasion(session.occasion().withWeather(notes));
  }

  private static Rows.Kind marks() {
    return new Rows.Kind(
        "mark",
        s -> s.occasion().peg().features().size(),
        OccasionEntries::feature,
        s -> {
          List<Peg.Feature> all = new ArrayList<>(s.occasion().peg().features());
          all.add(new Peg.Feature("mark", 10, 0, null));
          return withMarks(s, all);
        },
        (s, i) -> {
          List<Peg.Feature> all = new ArrayList<>(s.occasion().peg().features());
          all.remove((int) i);
          return withMarks(s, all);
        });
  }

  private static Session withMarks(Session session, List<Peg.Feature> all) {
    return session.withOccasion(
        session.occasion().withPeg(session.occasion().peg().withFeatures(all)));
  }
}
