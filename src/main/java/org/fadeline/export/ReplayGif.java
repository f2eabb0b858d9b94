package org.fadeline.export;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import org.fadeline.analysis.KnownThen;
import org.fadeline.analysis.Review;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Knowledge;
import org.fadeline.figure.PegFigure;
import org.fadeline.figure.PegLayout;
import org.fadeline.figure.TimelineFigure;
import org.fadeline.figure.TimelineView;
import org.fadeline.figure.Type;
import org.fadeline.io.WholeFile;
import org.fadeline.model.Session;
import org.fadeline.model.WeightText;
import org.fadeline.replay.ReplayTrack;

/** Writes a replay of a stretch of a match, as known at each moment, as an animated GIF. */
public final class ReplayGif {
  /** Share of the work that goes into what was known at each moment. */
  private static final double KNOWING = 0.2;

  /** Even a film of a moment shows so much of the match, milliseconds. */
  private static final long LEAST_SHOWN = 5 * 60_000L;

  private static final String STREAM = "javax_imageio_gif_image_1.0";

  private final Review review;
  private final FigureStyle style;
  private final Film film;
  private final ReplayTrack track;
  private final KnownThen known;
  private final TimelineFigure timeline;

  /**
   * What is filmed.
   *
   * @param from first moment, epoch milliseconds
   * @param to last moment, epoch milliseconds, after {@code from}
   * @param frames how many pictures, in [2, 600]
   * @param framesPerSecond in [1, 25]
   * @param width pixels, in [320, 1920]
   * @param height pixels, in [240, 1080]
   */
  public record Film(
      long from, long to, int frames, double framesPerSecond, int width, int height) {
    /** Checks the ranges. */
    public Film {
      if (to <= from) {
        throw new IllegalArgumentException("a replay must end after it starts");
      }
      between("frames", frames, 2, 600);
      between("frames a second", framesPerSecond, 1, 25);
      between("width", width, 320, 1920);
      between("height", height, 240, 1080);
    }

    private static void between(String what, double value, double low, double high) {
      if (!(value >= low && value <= high)) {
        throw new IllegalArgumentException(
            String.format(Locale.ROOT, "%s must be %.0f to %.0f: %s", what, low, high, value));
      }
    }

    /**
     * Returns the film of a stretch at a speed, as many frames as that takes but at most 600.
     *
     * @param speed match seconds in one second of film, in [0.1, 100000]
     */
    public static Film atSpeed(long from, long to, double speed) {
      if (!(speed >= 0.1 && speed <= 100_000)) {
        throw new IllegalArgumentException("the speed must be 0.1 to 100000: " + speed);
      }
      double seconds = (to - from) / 1000.0 / speed;
      double rate = 10;
      int frames = (int) Math.max(2, Math.min(600, Math.round(seconds * rate)));
      double framesPerSecond = Math.max(1, Math.min(25, frames / Math.max(seconds, 0.1)));
      return new Film(from, to, frames, framesPerSecond, 1280, 720);
    }
  }

  private ReplayGif(Review review, FigureStyle style, Film film, ExportMonitor monitor) {
    this.review = review;
    this.style = style;
    this.film = film;
    this.track = ReplayTrack.of(review.session());
    this.known =
        KnownThen.of(
            review.session(),
            review.settings(),
            style.units(),
            share -> monitor.step(KNOWING * share),
            monitor::isCancelled);
    this.timeline =
        new TimelineFigure(
            review, style, shown(review.session(), film), Knowledge.asKnownAt(film.from()));
  }

  /**
   * Returns what the timeline shows of the match: the stretch filmed with a quarter of its length
   * before it, so that it is seen what led up to it, as large as the picture allows.
   */
  static TimelineView shown(Session session, Film film) {
    TimelineView whole = TimelineView.whole(session);
    long to = Math.max(film.to(), film.from() + LEAST_SHOWN);
    return whole.withRange(
        Math.max(whole.from(), film.from() - (to - film.from()) / 4), Math.min(to, whole.to()));
  }

  /**
   * Writes the film.
   *
   * @throws IOException if the file cannot be written; nothing is then left behind
   * @throws java.util.concurrent.CancellationException if stopped; nothing is then left behind
   */
  public static void write(
      Review review, FigureStyle style, Film film, Path file, ExportMonitor monitor)
      throws IOException {
    WholeFile.write(file, out -> new ReplayGif(review, style, film, monitor).frames(out, monitor));
  }

  private void frames(OutputStream out, ExportMonitor monitor) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.prepareWriteSequence(null);
      for (int i = 0; i < film.frames(); i++) {
        monitor.step(KNOWING + (1 - KNOWING) * i / film.frames());
        long at =
            film.from() + Math.round((film.to() - film.from()) * (double) i / (film.frames() - 1));
        BufferedImage image = frame(at);
        writer.writeToSequence(
            new IIOImage(image, null, metadata(writer, image, i == 0)),
            writer.getDefaultWriteParam());
      }
      writer.endWriteSequence();
      monitor.step(1);
    } finally {
      writer.dispose();
    }
  }

  private BufferedImage frame(long at) {
    BufferedImage image =
        new BufferedImage(film.width(), film.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(style.theme().panel());
    g.fillRect(0, 0, film.width(), film.height());
    double scale = style.textScale();
    double top = 44 * scale;
    double peg = Math.min(film.width() * 0.3, (film.height() - top) * 0.9);
    paintHead(g, at, scale);
    g.translate(0, top);
    PegLayout layout =
        new PegFigure(review.session(), track.frameAt(at), style).layout(peg, film.height() - top);
    layout.paintBase(g);
    layout.paintState(g, track.frameAt(at));
    g.translate(peg, 0);
    timeline
        .as(known.at(at))
        .with(Knowledge.asKnownAt(at))
        .paint(g, film.width() - peg - 8 * scale, film.height() - top);
    g.dispose();
    return image;
  }

  private void paintHead(Graphics2D g, long at, double scale) {
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(style.theme().ink());
    g.setFont(Type.semiBold(24 * scale));
    var clock = review.session().clock(at);
    g.drawString(
        String.format(Locale.ROOT, "%02d:%02d", clock.getHour(), clock.getMinute()),
        (float) (14 * scale),
        (float) (30 * scale));
    var totals = track.frameAt(at).totals();
    String caught =
        (totals.weightG() > 0
                ? WeightText.format(totals.weightG(), style.units().weight()) + ", "
                : "")
            + totals.fish()
            + " fish so far";
    g.setFont(Type.regular(16 * scale));
    g.drawString(caught, (float) (100 * scale), (float) (29 * scale));
  }

  private IIOMetadata metadata(ImageWriter writer, BufferedImage image, boolean first)
      throws IIOInvalidTreeException {
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(
            ImageTypeSpecifier.createFromRenderedImage(image), writer.getDefaultWriteParam());
    IIOMetadataNode root = new IIOMetadataNode(STREAM);
    IIOMetadataNode control = new IIOMetadataNode("GraphicControlExtension");
    control.setAttribute("disposalMethod", "none");
    control.setAttribute("userInputFlag", "FALSE");
    control.setAttribute("transparentColorFlag", "FALSE");
    control.setAttribute(
        "delayTime", Long.toString(Math.max(2, Math.round(100 / film.framesPerSecond()))));
    control.setAttribute("transparentColorIndex", "0");
    root.appendChild(control);
    if (first) {
      // Repeats for ever: the NETSCAPE 2.0 application extension.
      IIOMetadataNode extensions = new IIOMetadataNode("ApplicationExtensions");
      IIOMetadataNode extension = new IIOMetadataNode("ApplicationExtension");
      extension.setAttribute("applicationID", "NETSCAPE");
      extension.setAttribute("authenticationCode", "2.0");
      extension.setUserObject(new byte[] {1, 0, 0});
      extensions.appendChild(extension);
      root.appendChild(extensions);
    }
    metadata.mergeTree(STREAM, root);
    return metadata;
  }
}
