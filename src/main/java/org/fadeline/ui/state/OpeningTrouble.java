package org.fadeline.ui.state;

import java.util.function.Consumer;
import org.fadeline.model.Session;
import org.fadeline.ui.state.Activity.Trouble;
import org.jspecify.annotations.Nullable;

/** What is to be read when a session was opened: remarks on its file, or two records of it. */
final class OpeningTrouble {
  private OpeningTrouble() {}

  /**
   * Returns what is to be read, or null where there is nothing.
   *
   * @param opened what is in hand now
   * @param take puts another record of the match in its place
   */
  static @Nullable Trouble of(Desk.Held opened, Consumer<Session> take) {
    Desk.Notice notice = opened.notice();
    String recovered = notice.recovered();
    Session other = notice.other();
    if (other != null) {
      return new Trouble(
          "The file was changed outside Fadeline",
          recovered
              + " What is open is the file as it stands, with "
              + events(opened.session())
              + "; the record as it was kept here has "
              + events(other)
              + ". Taking it is one step, which undo takes back.",
          notice.problems(),
          new Activity.Offer("Take the record kept here", () -> take.accept(other)));
    }
    return notice.problems().isEmpty()
        ? null
        : new Trouble(
            "Opened, with " + Workbench.count(notice.problems().size(), "remark"),
            recovered == null
                ? "The file is unchanged. What it says here was taken as described."
                : recovered + " The remarks are on the file as it was saved last.",
            notice.problems(),
            null);
  }

  private static String events(Session session) {
    return Workbench.count(session.events().size(), "event");
  }
}
