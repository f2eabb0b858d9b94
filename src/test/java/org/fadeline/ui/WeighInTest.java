package org.fadeline.ui;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.fadeline.model.Outcome;
import org.fadeline.model.Outcome.NeighbourWeight;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;

/** The weigh-in typed as anglers say it, shown against the log, and taken up by the review. */
class WeighInTest extends WindowHarness {
  /** 8 lb 4 oz is 3742.137 g: 8.25 × 453.59237 (Weights and Measures Act 1985, Schedule 1). */
  private static final double EIGHT_FOUR = 3742.1370525;

  private Outcome outcome() {
    return session().outcome();
  }

  private String text(String id) {
    return node(id, Label.class).getText();
  }

  @Test
  void aNetIsTypedAndTakenBack() throws Exception {
    open("Weigh-in");
    assertTrue(shows("No net was weighed yet"));
    type("net-1-weight", "8 4");
    assertEquals(1, outcome().weighIn().size());
    assertEquals(EIGHT_FOUR, outcome().weighIn().get(0).grams(), 1e-9);
    assertEquals("8 lb 4 oz · 3.74 kg", text("scales-total"));
    // 16 fish: 1100+900+1200+1300 and 1400, 1450 … 1950, together 24 600 g.
    assertEquals("×0.15", text("net-1-factor"));
    robot.interact(() -> bench.editing().undo());
    waitUntil(() -> outcome().weighIn().isEmpty());
    assertEquals("not known yet", text("scales-total"));
  }

  @Test
  void aWeightThatCannotBeReadIsToldBesideTheField() {
    open("Weigh-in");
    type("net-1-weight", "eight stone");
    assertEquals(List.of(), outcome().weighIn());
    assertTrue(text("net-1-weight-error").contains("8lb 4oz"), text("net-1-weight-error"));
    assertEquals("eight stone", node("net-1-weight", TextField.class).getText(), "still there");
    type("net-1-weight", "3.7 kg");
    assertEquals(3700, outcome().weighIn().get(0).grams(), 1e-9);
    assertTrue(text("net-1-weight-error").isEmpty());
  }

  @Test
  void furtherNetsAreAddedAndHoldWhatIsSaid() {
    open("Weigh-in");
    type("net-1-weight", "30");
    press("add-net");
    type("net-2-weight", "12 8");
    choose("net-2-holds", "silvers");
    assertEquals(
        List.of(
            new NetWeight(1, 30 * 453.59237, null), new NetWeight(2, 12.5 * 453.59237, "silvers")),
        outcome().weighIn());
    type("net-2-weight", "");
    assertEquals(1, outcome().weighIn().size());
  }

  @Test
  void theLimitIsHeldAgainstTheScales() {
    open("Weigh-in");
    limitOf(50);
    assertTrue(text("net-1-standing").contains("over by the log"), text("net-1-standing"));
    type("net-1-weight", "49");
    assertEquals("1 lb under", text("net-1-standing"));
    type("net-1-weight", "51");
    assertEquals("1 lb over: counts as nothing", text("net-1-standing"));
  }

  @Test
  void placesAndNeighboursAreKept() {
    open("Weigh-in");
    type("section", "B");
    type("section-position", "2");
    type("position", "5");
    type("of", "24");
    type("of", "4");
    assertTrue(text("of-error").contains("5 of 4"), text("of-error"));
    type("neighbour-peg", "13");
    type("neighbour-weight", "52 4");
    Outcome.Result result = requireNonNull(outcome().result());
    assertEquals("B", result.section());
    assertEquals(2, result.sectionPosition());
    assertEquals(5, result.position());
    assertEquals(24, result.of());
    assertEquals(List.of(new NeighbourWeight("13", 52.25 * 453.59237)), result.neighbours());
    robot.clickOn("Remove");
    assertEquals(List.of(), requireNonNull(outcome().result()).neighbours());
  }

  @Test
  void aResultOfNothingIsNoResult() {
    open("Weigh-in");
    type("section", "B");
    type("section", "");
    assertNull(outcome().result());
  }

  @Test
  void theUnitsOfTheWindowAreTheUnitsOfPlainNumbers() {
    open("Weigh-in");
    robot.interact(
        () -> preferences.change(p -> p.withUnits(p.units().withWeight(Units.Weight.KG))));
    type("net-1-weight", "24.6");
    assertEquals(24_600, outcome().weighIn().get(0).grams(), 1e-9);
    assertEquals("×1.00", text("net-1-factor"));
    assertTrue(text("scales-total").startsWith("24.60 kg"));
    assertTrue(text("estimates").contains("agree"));
  }

  @Test
  void theReviewTakesItUp() {
    open("Weigh-in");
    type("net-1-weight", "52 4");
    robot.interact(() -> window.showScreen("Review"));
    robot.interact(
        () ->
            window.commands().stream()
                .filter(c -> c.title().equals("The record"))
                .forEach(c -> c.action().run()));
    assertTrue(shows("The scales said 52 lb 4 oz in 1 net"));
  }
}
