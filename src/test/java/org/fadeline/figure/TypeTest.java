package org.fadeline.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.awt.Font;
import org.junit.jupiter.api.Test;

class TypeTest {
  @Test
  void figuresAreAllOfOneWidth() {
    for (Font font : new Font[] {Type.regular(13), Type.semiBold(13)}) {
      double width = Type.width(font, "0");
      for (char digit = '1'; digit <= '9'; digit++) {
        assertEquals(width, Type.width(font, String.valueOf(digit)), 1e-6, String.valueOf(digit));
      }
      assertNotEquals(Type.width(font, "i"), Type.width(font, "m"));
    }
  }

  @Test
  void everySignThatFiguresUseIsThere() {
    for (Font font : new Font[] {Type.regular(13), Type.semiBold(13)}) {
      assertEquals(-1, font.canDisplayUpTo("×–·½¼¾°…→≤≥±%'’éüß"));
    }
  }

  @Test
  void theFontsAndTheirLicenceAreBundled() {
    for (String resource : Type.resources()) {
      assertNotNull(Type.class.getResource(resource));
    }
    assertNotNull(Type.class.getResource("/org/fadeline/fonts/OFL.txt"));
  }
}
