package org.fadeline.ui.control.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keys are written as {@link KeyCode} spells them and mean that key, not a typed character. */
class CommandTest {
  @ParameterizedTest
  @CsvSource({
    "Page_Up, PAGE_UP",
    "Back_Space, BACK_SPACE",
    "Open_Bracket, OPEN_BRACKET",
    "Delete, DELETE",
    "F1, F1",
    "Comma, COMMA"
  })
  void aKeyOfTwoWordsIsAKey(String written, KeyCode code) {
    Command command = Command.of("Group", "Title", () -> {}, written);
    KeyEvent press = new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false);
    assertTrue(command.keys().get(0).match(press), written);
  }
}
