package org.fadeline.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The predictive of a run with so many events that its first terms are too small for a double. */
class PredictiveCountMixtureTest {
  @Test
  void manyEventsToComeHaveTheMomentsOfANegativeBinomial() {
    // Gamma(A, B), exposure f: mean A·f/B, variance mean·(1 + f/B) (Gelman et al., section 2.6).
    double shape = 2000;
    PredictiveCountMixture more =
        PredictiveCountMixture.of(List.of(new RunLengthRate(0, 1, shape, 2)), 2);
    double[] probabilities = more.probabilities(1 - 1e-9);
    assertEquals(1, Arrays.stream(probabilities).sum(), 1e-6);
    double mean = 0;
    for (int k = 0; k < probabilities.length; k++) {
      mean += k * probabilities[k];
    }
    double variance = 0;
    for (int k = 0; k < probabilities.length; k++) {
      variance += (k - mean) * (k - mean) * probabilities[k];
    }
    assertEquals(2000, mean, 1e-3);
    assertEquals(4000, variance, 0.1);
    assertTrue(probabilities[0] < 1e-300);
  }
}
