package org.fadeline.ui.compare;

import java.util.List;
import java.util.Optional;
import org.fadeline.analysis.compare.Alignment;
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
    Optional<Picture.Align> align = align(state.laying().mode());
    if (second == null || kind.isEmpty()) {
      bench.tell("There is no picture here to put on the talk");
    } else if (align.isEmpty()) {
      bench.tell(
          "A talk lays two matches by all in, the clock or the first feed: choose one of these"
              + " first");
    } else if (!state.choices().isEmpty()) {
      bench.tell("A talk pairs lines by itself: choose pairing by itself first");
    } else {
      Picture.Manner usual = Picture.Manner.USUAL;
      Picture picture =
          Picture.of(kind.get(), TalkTray.OPEN, OTHER)
              .withManner(new Picture.Manner(usual.measure(), align.get(), usual.units()));
      bench.putOnTalk(
          kind.get().label(), picture, List.of(new Source(OTHER, second.file().toAbsolutePath())));
    }
  }

  private static Optional<Picture.Kind> kind(String page) {
    return switch (page) {
      case "Timelines" -> Optional.of(Picture.Kind.COMPARE_TIMELINES);
      case "Pegs" -> Optional.of(Picture.Kind.COMPARE_PEGS);
      case "Catch" -> Optional.of(Picture.Kind.COMPARE_CATCH);
      case "Rates" -> Optional.of(Picture.Kind.COMPARE_RATES);
      case "First bites" -> Optional.of(Picture.Kind.COMPARE_FIRST_BITES);
      default -> Optional.empty();
    };
  }

  private static Optional<Picture.Align> align(Alignment.Mode mode) {
    return switch (mode) {
      case ALL_IN -> Optional.of(Picture.Align.ALL_IN);
      case CLOCK -> Optional.of(Picture.Align.CLOCK);
      case FIRST_FED -> Optional.of(Picture.Align.FIRST_FED);
      case EVENT, BY_HAND -> Optional.empty();
    };
  }
}
