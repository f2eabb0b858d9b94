package org.fadeline.cli;

/** The input or output is at fault; everything to be said about it is in the message. */
final class InputFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** A fault told already, problem by problem. */
  InputFault() {
    super("");
  }

  InputFault(String message) {
    super(message);
  }
}
