package org.fadeline.cli;

import org.fadeline.model.Units;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option for units of weight. */
final class UnitsOption {
  @Option(
      names = "--units",
      paramLabel = "lb-oz|kg",
      converter = WeightUnit.class,
      description = "units of weight in words and figures (default: lb-oz)")
  private Units.Weight weight = Units.Weight.LB_OZ;

  Units units() {
    return Units.LB_OZ_AND_METRES.withWeight(weight);
  }

  /** Reads the word of a unit of weight. */
  static final class WeightUnit implements ITypeConverter<Units.Weight> {
    @Override
    public Units.Weight convert(String word) {
      return Units.Weight.ofWord(word)
          .orElseThrow(() -> new TypeConversionException("takes lb-oz or kg, not '" + word + "'"));
    }
  }
}
