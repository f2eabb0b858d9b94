package org.fadeline.io;

/** A value that cannot be used: what is wrong with it and what to do, to be put with its place. */
public final class Refused extends Exception {
  private final String what;
  private final String whatToDo;

  public Refused(String what, String whatToDo) {
    // No stack trace: it is an answer, and a file may hold many.
    super(what, null, false, false);
    this.what = what;
    this.whatToDo = whatToDo;
  }

  public String what() {
    return what;
  }

  public String whatToDo() {
    return whatToDo;
  }
}
