package org.evenfall.sheet;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Row;

/**
 * One row of boxes, each under its label.
 *
 * @param entries the boxes of the prompt, whose columns the row shares
 * @param index which row, from 0
 * @param withNext whether it stays on one page with what follows
 * @param drawn is given every box
 */
record RowPiece(Entries entries, int index, boolean withNext, PlacedBox.Drawn drawn) implements Flow.Piece {

    private static final double INSIDE = 2 * SheetStyle.MM;

    private Row row() {
        return entries.rows().get(index);
    }

    /** Boxes of the row that are in a line: first and one past the last; none where the first is not below the other. */
    private Columns.Span inLine(Columns.Span line) {
        int from = Math.max(line.from(), row().from());
        return new Columns.Span(
                from, Math.min(line.to(), row().from() + row().boxes().size()));
    }

    private Box box(int column) {
        return row().boxes().get(column - row().from());
    }

    /** Whether labels are drawn: not where the row above has the same ones in the same line. */
    private boolean labelled(Columns columns) {
        if (index == 0 || columns.lines().size() > 1) {
            return true;
        }
        Row above = entries.rows().get(index - 1);
        for (int column = row().from(); column < row().from() + row().boxes().size(); column++) {
            int there = column - above.from();
            if (there < 0
                    || there >= above.boxes().size()
                    || !above.boxes()
                            .get(there)
                            .labelAndUnit()
                            .equals(box(column).labelAndUnit())) {
                return true;
            }
        }
        return false;
    }

    private String label(Box box) {
        return entries.unitsAbove() ? box.labelAndUnit() : box.label();
    }

    private double labelHeight(Pen pen, Columns columns, Columns.Span line) throws IOException {
        double height = 0;
        if (labelled(columns)) {
            for (int column = line.from(); column < line.to(); column++) {
                String label = label(box(column));
                height = Math.max(
                        height,
                        pen.paragraphHeight(SheetStyle.LABEL, columns.widths().get(column), label)
                                + SheetStyle.SMALL_GAP);
            }
        }
        return height;
    }

    private double boxWidth(Pen pen, Columns columns, int column) throws IOException {
        double aside = entries.unitsAbove() ? 0 : Columns.asideWidth(pen, box(column), entries.asSet());
        return columns.widths().get(column) - aside;
    }

    private double boxHeight(Pen pen, Columns columns, Columns.Span line) throws IOException {
        double height = SheetStyle.BOX_HEIGHT;
        for (int column = line.from(); column < line.to(); column++) {
            double inside = boxWidth(pen, columns, column) - INSIDE;
            height = Math.max(
                    height,
                    pen.paragraphHeight(SheetStyle.VALUE, inside, box(column).value()) + INSIDE);
        }
        return height;
    }

    @Override
    public double height(Pen pen, double width) throws IOException {
        Columns columns = Columns.of(pen, entries, width);
        double height = 0;
        for (Columns.Span line : columns.lines()) {
            Columns.Span here = inLine(line);
            if (here.from() < here.to()) {
                height += labelHeight(pen, columns, here) + boxHeight(pen, columns, here) + SheetStyle.SMALL_GAP;
            }
        }
        return height;
    }

    @Override
    public double gap() {
        return SheetStyle.SMALL_GAP;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        Columns columns = Columns.of(pen, entries, width);
        double y = top;
        boolean named = false;
        for (Columns.Span line : columns.lines()) {
            Columns.Span here = inLine(line);
            if (here.from() < here.to()) {
                double labels = labelHeight(pen, columns, here);
                double height = boxHeight(pen, columns, here);
                if (!named && !row().name().isEmpty()) {
                    middle(pen, row().name(), x, y + labels, height);
                    named = true;
                }
                for (int column = here.from(); column < here.to(); column++) {
                    double left = x + columns.left(column, line);
                    if (labels > 0) {
                        label(
                                pen,
                                label(box(column)),
                                left,
                                y + labels,
                                columns.widths().get(column));
                    }
                    frame(pen, box(column), left, y + labels, boxWidth(pen, columns, column), height);
                }
                y += labels + height + SheetStyle.SMALL_GAP;
            }
        }
    }

    /** A label that ends just over its box. */
    private static void label(Pen pen, String text, double x, double bottom, double width) throws IOException {
        double height = pen.paragraphHeight(SheetStyle.LABEL, width, text);
        double top = bottom - height - SheetStyle.SMALL_GAP;
        pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, x, top, width, text);
    }

    private void frame(Pen pen, Box box, double x, double top, double width, double height) throws IOException {
        double thickness = box.skippable() ? SheetStyle.GREY_FRAME : SheetStyle.FRAME;
        pen.box(x, top, width, height, thickness, box.skippable() ? SheetStyle.GREY : SheetStyle.BLACK);
        drawn.at(box, x, top, width, height);
        if (!box.value().isEmpty()) {
            double inside = width - INSIDE;
            List<String> value = pen.wrap(SheetStyle.VALUE, inside, box.value());
            double free = height - value.size() * SheetStyle.VALUE.lineHeight();
            pen.marked(StandardStructureTypes.P, SheetStyle.VALUE, x + INSIDE / 2, top + free / 2, inside, box.value());
        }
        if (entries.unitsAbove()) {
            return;
        }
        double aside = x + width + SheetStyle.SMALL_GAP;
        if (!box.set().isEmpty()) {
            set(pen, box.set(), aside, top, height);
        } else if (!box.unit().isEmpty()) {
            middle(pen, box.unit(), aside, top, height);
        }
    }

    /** What is set now, and below it the tick that it was left so. */
    private void set(Pen pen, String set, double x, double top, double height) throws IOException {
        double line = SheetStyle.SET.lineHeight();
        double first = top + (height - 2 * line) / 2;
        pen.marked(StandardStructureTypes.P, SheetStyle.SET, x, first, pen.width(SheetStyle.SET, set) + 1, set);
        double under = first + line;
        pen.box(x, under + 1.5, SheetStyle.TICK, SheetStyle.TICK, SheetStyle.GREY_FRAME, SheetStyle.BLACK);
        double label = x + SheetStyle.TICK + SheetStyle.SMALL_GAP;
        double wide = pen.width(SheetStyle.LABEL, entries.asSet()) + 1;
        pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, label, under, wide, entries.asSet());
    }

    /** A text at half the height of a box. */
    private static void middle(Pen pen, String text, double x, double top, double height) throws IOException {
        double free = height - SheetStyle.LABEL.lineHeight();
        double width = pen.width(SheetStyle.LABEL, text) + 1;
        pen.marked(StandardStructureTypes.P, SheetStyle.LABEL, x, top + free / 2, width, text);
    }
}
