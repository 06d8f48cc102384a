package org.evenfall.sheet;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Heading;

/**
 * Id and name of a prompt, the small box to tick when it is typed in, and the sentences below.
 *
 * @param heading what is printed
 */
record HeadingPiece(Heading heading) implements Flow.Piece {

    private static final double ABOVE = 2 * SheetStyle.MM;

    /** Side of the box to tick. */
    private static final double TICK = 3.4 * SheetStyle.MM;

    private static final double SPACE = 1.2 * SheetStyle.MM;

    private String title() {
        return heading.promptId() + "  " + heading.name();
    }

    private double tickWidth(Pen pen) throws IOException {
        return TICK + SPACE + pen.width(SheetStyle.LABEL, heading.typedIn()) + 1;
    }

    private double titleWidth(Pen pen, double width) throws IOException {
        return width - tickWidth(pen) - SheetStyle.GAP;
    }

    private double titleHeight(Pen pen, double width) throws IOException {
        return Math.max(TICK, pen.paragraphHeight(SheetStyle.HEADING, titleWidth(pen, width), title()));
    }

    @Override
    public double height(Pen pen, double width) throws IOException {
        double height = titleHeight(pen, width);
        for (String note : heading.notes()) {
            height += pen.paragraphHeight(SheetStyle.TEXT, width, note);
        }
        return height;
    }

    @Override
    public double gap() {
        return ABOVE;
    }

    @Override
    public boolean withNext() {
        return true;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        pen.marked(StandardStructureTypes.H2, SheetStyle.HEADING, x, top, titleWidth(pen, width), title());
        double tick = x + width - tickWidth(pen);
        pen.box(tick, top, TICK, TICK, SheetStyle.GREY_FRAME, SheetStyle.BLACK);
        double label = tick + TICK + SPACE;
        pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, label, top - 0.5, x + width - label, heading.typedIn());
        double y = top + titleHeight(pen, width);
        for (String note : heading.notes()) {
            y = pen.marked(StandardStructureTypes.P, SheetStyle.TEXT, x, y, width, note);
        }
    }
}
