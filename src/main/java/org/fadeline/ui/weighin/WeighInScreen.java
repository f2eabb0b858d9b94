package org.fadeline.ui.weighin;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.fadeline.analysis.NetScale;
import org.fadeline.model.MatchRules.NetLimit;
import org.fadeline.model.Outcome;
import org.fadeline.model.Session;
import org.fadeline.ui.control.Labels;
import org.fadeline.ui.control.Nodes;
import org.fadeline.ui.control.Screen;
import org.fadeline.ui.control.ScreenFacts;
import org.fadeline.ui.control.Watch;
import org.fadeline.ui.control.command.Command;
import org.fadeline.ui.control.command.Undoing;
import org.fadeline.ui.control.form.EntryBox;
import org.fadeline.ui.control.picture.NetBars;
import org.fadeline.ui.state.OpenSession;
import org.fadeline.ui.state.PreferenceStore;
import org.fadeline.ui.state.Preferences;
import org.fadeline.ui.state.Workbench;
import org.jspecify.annotations.Nullable;

/** What the scales said, net by net, against the log; and where the angler came. */
public final class WeighInScreen implements Screen {
  /** What the window must know of it. */
  public static final ScreenFacts FACTS = new ScreenFacts("Weigh-in", true, false, null);

  private static final int MOST_NETS = 20;

  private final Workbench bench;
  private final PreferenceStore preferences;
  private final NetTable nets;
  private final PlacingPane placing;
  private final NetBars netBars = new NetBars();
  private final PegBars pegs = new PegBars();
  private final Label total = Labels.wrapped("");
  private final Label estimates = Labels.wrapped("");
  private final Label limit = Labels.wrapped("");
  private final Button addNet = new Button("Add a net");
  private final ScrollPane view;
  private int netsAsked;
  private boolean visible;

  /** Makes the screen. */
  public WeighInScreen(Workbench bench, PreferenceStore preferences) {
    this.bench = bench;
    this.preferences = preferences;
    EntryBox.Commit<Outcome> commit =
        (name, change) -> bench.editing().edit(name, s -> s.withOutcome(change.apply(s.outcome())));
    nets = new NetTable(commit);
    placing = new PlacingPane(commit);
    total.getStyleClass().add("figure-large");
    total.setId("scales-total");
    estimates.setId("estimates");
    limit.getStyleClass().add("quiet");
    addNet.setId("add-net");
    addNet.setAccessibleText("Add a net to be weighed");
    addNet.setOnAction(
        e -> {
          netsAsked = Math.min(MOST_NETS, shownNets() + 1);
          show();
        });
    Label caution =
        Labels.wrapped(
            "Net limits and how long fish may be kept are the water's own rules; less time and"
                + " smaller loads in heat and low oxygen. The organiser decides what counts.");
    caution.getStyleClass().add("quiet");
    VBox left =
        panel(
            Labels.line("Nets", "title"),
            limit,
            nets.view(),
            addNet,
            Labels.line("Total", "title"),
            total,
            estimates,
            caution);
    VBox right = panel(placing.parts());
    HBox.setHgrow(left, Priority.ALWAYS);
    right.setPrefWidth(380);
    right.setMinWidth(300);
    HBox above = new HBox(10, left, right);
    VBox netsShown = panel(Labels.line("Net by net", "title"), netBars);
    VBox pegsShown = panel(Labels.line("Against the pegs nearby", "title"), pegs.view());
    HBox.setHgrow(netsShown, Priority.ALWAYS);
    HBox.setHgrow(pegsShown, Priority.ALWAYS);
    netsShown.setPrefWidth(100);
    pegsShown.setPrefWidth(100);
    HBox below = new HBox(10, netsShown, pegsShown);
    VBox.setVgrow(below, Priority.ALWAYS);
    VBox all = new VBox(10, above, below);
    all.setStyle("-fx-padding: 0.9em;");
    view = Nodes.scrollFilled(all);
    Watch.part(bench.stateProperty(), s -> s.open(), open -> changed());
    Watch.part(preferences.property(), Preferences::units, units -> changed());
  }

  private static VBox panel(Node... parts) {
    VBox box = new VBox(10, parts);
    box.getStyleClass().add("panel");
    box.setStyle("-fx-padding: 1.1em 1.3em 1.3em 1.3em;");
    return box;
  }

  @Override
  public ScreenFacts facts() {
    return FACTS;
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public List<Command> commands() {
    List<Command> all = new ArrayList<>(Undoing.of(title(), bench));
    all.add(0, Command.of(title(), "Add a net", addNet::fire, "N"));
    return all;
  }

  @Override
  public void takeFocus() {
    view.requestFocus();
  }

  @Override
  public void shown(boolean nowShown) {
    visible = nowShown;
    changed();
  }

  /** What nobody looks at is put together once somebody does. */
  private void changed() {
    if (visible || bench.state().open() == null) {
      show();
    }
  }

  private int shownNets() {
    OpenSession open = bench.state().open();
    return open == null ? 0 : NetList.of(open.session(), netsAsked).size();
  }

  private void show() {
    OpenSession open = bench.state().open();
    if (open == null) {
      netsAsked = 0;
      return;
    }
    Session session = open.session();
    var units = preferences.get().units();
    boolean editable = bench.editing().allowed();
    List<NetScale> all = NetList.of(session, netsAsked);
    nets.show(session, all, units, editable);
    placing.show(session.outcome(), units, editable);
    netBars.show(all, units);
    pegs.show(session, NetScale.total(all), units);
    addNet.setDisable(!editable || all.size() >= MOST_NETS);
    Double scales = NetScale.total(all).scalesG();
    total.setText(scales == null ? "not known yet" : Weights.both(scales, units));
    estimates.setText(Weights.estimates(all, units));
    limit.setText(limitWords(session.match().rules().netLimit()));
  }

  private String limitWords(@Nullable NetLimit of) {
    return of == null
        ? "No net limit is set up for this match."
        : Weights.limit(of, preferences.get().units());
  }
}
