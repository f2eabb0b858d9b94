package org.fadeline.cli;

import org.fadeline.export.TalkExport;
import org.fadeline.model.talk.Look;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options for pictures of slides. */
final class TalkPictureOptions {
  @Option(
      names = "--width",
      paramLabel = "PIXELS",
      description = "width of PNG pictures (default: 1920, or 1440 for 4:3)")
  private @Nullable Integer width;

  @Option(
      names = "--dpi",
      paramLabel = "DPI",
      description = "dots an inch told in PNG pictures, 36 to 2400 (default: 144)")
  private @Nullable Double dpi;

  /** Returns the size asked for, or throws IllegalArgumentException where it cannot be. */
  TalkExport.Size size(Look.Shape shape) {
    TalkExport.Size usual = TalkExport.Size.usual(shape);
    return new TalkExport.Size(
        width == null ? usual.width() : width, dpi == null ? usual.dpi() : dpi);
  }
}
