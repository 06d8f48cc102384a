package org.evenfall.sheet;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Notice;

/**
 * Sentences in a frame.
 *
 * @param notice what is printed
 */
record NoticePiece(Notice notice) implements Flow.Piece {

    private static final double INSIDE = 2 * SheetStyle.MM;

    @Override
    public double height(Pen pen, double width) throws IOException {
        double inside = width - 2 * INSIDE;
        double height = 2 * INSIDE + pen.paragraphHeight(SheetStyle.HEADING, inside, notice.heading());
        for (String line : notice.lines()) {
            height += SheetStyle.SMALL_GAP + pen.paragraphHeight(SheetStyle.TEXT, inside, line);
        }
        return height;
    }

    @Override
    public double gap() {
        return SheetStyle.GAP;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        pen.box(x, top, width, height(pen, width), SheetStyle.FRAME, SheetStyle.BLACK);
        double inside = width - 2 * INSIDE;
        double left = x + INSIDE;
        double y =
                pen.marked(StandardStructureTypes.H2, SheetStyle.HEADING, left, top + INSIDE, inside, notice.heading());
        for (String line : notice.lines()) {
            y = pen.marked(StandardStructureTypes.P, SheetStyle.TEXT, left, y + SheetStyle.SMALL_GAP, inside, line);
        }
    }
}
