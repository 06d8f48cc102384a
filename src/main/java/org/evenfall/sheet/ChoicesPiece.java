package org.evenfall.sheet;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.sheet.SheetContent.Choice;

/**
 * Things to look at with their answers to tick: in two columns, read down; or one by itself in a frame.
 *
 * @param choices what is looked at
 * @param alone whether it is one by itself, which comes before the others
 */
record ChoicesPiece(List<Choice> choices, boolean alone) implements Flow.Piece {

    /** Side of a box to tick. */
    private static final double TICK = 4.6 * SheetStyle.MM;

    private static final double SPACE = 1.2 * SheetStyle.MM;

    /** From one answer to the next. */
    private static final double BETWEEN = 3 * SheetStyle.MM;

    private static final double INSIDE = 1.6 * SheetStyle.MM;

    private double columnWidth(double width) {
        return alone ? width - 2 * INSIDE : (width - 2 * SheetStyle.GAP) / 2;
    }

    /** The lines of the left or the right column. */
    private List<Choice> column(boolean right) {
        int half = (choices.size() + 1) / 2;
        return right ? choices.subList(half, choices.size()) : choices.subList(0, half);
    }

    private static double answersWidth(Pen pen, Choice choice) throws IOException {
        double width = 0;
        for (String answer : choice.answers()) {
            width += TICK + SPACE + pen.width(SheetStyle.LABEL, answer) + BETWEEN;
        }
        return width;
    }

    private static double lineHeight(Pen pen, Choice choice, double width) throws IOException {
        double label = pen.paragraphHeight(SheetStyle.TEXT, width - answersWidth(pen, choice), choice.label());
        return Math.max(TICK, label) + 2 * SheetStyle.SMALL_GAP;
    }

    private double columnHeight(Pen pen, boolean right, double width) throws IOException {
        double height = 0;
        for (Choice choice : column(right)) {
            height += lineHeight(pen, choice, columnWidth(width));
        }
        return height;
    }

    @Override
    public double height(Pen pen, double width) throws IOException {
        return Math.max(columnHeight(pen, false, width), columnHeight(pen, true, width)) + (alone ? INSIDE : 0);
    }

    @Override
    public double gap() {
        return SheetStyle.SMALL_GAP;
    }

    @Override
    public boolean withNext() {
        return alone;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        if (alone) {
            pen.box(x, top, width, height(pen, width), SheetStyle.FRAME, SheetStyle.BLACK);
        }
        double each = columnWidth(width);
        for (boolean right : new boolean[] {false, true}) {
            double left = alone ? x + INSIDE : right ? x + each + 2 * SheetStyle.GAP : x;
            double y = alone ? top + INSIDE / 2 : top;
            for (Choice choice : column(right)) {
                double height = lineHeight(pen, choice, each);
                line(pen, choice, left, y, each, height);
                y += height;
            }
        }
    }

    private static void line(Pen pen, Choice choice, double x, double top, double width, double height)
            throws IOException {
        double answers = answersWidth(pen, choice);
        double label = pen.paragraphHeight(SheetStyle.TEXT, width - answers, choice.label());
        pen.marked(
                StandardStructureTypes.P,
                SheetStyle.TEXT,
                x,
                top + (height - label) / 2,
                width - answers,
                choice.label());
        double left = x + width - answers + BETWEEN;
        for (String answer : choice.answers()) {
            pen.box(left, top + (height - TICK) / 2, TICK, TICK, SheetStyle.FRAME, SheetStyle.BLACK);
            left += TICK + SPACE;
            double wide = pen.width(SheetStyle.LABEL, answer) + 1;
            pen.marked(
                    StandardStructureTypes.P,
                    SheetStyle.LABEL,
                    left,
                    top + (height - SheetStyle.LABEL.lineHeight()) / 2,
                    wide,
                    answer);
            left += wide - 1 + BETWEEN;
        }
    }
}
