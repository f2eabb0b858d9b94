package org.fadeline.figure;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.fadeline.model.Line;
import org.fadeline.model.Session;
import org.fadeline.replay.ReplayFrame;

/**
 * The peg to scale, seen from above with the water up the page: the bank, the angler, working
 * lengths, each line at its distance and bearing, the one being fished, how fresh its feed is and
 * what it gave so far.
 *
 * <p>A line whose place was not logged is named, not drawn: nothing is invented on the water. Catch
 * stands at its line as a size and a number, since nobody logs where in the swim a fish was.
 */
public final class PegFigure extends StyledFigure {
  /** Usable maximum of a pole, metres (trade figure of about 16 m). */
  static final double LONGEST_POLE_M = 16;

  private final Session session;
  private final ReplayFrame frame;

  /**
   * Makes the diagram of a moment.
   *
   * @param session the record
   * @param frame the moment
   */
  public PegFigure(Session session, ReplayFrame frame, FigureStyle style) {
    super(style, 0.9);
    this.session = session;
    this.frame = frame;
  }

  @Override
  public String title() {
    String number = session.occasion().peg().number();
    return number == null ? "The peg" : "Peg " + number;
  }

  @Override
  public String description() {
    FigureText words = new FigureText(session, style.units());
    StringBuilder text =
        new StringBuilder(title())
            .append(" at ")
            .append(words.clock(frame.at()))
            .append(", seen from above. ");
    for (Line line : session.lines()) {
      Double distance = line.place().distanceM();
      text.append(line.name());
      text.append(distance == null ? ": place not logged" : ": " + words.distance(line));
      Double bearing = line.place().bearingDegrees();
      if (bearing != null && Math.abs(bearing) >= 1) {
        text.append(", ")
            .append(Math.round(Math.abs(bearing)))
            .append(bearing < 0 ? "° left" : "° right");
      }
      frame
          .line(line.id())
          .ifPresent(
              state -> text.append(", ").append(FigureText.fish(state.fish())).append(" so far"));
      text.append(line.id().equals(frame.fishing()) ? ", being fished. " : ". ");
    }
    return text.toString().strip();
  }

  @Override
  public void paint(Graphics2D g, double width, double height) {
    PegLayout layout = layout(width, height);
    Shape clip = g.getClip();
    // On a slide nothing else clips: an island beyond the picture would lie on the title.
    g.clip(new Rectangle2D.Double(0, 0, width, height));
    layout.paintBase(g);
    layout.paintState(g, frame);
    g.setClip(clip);
  }

  /**
   * Lays the diagram out for a size.
   *
   * @param width pixels, above 0
   * @param height pixels, above 0
   */
  public PegLayout layout(double width, double height) {
    return new PegLayout(session, style, PegLook.ALONE, width, height);
  }

  /** Lays the diagram out so that a pole at its full length reaches a line not placed yet. */
  public PegLayout layoutForPlacing(double width, double height) {
    PegLook look = PegLook.ALONE.withMostPixelsPerMetre(0.9 * height / LONGEST_POLE_M);
    return new PegLayout(session, style, look, width, height);
  }
}
