package org.fadeline.model;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The kinds of event, each with the word that files and screens use. */
public enum EventKind {
  /** A put-in of a pole rig, or a cast. */
  CAST("cast", Group.WATER),
  /** A take that showed; nothing was hooked. */
  BITE("bite", Group.WATER),
  /** A fish hooked. */
  HOOKED("hooked", Group.WATER),
  /** A fish landed. */
  LANDED("landed", Group.WATER),
  /** A hooked fish that came off. */
  LOST("lost", Group.WATER),
  /** A foul-hooked fish, landed. */
  FOUL("foul", Group.WATER),
  /** The angler left the line. */
  MOVE("move", Group.MOVE),
  /** The rig came out on purpose: a break, a tangle, re-rigging, cupping. */
  OFF("off", Group.MOVE),
  /** The match was suspended. */
  STOPPED("stopped", Group.MOVE),
  /** The match went on. */
  RESUMED("resumed", Group.MOVE),
  /** Bait introduced on a line. */
  FED("fed", Group.FEED),
  /** Clicker count: fish and weight since the last count. */
  COUNT("count", Group.COUNT),
  /** A change of rig, depth or hookbait. */
  CHANGE("change", Group.AROUND),
  /** A change of keepnet. */
  NET("net", Group.AROUND),
  /** Movement short of a bite. */
  INDICATION("indication", Group.AROUND),
  /** Fish showing: fizzing, swirls. */
  SIGN("sign", Group.AROUND),
  /** Another peg's catch. */
  NEIGHBOUR("neighbour", Group.AROUND),
  /** A remark on the weather. */
  WEATHER("weather", Group.AROUND),
  /** Any other remark. */
  NOTE("note", Group.AROUND),
  /** Start call. */
  ALL_IN("all-in", Group.FRAME),
  /** Finish call. */
  ALL_OUT("all-out", Group.FRAME);

  /** What a kind is about. */
  public enum Group {
    /** A bait in the water and what came of it. */
    WATER,
    /** Coming and going. */
    MOVE,
    /** Feeding. */
    FEED,
    /** Clicker counts. */
    COUNT,
    /** What happened around. */
    AROUND,
    /** Start and finish. */
    FRAME
  }

  private static final Map<String, EventKind> BY_WORD =
      Stream.of(values()).collect(Collectors.toMap(EventKind::word, Function.identity()));

  private final String word;
  private final Group group;

  EventKind(String word, Group group) {
    this.word = word;
    this.group = group;
  }

  /** Returns the word used in files. */
  public String word() {
    return word;
  }

  /** Returns what the kind is about. */
  public Group group() {
    return group;
  }

  /** Returns whether it says what became of a hooked fish. */
  public boolean isOutcome() {
    return this == LANDED || this == LOST || this == FOUL;
  }

  /** Returns the kind with the given word, exactly as files write it, or empty. */
  public static Optional<EventKind> ofWord(String word) {
    return Optional.ofNullable(BY_WORD.get(word));
  }
}
