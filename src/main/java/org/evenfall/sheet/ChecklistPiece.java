package org.evenfall.sheet;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Checklist;

/**
 * Things to tick off, in two columns.
 *
 * @param list what is printed
 */
record ChecklistPiece(Checklist list) implements Flow.Piece {

    private static final double INDENT = SheetStyle.TICK + 2 * SheetStyle.SMALL_GAP;

    private static double columnWidth(double width) {
        return (width - SheetStyle.GAP) / 2;
    }

    /** The lines of the left or the right column. */
    private List<String> column(boolean right) {
        int half = (list.lines().size() + 1) / 2;
        return right
                ? list.lines().subList(half, list.lines().size())
                : list.lines().subList(0, half);
    }

    private static double columnHeight(Pen pen, List<String> lines, double width) throws IOException {
        double height = 0;
        for (String line : lines) {
            height += SheetStyle.SMALL_GAP + pen.paragraphHeight(SheetStyle.TEXT, columnWidth(width) - INDENT, line);
        }
        return height;
    }

    @Override
    public double height(Pen pen, double width) throws IOException {
        return pen.paragraphHeight(SheetStyle.HEADING, width, list.heading())
                + Math.max(columnHeight(pen, column(false), width), columnHeight(pen, column(true), width));
    }

    @Override
    public double gap() {
        return SheetStyle.GAP;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        double under = pen.marked(StandardStructureTypes.H2, SheetStyle.HEADING, x, top, width, list.heading());
        for (boolean right : new boolean[] {false, true}) {
            double left = right ? x + columnWidth(width) + SheetStyle.GAP : x;
            double y = under;
            for (String line : column(right)) {
                y += SheetStyle.SMALL_GAP;
                pen.box(left, y + 1.5, SheetStyle.TICK, SheetStyle.TICK, SheetStyle.GREY_FRAME, SheetStyle.BLACK);
                y = pen.marked(
                        StandardStructureTypes.P, SheetStyle.TEXT, left + INDENT, y, columnWidth(width) - INDENT, line);
            }
        }
    }
}
