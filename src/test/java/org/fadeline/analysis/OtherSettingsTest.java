package org.fadeline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.fadeline.analysis.OtherSettings.Found;
import org.fadeline.analysis.OtherSettings.Row;
import org.fadeline.demo.AsPeopleLog;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Session;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Other settings are tried one at a time, and each finds what a whole review with it finds. */
class OtherSettingsTest {
  private static final Session MATCH =
      DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), 122);

  @Test
  void everyVariantFindsWhatAReviewWithItFinds() {
    assertFindsWhatReviewsFind(MATCH, ReviewSettings.DEFAULT);
  }

  /** Time a fish takes, set because casts are not logged, counts under other settings too. */
  @Test
  void aSetHandlingTimeIsTakenOffUnderEveryVariant() {
    HandlingTimes handling = new HandlingTimes(Map.of("shallow", 75.0, "short", 60.0));
    assertFindsWhatReviewsFind(
        AsPeopleLog.movesAndFish(MATCH), ReviewSettings.DEFAULT.withHandling(handling));
  }

  private static void assertFindsWhatReviewsFind(Session session, ReviewSettings settings) {
    OtherSettings others = OtherSettings.of(session, settings);
    assertEquals(settings, others.variants().get(0).settings());
    for (int i = 0; i < others.variants().size(); i++) {
      Review review = Reviewer.review(session, others.variants().get(i).settings());
      for (Row row : others.rows()) {
        Fade fade =
            review.stays().stream()
                .filter(s -> s.spell().span().equals(row.spell().span()))
                .findFirst()
                .orElseThrow()
                .fade();
        Found found = row.found().get(i);
        assertEquals(fade == null, found == null);
        if (fade != null && found != null) {
          assertEquals(fade.probability(), found.probability(), 1e-12);
          assertEquals(fade.call().plainAt(), found.plainAt());
        }
      }
    }
  }

  @Test
  void oneSettingIsChangedAtATime() {
    for (OtherSettings.Variant variant :
        OtherSettings.of(MATCH, ReviewSettings.DEFAULT).variants()) {
      ReviewSettings now = variant.settings();
      int changed =
          (now.callLevel() != ReviewSettings.DEFAULT.callLevel() ? 1 : 0)
              + (now.changeHazard() != ReviewSettings.DEFAULT.changeHazard() ? 1 : 0)
              + (now.measure() != ReviewSettings.DEFAULT.measure() ? 1 : 0);
      assertTrue(changed <= 1, variant.label());
    }
  }

  @Test
  void withoutCastsBitesAndHookUpsAreNotTriedAsTwo() {
    List<String> labels =
        OtherSettings.of(AsPeopleLog.movesAndFish(MATCH), ReviewSettings.DEFAULT)
            .variants()
            .stream()
            .map(OtherSettings.Variant::label)
            .toList();
    assertTrue(labels.contains("On fish"), labels::toString);
    assertFalse(labels.contains("On hook-ups"), labels::toString);
  }

  @Test
  void steadyMeansTheSameWithinTenMinutes() {
    assertTrue(row(new Found(0.9, 0L, null), new Found(0.6, 600_000L, null)).isSteady());
    assertFalse(row(new Found(0.9, 0L, null), new Found(0.6, 600_001L, null)).isSteady());
    assertFalse(row(new Found(0.9, 0L, null), new Found(0.4, null, null)).isSteady());
    assertTrue(row(new Found(0.1, null, null), new Found(0.4, null, null)).isSteady());
  }

  private static Row row(@Nullable Found... found) {
    TimeSpan span = new TimeSpan(0, 3_600_000);
    Spell spell = new Spell("a", 0, span, List.of(span), List.of(span), Caught.NOTHING, false);
    return new Row(spell, Arrays.asList(found));
  }
}
