package org.fadeline.ui.compare;

import java.util.Optional;
import org.fadeline.analysis.compare.Alignment;
import org.fadeline.analysis.compare.Comparison;
import org.fadeline.model.Session;
import org.fadeline.model.talk.Picture;
import org.fadeline.model.talk.Source;
import org.fadeline.ui.state.TalkTray;
import org.fadeline.ui.state.Workbench;

/** Puts the figure of a page on the talk, laid as it is here. */
final class ComparePictures {
  private static final String OTHER = "other";

  private ComparePictures() {}

  /** Puts the figure of a page aside for the talk, or says why it cannot be. */
  static void putOnTalk(Workbench bench, CompareState state, String page) {
    CompareState.Second second = state.second();
    Optional<Picture.Kind> kind = kind(page);
    Comparison shown = state.work().comparison();
    if (second == null || shown == null || kind.isEmpty()) {
      bench.tell("There is no picture here to put on the talk");
      return;
    }
    Picture picture =
        Picture.of(kind.get(), TalkTray.OPEN, OTHER)
            .withManner(manner(state, shown.first().session(), shown.second().session()));
    bench
        .tray()
        .putOpen(kind.get().label(), picture, new Source(OTHER, second.file().toAbsolutePath()));
  }

  /** Returns how the two are laid and paired here, for a picture that stands by itself. */
  static Picture.Manner manner(CompareState state, Session first, Session second) {
    Laying laying = state.laying();
    boolean onEvent = laying.mode() == Alignment.Mode.EVENT;
    String one = onEvent ? Laying.chosen(first, laying.firstEvent()) : null;
    String other = onEvent ? Laying.chosen(second, laying.secondEvent()) : null;
    boolean events = one != null && other != null;
    return Picture.Manner.USUAL
        .withAlign(onEvent && !events ? Picture.Align.ALL_IN : align(laying.mode()))
        .withChosen(
            new Picture.Chosen(
                laying.mode() == Alignment.Mode.BY_HAND ? laying.minutes() : 0,
                events ? one : null,
                events ? other : null,
                state.choices(first, second).stream()
                    .map(c -> new Picture.Pair(c.firstLine(), c.secondLine()))
                    .toList()));
  }

  /** Returns which picture a page shows; empty where it is no picture. */
  static Optional<Picture.Kind> kind(String page) {
    return switch (page) {
      case "Timelines" -> Optional.of(Picture.Kind.COMPARE_TIMELINES);
      case "Pegs" -> Optional.of(Picture.Kind.COMPARE_PEGS);
      case "Catch" -> Optional.of(Picture.Kind.COMPARE_CATCH);
      case "Rates" -> Optional.of(Picture.Kind.COMPARE_RATES);
      case "First bites" -> Optional.of(Picture.Kind.COMPARE_FIRST_BITES);
      default -> Optional.empty();
    };
  }

  private static Picture.Align align(Alignment.Mode mode) {
    return switch (mode) {
      case ALL_IN -> Picture.Align.ALL_IN;
      case CLOCK -> Picture.Align.CLOCK;
      case FIRST_FED -> Picture.Align.FIRST_FED;
      case EVENT -> Picture.Align.EVENT;
      case BY_HAND -> Picture.Align.BY_HAND;
    };
  }
}
