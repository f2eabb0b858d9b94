package org.fadeline.io;

/** Names as steps of a JSON Pointer (RFC 6901, section 3). */
final class JsonPointer {
  private JsonPointer() {}

  /** Returns a name as a step of a pointer. */
  static String escape(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  /** Returns the name that a step of a pointer stands for. */
  static String unescape(String step) {
    return step.replace("~1", "/").replace("~0", "~");
  }
}
