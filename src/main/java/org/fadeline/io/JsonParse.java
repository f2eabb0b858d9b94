package org.fadeline.io;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fadeline.io.Problem.Severity;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/** Reads JSON text strictly, within limits, into values that know their place. */
public final class JsonParse {
  static final int DEEPEST = 32;
  static final int LONGEST_NUMBER = 32;
  static final int LONGEST_TEXT = 65_536;
  static final int LONGEST_NAME = 128;

  /** Bounds memory: a real session of thousands of events holds a hundredth of this. */
  static final int MOST_VALUES = 3_000_000;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxNumberLength(LONGEST_NUMBER)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNameLength(LONGEST_NAME)
                  .build())
          .build();

  private final String file;
  private final ImportReport.Collector problems;
  private int values;

  private JsonParse(String file, ImportReport.Collector problems) {
    this.file = file;
    this.problems = problems;
  }

  /** Returns the value, or null after adding the problem that kept it from being read. */
  public static @Nullable Json parse(String file, String text, ImportReport.Collector problems) {
    return new JsonParse(file, problems).parse(text);
  }

  /**
   * Returns the object that a file holds, or null after adding the problem that kept it from being
   * read.
   *
   * @param kind what such a file is called in messages
   */
  static Json.@Nullable Obj object(
      String file, String text, String kind, ImportReport.Collector problems) {
    Json root = parse(file, text, problems);
    if (root != null && !(root instanceof Json.Obj)) {
      String what = "a " + kind + " is an object {…}, not " + root.kindWord();
      String todo = "choose a " + kind + " file";
      problems.add(Problem.at(file, root, "", Severity.ERROR, what, todo));
    }
    return root instanceof Json.Obj object ? object : null;
  }

  private @Nullable Json parse(String text) {
    if (text.isBlank()) {
      problems.add(
          Problem.ofFile(file, "the file is empty", "choose another file, or open a backup"));
      return null;
    }
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      try {
        parser.nextToken();
        Json root = value(parser);
        if (parser.nextToken() != null) {
          add(
              parser.currentTokenLocation(),
              "",
              "more text follows the end of the JSON value",
              "take away what follows it");
          return null;
        }
        return root;
      } catch (JacksonException refused) {
        addRefused(parser, refused);
        return null;
      } catch (TooMuch tooMuch) {
        add(
            parser.currentTokenLocation(),
            pointer(parser),
            "the file holds more than " + MOST_VALUES + " values",
            "split it, or check that it is a session at all");
        return null;
      }
    }
  }

  private Json value(JsonParser parser) {
    if (++values > MOST_VALUES) {
      throw new TooMuch();
    }
    TokenStreamLocation at = parser.currentTokenLocation();
    int line = at.getLineNr();
    int column = at.getColumnNr();
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(parser, line, column);
      case START_ARRAY -> array(parser, line, column);
      case VALUE_STRING -> new Json.Text(line, column, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(line, column, parser.getString());
      case VALUE_TRUE -> new Json.Bool(line, column, true);
      case VALUE_FALSE -> new Json.Bool(line, column, false);
      default -> new Json.Null(line, column);
    };
  }

  private Json object(JsonParser parser, int line, int column) {
    Map<String, Json> members = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String name = parser.currentName();
      TokenStreamLocation at = parser.currentTokenLocation();
      parser.nextToken();
      Json value = value(parser);
      if (members.putIfAbsent(name, value) != null) {
        add(
            at,
            pointer(parser),
            "the field " + Shown.value(name) + " is there twice",
            "keep the one that is right");
      }
    }
    return new Json.Obj(line, column, members);
  }

  private Json array(JsonParser parser, int line, int column) {
    List<Json> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(parser));
    }
    return new Json.Arr(line, column, items);
  }

  private void addRefused(JsonParser parser, JacksonException refused) {
    TokenStreamLocation at = refused.getLocation();
    if (at == null) {
      at = parser.currentLocation();
    }
    String what;
    String todo = "mend the file at this place, or open a backup";
    if (refused instanceof StreamConstraintsException) {
      what = tooLarge(String.valueOf(refused.getOriginalMessage()));
      todo = "check that the file is a session at all";
    } else if (refused instanceof UnexpectedEndOfInputException) {
      what = "the file ends in the middle of a value, as if it had been cut off";
    } else {
      what = "this is not JSON: " + plain(String.valueOf(refused.getOriginalMessage()));
    }
    add(at, pointer(parser), what, todo);
  }

  private static String tooLarge(String message) {
    if (message.contains("nesting depth")) {
      return "values are nested deeper than " + DEEPEST + " levels";
    }
    if (message.contains("Name length")) {
      return "a field name is longer than " + LONGEST_NAME + " characters";
    }
    if (message.contains("Number value length")) {
      return "a number is longer than " + LONGEST_NUMBER + " characters";
    }
    return "a text is longer than " + LONGEST_TEXT + " characters";
  }

  /** Keeps the parser's first clause: the rest names its settings. */
  private static String plain(String message) {
    String first = message.lines().findFirst().orElse("").strip();
    int end = first.indexOf(" (for ");
    first = end > 0 ? first.substring(0, end) : first;
    first = first.replaceAll(": enable `[^`]*` to allow", "");
    return first.length() > 160 ? first.substring(0, 160) + "…" : first;
  }

  private static String pointer(JsonParser parser) {
    return String.valueOf(parser.streamReadContext().pathAsPointer());
  }

  private void add(TokenStreamLocation at, String pointer, String what, String todo) {
    problems.add(
        new Problem(
            file,
            Math.max(1, at.getLineNr()),
            Math.max(1, at.getColumnNr()),
            pointer,
            Severity.ERROR,
            what,
            todo));
  }

  /** Stops reading a file of too many values. */
  private static final class TooMuch extends RuntimeException {
    TooMuch() {
      super(null, null, false, false);
    }
  }
}
