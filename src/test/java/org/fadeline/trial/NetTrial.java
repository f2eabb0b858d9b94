package org.fadeline.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.fadeline.analysis.EstimateError;
import org.fadeline.analysis.NetCourse;
import org.fadeline.analysis.NetState;
import org.fadeline.analysis.NetState.Likely;
import org.fadeline.demo.DemoMatch;
import org.fadeline.demo.DemoWaters;
import org.fadeline.model.Fish;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;

/**
 * How often the likely weight of a net, as known when its last fish went in, holds what the scales
 * said: invented water A, whose estimates run off by a factor spread evenly over 0.9 to 1.1 and
 * scatter by 8%, with every weight logged and with some left out.
 */
public final class NetTrial {
  private static final int MATCHES = 400;

  private NetTrial() {}

  /** Prints the table. */
  public static void main(String[] args) {
    for (double left : new double[] {0, 0.2, 0.5}) {
      int nets = 0;
      int held = 0;
      double width = 0;
      for (int seed = 1; seed <= MATCHES; seed++) {
        Session session =
            without(left, seed, DemoMatch.generate(DemoWaters.waterA(), DemoWaters.planA(), seed));
        NetCourse.Standing end =
            NetCourse.asKnownThen(session, EstimateError.USUAL).at(Long.MAX_VALUE);
        for (NetState net : end == null ? List.<NetState>of() : end.all()) {
          Likely likely = net.likely();
          for (NetWeight scales : session.outcome().weighIn()) {
            if (scales.net() == net.net() && likely != null) {
              nets++;
              held += likely.low() <= scales.grams() && scales.grams() <= likely.high() ? 1 : 0;
              width += (likely.high() - likely.low()) / likely.middle();
            }
          }
        }
      }
      System.out.printf(
          Locale.ROOT,
          "%.0f%% of weights left out: %d nets, held %.1f%%, width %.0f%% of the weight%n",
          100 * left,
          nets,
          100.0 * held / nets,
          100 * width / nets);
    }
  }

  private static Session without(double share, long seed, Session session) {
    Random random = new Random(seed);
    List<SessionEvent> events = new ArrayList<>();
    for (SessionEvent event : session.events()) {
      Fish fish = event.fishOrNull();
      boolean drop = fish != null && random.nextDouble() < share;
      events.add(
          drop && event instanceof SessionEvent.Landed landed
              ? new SessionEvent.Landed(
                  landed.stamp(),
                  new Fish(landed.fish().count(), landed.fish().species(), null, false))
              : event);
    }
    return session.withEvents(events);
  }
}
