package org.fadeline.ui.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The manual's pages, which travel with the program. They are the Markdown files of {@code
 * docs/manual}; the links of its first page set their order.
 */
public final class Manual {
  /** The page that lists the others. */
  public static final String FIRST = "README.md";

  private static final String PLACE = "/org/fadeline/manual/";
  private static final Pattern PAGE = Pattern.compile("\\]\\(([a-z0-9-]+\\.md)\\)");
  private static final Pattern TITLE = Pattern.compile("^# (.+)$", Pattern.MULTILINE);

  /**
   * One page.
   *
   * @param file its file's name, which links use
   * @param title its heading
   * @param markdown its text
   */
  public record Page(String file, String title, String markdown) {}

  private final List<Page> pages = new ArrayList<>();

  /**
   * Reads the pages.
   *
   * @throws UncheckedIOException if the program's own files cannot be read
   */
  public Manual() {
    Page first = read(FIRST).orElseThrow(() -> missing(FIRST));
    pages.add(first);
    Matcher links = PAGE.matcher(first.markdown());
    while (links.find()) {
      String file = links.group(1);
      if (page(file).isEmpty()) {
        pages.add(read(file).orElseThrow(() -> missing(file)));
      }
    }
  }

  /** Returns the pages in the order of the first one's links. */
  public List<Page> pages() {
    return List.copyOf(pages);
  }

  /** Returns the page of a file's name, or empty where there is none. */
  public Optional<Page> page(String file) {
    return pages.stream().filter(p -> p.file().equals(file)).findFirst();
  }

  /** Returns the page about a screen of the given title, or else the first page. */
  public Page about(String screenTitle) {
    String file = screenTitle.toLowerCase(Locale.ROOT).replace(' ', '-') + ".md";
    return page(file).orElse(pages.get(0));
  }

  /** Returns where a picture of the manual is found, or empty where it is missing. */
  public Optional<URL> picture(String path) {
    boolean inside = !path.contains("..") && !path.contains(":") && !path.startsWith("/");
    return inside ? Optional.ofNullable(Manual.class.getResource(PLACE + path)) : Optional.empty();
  }

  private static Optional<Page> read(String file) {
    try (InputStream in = Manual.class.getResourceAsStream(PLACE + file)) {
      if (in == null) {
        return Optional.empty();
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      Matcher title = TITLE.matcher(text);
      return Optional.of(new Page(file, title.find() ? title.group(1) : file, text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static UncheckedIOException missing(String file) {
    return new UncheckedIOException(new IOException("the manual's page " + file + " is missing"));
  }
}
