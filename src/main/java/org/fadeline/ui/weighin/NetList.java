package org.fadeline.ui.weighin;

import java.util.ArrayList;
import java.util.List;
import org.fadeline.analysis.NetScale;
import org.fadeline.model.Session;

/** The nets to show: those of the session and further ones that wait for a weight. */
final class NetList {
  private NetList() {}

  /**
   * Returns the nets of a session, filled up with empty ones.
   *
   * @param atLeast how many are to be shown at least
   */
  static List<NetScale> of(Session session, int atLeast) {
    List<NetScale> nets = new ArrayList<>(NetScale.of(session));
    for (int next = nets.get(nets.size() - 1).net() + 1; nets.size() < atLeast; next++) {
      nets.add(
          new NetScale(next, NetScale.Logged.NOTHING, null, session.match().rules().netLimit()));
    }
    return List.copyOf(nets);
  }
}
