package org.fadeline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.compare.Comparer;
import org.fadeline.analysis.compare.ComparisonSetup;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.analysis.season.SeasonFilter;
import org.fadeline.analysis.season.SessionSummaries;
import org.fadeline.figure.Figure;
import org.fadeline.figure.FigureStyle;
import org.fadeline.figure.Theme;
import org.fadeline.io.ReadOptions;
import org.fadeline.io.open.SessionFiles;
import org.fadeline.model.Session;
import org.fadeline.model.SessionEvent;
import org.fadeline.model.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * Every figure, drawn again and held against the picture of it that was looked at and kept. Where
 * one differs, the picture drawn stands in {@code target/figure-images}, and beside it, named
 * {@code -difference}, what differs in red on the kept one made pale; where the change was meant,
 * look at it and keep the new ones by
 *
 * <pre>mvn -q surefire:test -Dtest=FigureImagesTest -Dfigures.keep=true</pre>
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FigureImagesTest {
  private static final Path KEPT = Path.of("src/test/resources/figure-images");
  private static final Path DRAWN = Path.of("target/figure-images");
  private static final int WIDTH = 640;
  private static final int BLOCK = 16;
  private static final int DIFFERENT = new Color(0xD0, 0x10, 0x10).getRGB();

  /** Another rasteriser moves the edges of letters by this much, of 255, and not by more. */
  private static final int EDGE = 72;

  /** Share of a block's pixels that may differ by more. */
  private static final double MOST_OF_A_BLOCK = 0.05;

  private final Review first = review("quillthorn-first-open.session.json");
  private final Review second = review("quillthorn-second-open.session.json");

  private static Review review(String sample) {
    Session session =
        SessionFiles.read(Path.of("sample-sessions", sample), ReadOptions.DEFAULT)
            .session()
            .orElseThrow();
    return Reviewer.review(session, ReviewSettings.DEFAULT);
  }

  private Map<String, Figure> figures() {
    Units units = Units.LB_OZ_AND_METRES;
    Map<String, Figure> all = new LinkedHashMap<>();
    FigureStyle light = FigureStyle.of(Theme.LIGHT, units);
    ReviewFigureSet.of(first, light).entrySet().stream()
        .filter(figure -> !figure.getKey().matches("(rate|feed-response)-[3-9].*"))
        .forEach(figure -> all.put(figure.getKey(), figure.getValue()));
    for (Theme theme : List.of(Theme.DARK, Theme.HIGH_CONTRAST, Theme.PROJECTOR)) {
      Map<String, Figure> set = ReviewFigureSet.of(first, FigureStyle.of(theme, units));
      for (String name : List.of("timeline", "peg", "first-bites")) {
        all.put(
            name + "-" + theme.name().toLowerCase(Locale.ROOT),
            Objects.requireNonNull(set.get(name)));
      }
    }
    all.put(
        "timeline-moves-and-fish", timeline(review("evening-moves-and-fish.session.json"), light));
    all.putAll(
        CompareFigureSet.of(
            Comparer.compare(
                first, second, ComparisonSetup.usual(first.session(), second.session()), units),
            light));
    List<Review> season =
        List.of(
            first,
            second,
            review("brackwith-spring.session.json"),
            review("ostlerby-winter.session.json"),
            review("evening-moves-and-fish.session.json"));
    SeasonFigureSet.of(
            SeasonBuilder.build(
                season.stream().map(SessionSummaries::whole).toList(), SeasonFilter.ALL),
            light)
        .forEach((name, figure) -> all.put("season-" + name.replaceFirst("^season-", ""), figure));
    return all;
  }

  private static BufferedImage draw(Figure figure) {
    int height = (int) Math.round(WIDTH / figure.aspect());
    BufferedImage image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.drawImage(FigureExport.draw(figure, new FigureExport.Raster(WIDTH, height, 96)), 0, 0, null);
    g.dispose();
    return image;
  }

  /** Returns the share of the worst block's pixels that differ by more than an edge does. */
  static double worstBlock(BufferedImage a, BufferedImage b) {
    if (a.getWidth() != b.getWidth() || a.getHeight() != b.getHeight()) {
      return 1;
    }
    double worst = 0;
    for (int y = 0; y < a.getHeight(); y += BLOCK) {
      for (int x = 0; x < a.getWidth(); x += BLOCK) {
        worst = Math.max(worst, block(a, b, x, y));
      }
    }
    return worst;
  }

  private static double block(BufferedImage a, BufferedImage b, int left, int top) {
    int right = Math.min(a.getWidth(), left + BLOCK);
    int bottom = Math.min(a.getHeight(), top + BLOCK);
    int differ = 0;
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        differ += differs(a.getRGB(x, y), b.getRGB(x, y)) ? 1 : 0;
      }
    }
    return differ / (double) ((right - left) * (bottom - top));
  }

  private static boolean differs(int first, int second) {
    Color one = new Color(first);
    Color other = new Color(second);
    return Math.abs(one.getRed() - other.getRed()) > EDGE
        || Math.abs(one.getGreen() - other.getGreen()) > EDGE
        || Math.abs(one.getBlue() - other.getBlue()) > EDGE;
  }

  /**
   * Returns the kept picture made pale, what differs in it or lies beyond one of the two in red.
   */
  static BufferedImage difference(BufferedImage kept, BufferedImage drawn) {
    int width = Math.max(kept.getWidth(), drawn.getWidth());
    int height = Math.max(kept.getHeight(), drawn.getHeight());
    BufferedImage shows = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        boolean both = holds(kept, x, y) && holds(drawn, x, y);
        boolean same = both && !differs(kept.getRGB(x, y), drawn.getRGB(x, y));
        shows.setRGB(x, y, same ? pale(kept.getRGB(x, y)) : DIFFERENT);
      }
    }
    return shows;
  }

  private static boolean holds(BufferedImage image, int x, int y) {
    return x < image.getWidth() && y < image.getHeight();
  }

  private static int pale(int rgb) {
    Color ink = new Color(rgb);
    int grey = 191 + (ink.getRed() + ink.getGreen() + ink.getBlue()) / 12;
    return new Color(grey, grey, grey).getRGB();
  }

  /** The difference shows where it is and nowhere else, also where the size has changed. */
  @Test
  void theDifferenceIsRedWhereThePicturesDiffer() {
    BufferedImage kept = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
    BufferedImage drawn = new BufferedImage(4, 2, BufferedImage.TYPE_INT_RGB);
    drawn.setRGB(1, 1, Color.WHITE.getRGB());
    BufferedImage shows = difference(kept, drawn);
    List<String> red = new ArrayList<>();
    for (int y = 0; y < 2; y++) {
      for (int x = 0; x < 4; x++) {
        if (shows.getRGB(x, y) == DIFFERENT) {
          red.add(x + "," + y);
        }
      }
    }
    assertEquals(List.of("3,0", "1,1", "3,1"), red);
  }

  @Test
  void everyFigureLooksAsItDidWhenItWasKept() throws IOException {
    boolean keep = Boolean.getBoolean("figures.keep");
    Files.createDirectories(keep ? KEPT : DRAWN);
    List<String> changed = new ArrayList<>();
    Map<String, Figure> figures = figures();
    for (Map.Entry<String, Figure> entry : figures.entrySet()) {
      String name = entry.getKey() + ".png";
      BufferedImage drawn = draw(entry.getValue());
      Path kept = KEPT.resolve(name);
      if (keep) {
        ImageIO.write(drawn, "png", kept.toFile());
        continue;
      }
      BufferedImage before = Files.exists(kept) ? ImageIO.read(kept.toFile()) : null;
      double worst = before == null ? 1 : worstBlock(before, drawn);
      if (worst > MOST_OF_A_BLOCK) {
        ImageIO.write(drawn, "png", DRAWN.resolve(name).toFile());
        if (before != null) {
          Path shows = DRAWN.resolve(entry.getKey() + "-difference.png");
          ImageIO.write(difference(before, drawn), "png", shows.toFile());
        }
        changed.add(String.format(Locale.ROOT, "%s (%.0f%% of a block)", name, 100 * worst));
      }
    }
    assertEquals(List.of(), changed, "drawn anew in " + DRAWN);
    assertEquals(new TreeSet<>(names(figures)), new TreeSet<>(kept()), "a picture of each figure");
  }

  private static List<String> names(Map<String, Figure> figures) {
    return figures.keySet().stream().map(name -> name + ".png").toList();
  }

  private static List<String> kept() throws IOException {
    try (Stream<Path> files = Files.list(KEPT)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  /** A test of pictures is worth what it notices: one mark, one line's hue, one letter. */
  @Test
  void aSingleMarkThatGoesIsNoticed() {
    FigureStyle style = FigureStyle.of(Theme.LIGHT, Units.LB_OZ_AND_METRES);
    BufferedImage whole = draw(timeline(first, style));
    assertEquals(0, worstBlock(whole, draw(timeline(first, style))));
    Session session = first.session();
    Map<String, Double> noticed = new TreeMap<>();
    for (SessionEvent gone : session.events()) {
      if (gone instanceof SessionEvent.Lost) {
        List<SessionEvent> rest =
            session.events().stream().filter(e -> !e.id().equals(gone.id())).toList();
        Review without = Reviewer.review(session.withEvents(rest), first.settings());
        noticed.put(gone.id(), worstBlock(whole, draw(timeline(without, style))));
      }
    }
    assertFalse(noticed.isEmpty());
    assertTrue(
        noticed.values().stream().allMatch(share -> share > MOST_OF_A_BLOCK), noticed.toString());
  }

  private static Figure timeline(Review review, FigureStyle style) {
    return Objects.requireNonNull(ReviewFigureSet.of(review, style).get("timeline"));
  }
}
