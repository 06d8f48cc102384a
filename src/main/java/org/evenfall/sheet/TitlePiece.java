package org.evenfall.sheet;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Part;

/**
 * Title of a sheet and what its frames mean.
 *
 * @param part the sheet
 */
record TitlePiece(Part part) implements Flow.Piece {

    /** From the last line to the rule below it, and from the rule to what follows. */
    private static final double RULE = 3;

    @Override
    public double height(Pen pen, double width) throws IOException {
        return pen.paragraphHeight(SheetStyle.TITLE, width, part.title())
                + pen.paragraphHeight(SheetStyle.LABEL, width, part.legend())
                + 2 * RULE;
    }

    @Override
    public boolean withNext() {
        return true;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        double under = pen.marked(StandardStructureTypes.H1, SheetStyle.TITLE, x, top, width, part.title());
        double line = pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, x, under, width, part.legend()) + RULE;
        pen.line(x, line, x + width, line, 1.6, SheetStyle.BLACK);
    }
}
