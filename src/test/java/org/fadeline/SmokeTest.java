package org.fadeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SmokeTest {
  @Test
  void adds() {
    assertEquals(2, 1 + 1);
  }

  @Property
  boolean commutes(@ForAll int a, @ForAll int b) {
    return a + b == b + a;
  }
}
