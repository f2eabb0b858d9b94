package org.fadeline.export;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.apache.fontbox.ttf.HeaderTable;
import org.apache.fontbox.ttf.NameRecord;
import org.apache.fontbox.ttf.NamingTable;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.poi.common.usermodel.fonts.FontCharset;
import org.apache.poi.common.usermodel.fonts.FontFamily;
import org.apache.poi.common.usermodel.fonts.FontInfo;
import org.apache.poi.common.usermodel.fonts.FontPitch;
import org.apache.poi.xslf.usermodel.XMLSlideShow;
import org.fadeline.figure.Type;
import org.openxmlformats.schemas.drawingml.x2006.main.CTFontScheme;
import org.openxmlformats.schemas.presentationml.x2006.main.CTEmbeddedFontListEntry;

/**
 * The bundled faces wrapped as slides embed them: Embedded OpenType (W3C submission of 5 March
 * 2008, section 3.1), version 0x00020001, the font as it is, neither compressed nor changed.
 */
final class EmbeddedFace {
  private static final int VERSION = 0x00020001;
  private static final int MAGIC = 0x504C;
  private static final int DEFAULT_CHARSET = 1;
  private static final int FULL_NAME = 4;
  private static final int VERSION_NAME = 5;

  static final FontInfo REGULAR = new Face(Type.REGULAR_FAMILY, 5);
  static final FontInfo SEMI_BOLD = new Face(Type.SEMI_BOLD_FAMILY, 7);

  private EmbeddedFace() {}

  /** A face by name and build, so that who has not got it chooses one that is near. */
  private record Face(String typeface, int weight) implements FontInfo {
    @Override
    public String getTypeface() {
      return typeface;
    }

    @Override
    public FontCharset getCharset() {
      return FontCharset.ANSI;
    }

    @Override
    public FontFamily getFamily() {
      return FontFamily.FF_SWISS;
    }

    @Override
    public FontPitch getPitch() {
      return FontPitch.VARIABLE;
    }

    /** PANOSE as in the faces' own OS/2 tables. */
    @Override
    public byte[] getPanose() {
      return new byte[] {2, 11, (byte) weight, 3, 5, 2, 3, 0, 2, 3};
    }
  }

  /**
   * Puts both weights into slides.
   *
   * @throws IOException if the program is incomplete
   */
  static void embed(XMLSlideShow show) throws IOException {
    show.addFont(new ByteArrayInputStream(of(Type.REGULAR_RESOURCE)));
    show.addFont(new ByteArrayInputStream(of(Type.SEMI_BOLD_RESOURCE)));
    CTFontScheme scheme =
        show.getSlideMasters().get(0).getTheme().getXmlObject().getThemeElements().getFontScheme();
    // What is written anew on the slides is set in the same faces.
    scheme.getMajorFont().getLatin().setTypeface(Type.SEMI_BOLD_FAMILY);
    scheme.getMinorFont().getLatin().setTypeface(Type.REGULAR_FAMILY);
    for (CTEmbeddedFontListEntry entry :
        show.getCTPresentation().getEmbeddedFontLst().getEmbeddedFontList()) {
      // The heavier weight is a family of its own, all of whose text is of that weight.
      if (!entry.isSetRegular()) {
        entry.addNewRegular().setId(entry.getBold().getId());
      }
    }
  }

  /**
   * Returns a bundled face, wrapped.
   *
   * @param resource of {@link Type}
   * @throws IOException if the program is incomplete
   */
  static byte[] of(String resource) throws IOException {
    try (InputStream in = Type.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IOException("the program is incomplete: " + resource + " is missing");
      }
      return wrap(in.readAllBytes());
    }
  }

  private static byte[] wrap(byte[] font) throws IOException {
    try (TrueTypeFont read = new TTFParser().parse(new RandomAccessReadBuffer(font))) {
      byte[] names = names(read.getNaming());
      byte[] about = about(read.getOS2Windows(), read.getHeader());
      int size = 16 + about.length + names.length + font.length;
      ByteBuffer out = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
      out.putInt(size).putInt(font.length).putInt(VERSION).putInt(0);
      return out.put(about).put(names).put(font).array();
    }
  }

  /** From PANOSE to the reserved fields. */
  private static byte[] about(OS2WindowsMetricsTable os2, HeaderTable head) {
    ByteBuffer out = ByteBuffer.allocate(64).order(ByteOrder.LITTLE_ENDIAN);
    out.put(os2.getPanose(), 0, 10);
    out.put((byte) DEFAULT_CHARSET);
    out.put((byte) (os2.getFsSelection() & 1));
    out.putInt(os2.getWeightClass());
    out.putShort(os2.getFsType()).putShort((short) MAGIC);
    out.putInt((int) os2.getUnicodeRange1()).putInt((int) os2.getUnicodeRange2());
    out.putInt((int) os2.getUnicodeRange3()).putInt((int) os2.getUnicodeRange4());
    out.putInt((int) os2.getCodePageRange1()).putInt((int) os2.getCodePageRange2());
    out.putInt((int) head.getCheckSumAdjustment());
    return out.array();
  }

  /** Family, style, version and full name, and no root string: the face goes with any slide. */
  private static byte[] names(NamingTable naming) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (String name :
        new String[] {
          naming.getFontFamily(),
          naming.getFontSubFamily(),
          name(naming, VERSION_NAME),
          name(naming, FULL_NAME),
          ""
        }) {
      byte[] bytes = name.getBytes(StandardCharsets.UTF_16LE);
      out.write(new byte[2]);
      out.write(
          ByteBuffer.allocate(2)
              .order(ByteOrder.LITTLE_ENDIAN)
              .putShort((short) bytes.length)
              .array());
      out.write(bytes);
    }
    return out.toByteArray();
  }

  private static String name(NamingTable naming, int id) {
    String name =
        naming.getName(
            id,
            NameRecord.PLATFORM_WINDOWS,
            NameRecord.ENCODING_WINDOWS_UNICODE_BMP,
            NameRecord.LANGUAGE_WINDOWS_EN_US);
    return name == null ? "" : name;
  }
}
