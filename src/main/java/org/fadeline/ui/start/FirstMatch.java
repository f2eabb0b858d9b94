package org.fadeline.ui.start;

import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.scene.Scene;
import org.fadeline.ui.state.Workbench;
import org.fadeline.ui.state.WorkbenchState;

/** Notes when the first match stood in the window with its review. */
public final class FirstMatch implements ChangeListener<WorkbenchState> {
  private final Workbench workbench;
  private final Scene scene;
  private final Runnable drawn;

  private FirstMatch(Workbench workbench, Scene scene, Runnable drawn) {
    this.workbench = workbench;
    this.scene = scene;
    this.drawn = drawn;
  }

  /** Waits for the first match, and runs an action once it is drawn. */
  public static void note(Workbench workbench, Scene scene, Runnable drawn) {
    FirstMatch first = new FirstMatch(workbench, scene, drawn);
    if (workbench.state().review().latest() == null) {
      workbench.stateProperty().addListener(first);
    } else {
      first.waitUntilDrawn();
    }
  }

  @Override
  public void changed(
      ObservableValue<? extends WorkbenchState> state, WorkbenchState before, WorkbenchState now) {
    if (now.review().latest() != null) {
      workbench.stateProperty().removeListener(this);
      waitUntilDrawn();
    }
  }

  /** The pulse after the one that lays the match out comes when that one is drawn. */
  private void waitUntilDrawn() {
    scene.addPostLayoutPulseListener(
        new Runnable() {
          private boolean laidOut;

          @Override
          public void run() {
            if (laidOut) {
              scene.removePostLayoutPulseListener(this);
              drawn.run();
            } else {
              laidOut = true;
              Platform.requestNextPulse();
            }
          }
        });
    Platform.requestNextPulse();
  }
}
