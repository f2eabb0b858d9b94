package org.fadeline.ui.window;

import java.net.URL;
import java.util.List;
import java.util.Objects;
import javafx.scene.image.Image;

/** The program's own icon, in the sizes that systems ask for. */
final class AppIcon {
  private static final List<Integer> SIZES = List.of(32, 64, 256);

  private AppIcon() {}

  static List<Image> images() {
    return SIZES.stream().map(AppIcon::image).toList();
  }

  private static Image image(int size) {
    URL file = AppIcon.class.getResource("/org/fadeline/ui/icons/fadeline-" + size + ".png");
    return new Image(Objects.requireNonNull(file, "the icon").toExternalForm());
  }
}
