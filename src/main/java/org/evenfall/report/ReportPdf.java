package org.evenfall.report;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import org.evenfall.page.Colours;
import org.evenfall.page.NumberedPages;
import org.evenfall.page.SheetSize;

/** The report as tagged pages. The same content and time give the same bytes. */
public final class ReportPdf {

    private ReportPdf() {}

    /**
     * Draws the pages.
     *
     * @param content what is printed
     * @param size size of the paper
     * @param when time of printing
     * @throws IOException when a single block is taller than a page
     */
    public static byte[] draw(ReportContent content, SheetSize size, Instant when) throws IOException {
        return NumberedPages.draw(
                new NumberedPages.Layout(
                        size, ReportStyle.MARGIN, ReportStyle.GAP, ReportStyle.NOTE, Colours.LINE, content::page),
                new NumberedPages.Identity(
                        content.title(),
                        content.language(),
                        when,
                        // from the text: hash codes of an enum differ from run to run
                        content.toString().hashCode() * 31L + when.getEpochSecond()),
                page -> List.of(new NumberedPages.Section(
                        content.foot(), (pen, width) -> ReportPieces.of(pen, content.blocks(), width))));
    }
}
