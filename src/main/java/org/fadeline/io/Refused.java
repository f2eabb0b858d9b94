package org.fadeline.io;

/** A value that cannot be used: what is wrong with it and what to do, to be put with its place. */
public final class Refused extends Exception {
  private final String what;
  private final String whatToDo;

  /**
   * A value refused.
   *
   * @param what what is wrong with it
   * @param whatToDo what the reader of the message can do
   */
  public Refused(String what, String whatToDo) {
    // No stack trace: it is an answer, and a file may hold many.
    super(what, null, false, false);
    this.what = what;
    this.whatToDo = whatToDo;
  }

  /** Returns what is wrong. */
  public String what() {
    return what;
  }

  /** Returns what the reader of the message can do. */
  public String whatToDo() {
    return whatToDo;
  }
}
