package org.fadeline.ui.talk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.layout.VBox;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Talk;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Say;
import org.jspecify.annotations.Nullable;

/** What a slide shows: which figure, of which session and lines, over what time, counted how. */
final class PicturePane {
  private final TalkModel model;
  private final UnaryOperator<Talk> withOpen;
  private final Choice<Picture.@Nullable Kind> kind;
  private final Choice<String> first;
  private final Choice<String> second;
  private final MenuButton lines = new MenuButton();
  private final TimeField from;
  private final TimeField to;
  private final TimeField knownAt;
  private final Choice<Picture.Measure> measure;
  private final Choice<Picture.Align> align;
  private final Choice<@Nullable Units> units;
  private final Map<Node, Function<Picture.Kind, Boolean>> uses = new LinkedHashMap<>();
  private final VBox view = new VBox(8);
  private Map<String, Session> sessions = Map.of();

  /**
   * Makes the pane.
   *
   * @param withOpen returns a talk with the session in hand among its own, where that has a file
   */
  PicturePane(TalkModel model, UnaryOperator<Talk> withOpen) {
    this.model = model;
    this.withOpen = withOpen;
    kind = new Choice<>("Picture", k -> k == null ? "No picture" : k.label(), this::chooseKind);
    kind.offer(kinds(false));
    first = new Choice<>("Of the match", this::nameOf, id -> chooseSource(0, id));
    second = new Choice<>("Beside the match", this::nameOf, id -> chooseSource(1, id));
    lines.setId("picture-lines");
    lines.setMaxWidth(Double.MAX_VALUE);
    from = new TimeField("From", "all in", at -> window(at, 0));
    to = new TimeField("To", "all out", at -> window(at, 1));
    knownAt = new TimeField("As known at", "with hindsight", at -> window(at, 2));
    measure =
        new Choice<>(
            "Curves count",
            m -> m == Picture.Measure.WEIGHT ? "Weight" : "Fish",
            m -> manner(w -> w.withMeasure(m)));
    measure.offer(List.of(Picture.Measure.values()));
    align =
        new Choice<>("Laid on each other", PicturePane::words, a -> manner(w -> w.withAlign(a)));
    units = new Choice<>("Weights in", PicturePane::words, u -> manner(w -> w.withUnits(u)));
    List<@Nullable Units> offered = new ArrayList<>();
    offered.add(null);
    offered.add(Units.LB_OZ_AND_METRES);
    offered.add(Units.KG_AND_METRES);
    units.offer(offered);
    Node lineField = Fields.labelled("Lines", lines);
    uses.put(first.view(), k -> true);
    uses.put(second.view(), k -> k.sessions() == 2);
    uses.put(lineField, k -> k.hasWindow() || k.ofOneLine());
    uses.put(Fields.beside(from.view(), to.view()), Picture.Kind::hasWindow);
    uses.put(knownAt.view(), Picture.Kind::hasMoment);
    uses.put(measure.view(), Picture.Kind::hasMeasure);
    uses.put(align.view(), k -> k.sessions() == 2);
    uses.put(units.view(), k -> true);
    view.getChildren().add(kind.view());
    view.getChildren().addAll(uses.keySet());
  }

  /** Returns what can be shown: of a season only where the talk has one. */
  private static List<Picture.@Nullable Kind> kinds(boolean ofSeason) {
    List<Picture.@Nullable Kind> kinds = new ArrayList<>();
    kinds.add(null);
    for (Picture.Kind one : Picture.Kind.values()) {
      if (ofSeason || !one.ofSeason()) {
        kinds.add(one);
      }
    }
    return kinds;
  }

  Node view() {
    return view;
  }

  private static String words(Picture.Align align) {
    return switch (align) {
      case ALL_IN -> "All in on all in";
      case CLOCK -> "By the clock";
      case FIRST_FED -> "First feed on first feed";
      case EVENT -> "By the events chosen on Compare";
      case BY_HAND -> "By hand, as on Compare";
    };
  }

  private static String words(@Nullable Units units) {
    return units == null
        ? "What the talk uses"
        : units.weight() == Units.Weight.KG ? "Kilograms" : "Pounds and ounces";
  }

  private String nameOf(String id) {
    Session session = sessions.get(id);
    String title = session == null ? "" : session.occasion().title();
    return !title.isBlank()
        ? title
        : model
            .state()
            .talk()
            .source(id)
            .map(s -> String.valueOf(s.file().getFileName()))
            .orElseGet(() -> nameOfSeason(id));
  }

  private String nameOfSeason(String id) {
    return model.state().talk().seasons().stream()
        .filter(s -> s.id().equals(id))
        .map(
            s ->
                "Season: "
                    + s.folder().getFileName()
                    + (s.sift().equals(SeasonSource.Sift.ALL) ? "" : ", chosen by a filter"))
        .findFirst()
        .orElse(id);
  }

  void show(TalkModel.State state, Map<String, Session> newSessions) {
    sessions = newSessions;
    Slide slide = state.slide();
    Picture picture = slide == null ? null : slide.picture();
    view.setDisable(slide == null);
    kind.offer(kinds(!state.talk().seasons().isEmpty()));
    kind.show(picture == null ? null : picture.kind());
    uses.forEach(
        (node, used) -> {
          boolean on = picture != null && used.apply(picture.kind());
          Nodes.show(node, on);
        });
    if (picture == null) {
      return;
    }
    List<String> ids = state.talk().sources().stream().map(s -> s.id()).toList();
    List<String> seasons = state.talk().seasons().stream().map(s -> s.id()).toList();
    first.offer(picture.kind().ofSeason() ? seasons : ids);
    first.show(picture.sources().get(0));
    second.offer(ids);
    if (picture.kind().sessions() == 2) {
      second.show(picture.sources().get(1));
    }
    showLines(picture);
    Session session = sessions.get(picture.sources().get(0));
    from.show(picture.window().from(), session);
    to.show(picture.window().to(), session);
    knownAt.show(picture.window().knownAt(), session);
    measure.show(picture.manner().measure());
    align.offer(PictureEdits.aligns(picture.manner()));
    align.show(picture.manner().align());
    units.show(picture.manner().units());
  }

  private List<Line> linesOf(String source) {
    Session session = sessions.get(source);
    return session == null ? List.of() : session.lines();
  }

  private void showLines(Picture picture) {
    List<Line> all = linesOf(picture.sources().get(0));
    List<MenuItem> items = new ArrayList<>();
    for (Line line : all) {
      boolean shown = picture.lines().contains(line.id());
      if (picture.kind().ofOneLine()) {
        RadioMenuItem item = new RadioMenuItem(Say.capital(line.name()));
        item.setSelected(shown);
        item.setOnAction(e -> change("line", p -> p.withLines(List.of(line.id()))));
        items.add(item);
      } else {
        CheckMenuItem item = new CheckMenuItem(Say.capital(line.name()));
        item.setSelected(shown || picture.lines().isEmpty());
        item.setOnAction(
            e -> change("line", p -> PictureEdits.withLine(p, line.id(), item.isSelected(), all)));
        items.add(item);
      }
    }
    lines.getItems().setAll(items);
    String named =
        String.join(
            ", ",
            all.stream().filter(l -> picture.lines().contains(l.id())).map(Line::name).toList());
    lines.setText(picture.lines().isEmpty() ? "All" : Say.capital(named));
    lines.setAccessibleText("Lines shown: " + lines.getText());
  }

  private void chooseKind(Picture.@Nullable Kind chosen) {
    int at = model.state().chosen();
    model.change(
        "Choose the picture",
        talk -> {
          Slide slide = talk.slides().get(at);
          if (chosen == null) {
            return talk.withSlide(at, slide.withPicture(null));
          }
          if (chosen.ofSeason()) {
            return talk.withSlide(
                at, slide.withPicture(PictureEdits.ofSeason(chosen, slide.picture(), talk)));
          }
          Talk more = talk.sources().isEmpty() ? withOpen.apply(talk) : talk;
          List<String> ids = more.sources().stream().map(s -> s.id()).toList();
          return ids.isEmpty()
              ? talk
              : more.withSlide(
                  at,
                  slide.withPicture(
                      PictureEdits.ofKind(chosen, slide.picture(), ids, this::linesOf)));
        });
    show(model.state(), sessions);
  }

  private void chooseSource(int place, String id) {
    change("session", p -> PictureEdits.ofSource(p, place, id, this::linesOf));
  }

  private void manner(UnaryOperator<Picture.Manner> step) {
    change("manner", p -> p.withManner(step.apply(p.manner())));
  }

  private void window(@Nullable Long at, int part) {
    change(
        "time",
        p -> {
          Picture.Window w = p.window();
          Long start = part == 0 ? at : w.from();
          Long end = part == 1 ? at : w.to();
          // The later of two times that are the wrong way round is let go.
          boolean wrong = start != null && end != null && end <= start;
          return p.withWindow(
              new Picture.Window(
                  wrong && part == 1 ? null : start,
                  wrong && part == 0 ? null : end,
                  part == 2 ? at : w.knownAt()));
        });
  }

  private void change(String field, UnaryOperator<Picture> step) {
    model.slide(
        "Change the picture",
        "picture " + field,
        s -> s.picture() == null ? s : s.withPicture(step.apply(s.picture())));
  }
}
