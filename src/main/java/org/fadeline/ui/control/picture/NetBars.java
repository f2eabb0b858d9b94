package org.fadeline.ui.control.picture;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.NetScale;
import org.fadeline.model.Outcome.NetWeight;
import org.fadeline.model.Units;
import org.fadeline.ui.control.Say;

/** Each net as a bar: the scales, the log, the limit. */
public final class NetBars extends VBox {
  private final WeightBars bars = new WeightBars();
  private final Label key = new Label();

  /** Makes an empty chart. */
  public NetBars() {
    super(10);
    key.getStyleClass().add("quiet");
    key.setWrapText(true);
    key.setMinHeight(Region.USE_PREF_SIZE);
    getChildren().addAll(bars, key);
  }

  /** Shows nets. */
  public void show(List<NetScale> nets, Units units) {
    boolean limited = nets.stream().anyMatch(n -> n.limit() != null);
    bars.show(nets.stream().map(net -> bar(net, units)).toList());
    key.setText(
        "Bar: at the scales, or in the log where a net was not weighed. Thin mark: in the log."
            + (limited ? " Red mark: the limit." : ""));
  }

  private static WeightBars.Bar bar(NetScale net, Units units) {
    NetWeight weighed = net.weighed();
    double logged = net.logged().grams();
    return new WeightBars.Bar(
        "Net " + net.net(),
        net.grams(),
        weighed == null || logged <= 0 ? null : (Double) logged,
        net.limit() == null ? null : (Double) net.limit().grams(),
        net.grams() <= 0
            ? "nothing known"
            : Say.weight(net.grams(), units) + (weighed == null ? " by the log" : ""),
        weighed != null);
  }
}
