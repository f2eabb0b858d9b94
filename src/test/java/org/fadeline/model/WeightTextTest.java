package org.fadeline.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fadeline.model.Units.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Weights against the definitions of the Weights and Measures Act 1985, Schedule 1, and NIST
 * Handbook 44, Appendix C: pound 0.45359237 kg, ounce 1/16 pound, dram 1/16 ounce.
 */
class WeightTextTest {
  @Test
  void tenPoundsFourOuncesEightDramsIsExact() {
    assertEquals(4663.4965540625, WeightText.grams("10 lb 4 oz 8 dr", Weight.LB_OZ), 1e-10);
  }

  @Test
  void fiftyPoundsIsExact() {
    assertEquals(22_679.6185, WeightText.grams("50 lb", Weight.LB_OZ), 1e-10);
  }

  @Test
  void aKilogramIsTwoPoundsThreeOuncesAndSomeDrams() {
    double drams = 1000 / WeightText.GRAMS_PER_DRAM - (2 * 16 + 3) * 16;
    assertEquals(4.3834, drams, 5e-5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "8 4|8|4|0",
        "8-4|8|4|0",
        "8 - 4|8|4|0",
        "8lb 4oz|8|4|0",
        "8lb4oz|8|4|0",
        "8LB 4|8|4|0",
        "8 lbs, 4 ozs|8|4|0",
        "8 pounds and 4 ounces|8|4|0",
        "8|8|0|0",
        "0-12|0|12|0",
        "12oz|0|12|0",
        "20 oz|0|20|0",
        "4 drams|0|0|4",
        "2oz 8dr|0|2|8",
        "1-2-3|1|2|3",
        "1½lb|1|8|0",
        "½ oz|0|0|8",
        "1 1/2 lb|1|8|0",
        "8.5 lb|8|8|0"
      })
  void readsPoundsAndOuncesAsAnglersSayThem(String text, int lb, int oz, int dr) {
    double expected = (lb * 256 + oz * 16 + dr) * (453.59237 / 256);
    assertEquals(expected, WeightText.grams(text, Weight.LB_OZ), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3.7 kg|3700",
        "3,7kg|3700",
        "850g|850",
        "850 grams|850",
        "3 kilos 700|3700",
        "3kg 700g|3700",
        "3.7|3700",
        "3-700|3700",
        "8lb 4oz|3742.1370525"
      })
  void readsMetricWeights(String text, double grams) {
    assertEquals(grams, WeightText.grams(text, Weight.KG), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "heavy",
        "-3 lb",
        "8.4",
        "8 16",
        "8lb 17oz",
        "4oz 8lb",
        "8 stone",
        "1 2 3 4",
        "8lb 4kg",
        "3/2 oz",
        "9999999 kg",
        "NaN",
        "1e3 kg",
        "8 4 oz oz"
      })
  void refusesWhatIsNotAWeightAndSaysHowToWriteOne(String text) {
    var refused =
        assertThrows(IllegalArgumentException.class, () -> WeightText.grams(text, Weight.LB_OZ));
    assertTrue(String.valueOf(refused.getMessage()).contains("write it as"));
  }

  @ParameterizedTest
  @CsvSource({
    "0,0 oz,0.00 kg",
    "340.19,12 oz,0.34 kg",
    "3742.1370525,8 lb 4 oz,3.74 kg",
    "3628.73896,8 lb,3.63 kg",
    "452,1 lb,0.45 kg",
    "22679.6185,50 lb,22.68 kg"
  })
  void formatsToTheOunceAndToTenGrams(double grams, String lbOz, String kg) {
    assertEquals(lbOz, WeightText.format(grams, Weight.LB_OZ));
    assertEquals(kg, WeightText.format(grams, Weight.KG));
  }

  @Test
  void formatsTinyFishInDrams() {
    assertEquals("8 dr", WeightText.formatFine(WeightText.GRAMS_PER_OUNCE / 2, Weight.LB_OZ));
    assertEquals(
        "2 oz 8 dr", WeightText.formatFine(2.5 * WeightText.GRAMS_PER_OUNCE, Weight.LB_OZ));
    assertEquals("1 lb", WeightText.formatFine(453.5, Weight.LB_OZ));
    assertEquals("71 g", WeightText.formatFine(70.9, Weight.KG));
    assertEquals("1.00 kg", WeightText.formatFine(999.6, Weight.KG));
  }

  @Property
  void whatIsFormattedIsReadBackToTheOunce(@ForAll @IntRange(max = 35_000) int ounces) {
    double grams = ounces * WeightText.GRAMS_PER_OUNCE;
    String text = WeightText.format(grams, Weight.LB_OZ);
    assertEquals(grams, WeightText.grams(text, Weight.LB_OZ), 1e-6);
  }

  @Test
  void unitsSayDistances() {
    assertEquals("11.5 m", Units.LB_OZ_AND_METRES.distance(11.5));
    assertEquals("13 m", Units.LB_OZ_AND_METRES.distance(13));
    assertEquals("43 ft", Units.LB_OZ_AND_METRES.withLength(Units.Length.FT).distance(13));
  }
}
