package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** No row of expected.csv goes unanswered unnoticed. */
class ReferenceCoverageTest {
  @Test
  void everyRowBelongsToAFamily() {
    int claimed = Arrays.stream(ReferenceFamily.values()).mapToInt(f -> f.rows().size()).sum();
    assertEquals(ReferenceData.expected().size(), claimed);
    assertTrue(claimed > 300);
    assertEquals(23, ReferenceFamily.UNANSWERED.rows().size(), "rows still without a test");
  }

  @TestFactory
  Stream<DynamicTest> everyFamilyHasItsRowsAndItsTest() {
    return Arrays.stream(ReferenceFamily.values())
        .filter(family -> family != ReferenceFamily.UNANSWERED)
        .map(
            family ->
                DynamicTest.dynamicTest(
                    family.name(),
                    () -> {
                      assertTrue(family.rows().size() > 1, "rows");
                      Class.forName("org.fadeline.stats." + family.testClass);
                    }));
  }
}
