package org.evenfall.sheet;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Names;

/**
 * Lines to write names on, next to each other.
 *
 * @param names what is printed
 */
record NamesPiece(Names names) implements Flow.Piece {

    private static final double HEIGHT = 9 * SheetStyle.MM;

    @Override
    public double height(Pen pen, double width) {
        return HEIGHT;
    }

    @Override
    public double gap() {
        return SheetStyle.SMALL_GAP;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        double each = width / names.labels().size();
        double base = top + HEIGHT;
        for (int i = 0; i < names.labels().size(); i++) {
            String label = names.labels().get(i);
            double left = x + i * each;
            double labelWidth = pen.width(SheetStyle.TEXT, label) + 1;
            pen.marked(
                    StandardStructureTypes.P,
                    SheetStyle.TEXT,
                    left,
                    base - SheetStyle.TEXT.lineHeight(),
                    labelWidth,
                    label);
            pen.line(
                    left + labelWidth + SheetStyle.SMALL_GAP,
                    base,
                    left + each - SheetStyle.GAP,
                    base,
                    SheetStyle.GREY_FRAME,
                    SheetStyle.BLACK);
        }
    }
}
