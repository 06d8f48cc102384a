package org.evenfall.page;

import java.awt.GraphicsEnvironment;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** Sends a PDF file to a printer of the system, at 100 %, each page on a sheet of its own size. */
public final class PagePrinter {

    private PagePrinter() {}

    /**
     * Shows the system's own dialog and prints.
     *
     * @param pdf bytes of the file
     * @param jobName name in the printer's queue
     * @return false when the person cancelled
     * @throws NoPrinter when there is no printer or no display
     * @throws IOException when the printer refuses, or the bytes are no PDF file
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

    /** Pages at their actual size, each on a sheet of its own size, never scaled to another. */
    static PrinterJob job(PDDocument document, String jobName) {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName(jobName);
        job.setPageable(new PDFPageable(document));
        return job;
    }
}
