package org.fadeline.log;

import static org.fadeline.ui.HandMade.minute;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.util.Objects;
import org.fadeline.model.Feed;
import org.fadeline.model.Fish;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Stamp;
import org.fadeline.model.Units;
import org.fadeline.ui.HandMade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts, weights and words as anglers type them. */
class DetailTest {
  private static final Stamp STAMP = new Stamp("e1", minute(30), "short", null);
  private static final SessionEvent LANDED = new SessionEvent.Landed(STAMP, Fish.ONE);
  private static final SessionEvent FED = new SessionEvent.Fed(STAMP, Feed.UNKNOWN);

  private static SessionEvent pounds(SessionEvent event, String text) {
    return reader(Units.Weight.LB_OZ).apply(event, text);
  }

  private static Detail reader(Units.Weight weight) {
    return new Detail(HandMade.session().lines(), ZoneId.of("Europe/London"), weight);
  }

  private static Fish fish(SessionEvent event) {
    return Objects.requireNonNull(event.fishOrNull());
  }

  private static Feed feed(SessionEvent event) {
    return ((SessionEvent.Fed) event).feed();
  }

  /** Grams by the Weights and Measures Act 1985, Schedule 1: 1 lb = 453.59237 g. */
  @ParameterizedTest
  @CsvSource({
    "8 4, 3742.137",
    "8lb 4oz, 3742.137",
    "8-4, 3742.137",
    "12oz, 340.194",
    "3.7 kg, 3700",
    "850g, 850",
    "5, 2267.962"
  })
  void weightsAsTheyAreSaid(String text, double grams) {
    assertEquals(grams, Objects.requireNonNull(fish(pounds(LANDED, text)).grams()), 0.001);
  }

  @Test
  void plainNumbersAreKilogramsWhereThatIsTheUnit() {
    assertEquals(3700, fish(reader(Units.Weight.KG).apply(LANDED, "3.7")).grams());
  }

  @Test
  void aNumberThatCouldBeTwoWeightsIsRefusedWithTheWayToSayIt() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> pounds(LANDED, "8.4")).getMessage();
    assertTrue(String.valueOf(message).contains("8lb 4oz"), message);
  }

  @Test
  void countSpeciesAndScalesWithTheWeight() {
    Fish three = fish(pounds(LANDED, "3 carp 15lb weighed"));
    assertEquals(3, three.count());
    assertEquals("carp", three.species());
    assertEquals(15 * 453.59237, Objects.requireNonNull(three.grams()), 0.001);
    assertTrue(three.weighed());
  }

  @Test
  void whatIsNotSaidStays() {
    SessionEvent weighed = pounds(LANDED, "8 4");
    Fish both = fish(pounds(weighed, "carp"));
    assertEquals("carp", both.species());
    assertEquals(3742.137, Objects.requireNonNull(both.grams()), 0.001);
    SessionEvent fed = pounds(pounds(FED, "200 ml"), "pellets");
    assertEquals(new Feed.Amount(200, Feed.Unit.ML), feed(fed).amount());
    assertEquals("pellets", feed(fed).bait());
  }

  @Test
  void aClickerTakesAPlainNumberForFish() {
    Fish counted = fish(pounds(new SessionEvent.Count(STAMP, Fish.ONE), "12 9lb"));
    assertEquals(12, counted.count());
    assertEquals(9 * 453.59237, Objects.requireNonNull(counted.grams()), 0.001);
  }

  @ParameterizedTest
  @CsvSource({"200 ml, 200, ML", "6 balls, 6, BALLS", "10 pellets, 10, PIECES"})
  void amountsOfBait(String text, double value, Feed.Unit unit) {
    assertEquals(new Feed.Amount(value, unit), feed(pounds(FED, text)).amount());
  }

  @Test
  void aPatternSaysHowOftenAndUntilWhen() {
    Feed fed = feed(pounds(FED, "6 pellets every 40s until 11:30"));
    // Fed at 10:30; 11:30 is an hour later.
    assertEquals(new Feed.Pattern(40, minute(90)), fed.pattern());
    assertEquals(new Feed.Amount(6, Feed.Unit.PIECES), fed.amount());
    String message =
        assertThrows(IllegalArgumentException.class, () -> pounds(FED, "pellets until 11:30"))
            .getMessage();
    assertTrue(String.valueOf(message).contains("every 40s"), message);
  }

  @Test
  void reasonsPegsNetsAndNotes() {
    assertEquals(
        "dead", ((SessionEvent.Move) pounds(new SessionEvent.Move(STAMP, null), "dead")).reason());
    SessionEvent.Neighbour neighbour =
        (SessionEvent.Neighbour)
            pounds(new SessionEvent.Neighbour(STAMP, null, Fish.ONE), "peg 12 carp 8lb");
    assertEquals("12", neighbour.peg());
    assertEquals("carp", neighbour.fish().species());
    assertEquals(3, ((SessionEvent.Net) pounds(new SessionEvent.Net(STAMP, 2), "3")).net());
    assertEquals(
        "wind got up from the left",
        pounds(new SessionEvent.Weather(STAMP), "wind got up from the left").note());
  }

  @Test
  void anEmptyTextChangesNothing() {
    assertEquals(LANDED, pounds(LANDED, "  "));
  }
}
