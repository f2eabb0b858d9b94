package org.fadeline.ui.talk;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.standard.OrientationRequested;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.Orientation;
import org.apache.pdfbox.printing.PDFPageable;

/** Prints a PDF; every method may take long. */
final class TalkPrinting {
  private TalkPrinting() {}

  /** Returns the printers known to this computer, the usual one first. */
  static List<PrintService> printers() {
    PrintService usual = PrintServiceLookup.lookupDefaultPrintService();
    return Arrays.stream(PrintServiceLookup.lookupPrintServices(null, null))
        .sorted((a, b) -> Boolean.compare(b.equals(usual), a.equals(usual)))
        .toList();
  }

  /**
   * Prints every page.
   *
   * @throws IOException if the PDF cannot be read or the printer refuses
   */
  static void print(Path pdf, PrintService printer) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PrinterJob job = PrinterJob.getPrinterJob();
      job.setPrintService(printer);
      job.setJobName(String.valueOf(pdf.getFileName()));
      job.setPageable(new PDFPageable(document, Orientation.LANDSCAPE));
      HashPrintRequestAttributeSet wishes = new HashPrintRequestAttributeSet();
      wishes.add(OrientationRequested.LANDSCAPE);
      job.print(wishes);
    } catch (PrinterException refused) {
      throw new IOException(printer.getName() + " refused: " + refused.getMessage(), refused);
    }
  }
}
