package org.evenfall.card;

import java.awt.GraphicsEnvironment;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** Sends a card to a printer of the system, at 100 %, each page on a sheet of its own size. */
public final class CardPrinter {

    private CardPrinter() {}

    /**
     * Asks by the system's own dialog and prints.
     *
     * @return false when the person cancelled
     * @throws NoPrinter when there is none
     * @throws IOException when it refuses
     */
    public static boolean print(byte[] pdf, String jobName) throws IOException {
        if (GraphicsEnvironment.isHeadless()) {
            throw new NoPrinter("no display for the printer's dialog");
        }
        if (PrinterJob.lookupPrintServices().length == 0) {
            throw new NoPrinter("the system knows no printer");
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrinterJob job = job(document, jobName);
            if (!job.printDialog()) {
                return false;
            }
            job.print();
            return true;
        } catch (PrinterException refused) {
            throw new IOException(refused.getMessage(), refused);
        }
    }

    /** Pages at their actual size, each on a sheet of its own size, never fitted to another. */
    static PrinterJob job(PDDocument document, String jobName) {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName(jobName);
        job.setPageable(new PDFPageable(document));
        return job;
    }
}
