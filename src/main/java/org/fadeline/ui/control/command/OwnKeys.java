package org.fadeline.ui.control.command;

import javafx.scene.input.KeyEvent;

/** A control that, while it has the focus, uses some keys which elsewhere are the screen's. */
public interface OwnKeys {
  /** Returns whether a key is the control's own. */
  boolean uses(KeyEvent key);
}
