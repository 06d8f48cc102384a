package org.evenfall.report;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Colours;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.report.ReportContent.Notice;

/**
 * Sentences in a frame.
 *
 * @param notice what is printed
 */
record NoticePiece(Notice notice) implements Flow.Piece {

    private static final double INSIDE = 2 * ReportStyle.MM;

    @Override
    public double height(Pen pen, double width) throws IOException {
        return frame(pen, width) + ReportStyle.GAP;
    }

    private double frame(Pen pen, double width) throws IOException {
        double height = 2 * INSIDE;
        for (String line : notice.lines()) {
            height += pen.paragraphHeight(ReportStyle.TEXT, width - 2 * INSIDE, line);
        }
        return height;
    }

    @Override
    public double gap() {
        return ReportStyle.GAP;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        pen.box(x, top, width, frame(pen, width), 0.9, Colours.INK);
        double y = top + INSIDE;
        for (String line : notice.lines()) {
            y = pen.marked(StandardStructureTypes.P, ReportStyle.TEXT, x + INSIDE, y, width - 2 * INSIDE, line);
        }
    }
}
