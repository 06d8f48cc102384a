package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.card.Typefaces.Weight;

/** Open warnings and overrides, each behind a triangle: mind this, in black and white too. */
final class Warnings {

    static final double SIZE = 10.5;
    private static final double MARK = 12;

    private Warnings() {}

    /** Draws as many as fit between top and bottom; returns those that are left. */
    static List<String> draw(Pen pen, List<String> warnings, double x, double top, double width, double bottom)
            throws IOException {
        List<String> left = new ArrayList<>(warnings);
        double y = top;
        while (!left.isEmpty()) {
            double height = pen.paragraphHeight(Weight.BOLD, SIZE, width - MARK, left.get(0));
            if (y + height > bottom) {
                break;
            }
            mark(pen, x, y + SIZE);
            y = pen.paragraph(Weight.BOLD, SIZE, Pen.INK, x + MARK, y, width - MARK, left.get(0)) + 1;
            left.remove(0);
        }
        return left;
    }

    private static void mark(Pen pen, double x, double baseline) throws IOException {
        pen.line(x + 1, baseline, x + 5, baseline - 8, 1.2, Pen.INK);
        pen.line(x + 5, baseline - 8, x + 9, baseline, 1.2, Pen.INK);
        pen.line(x + 1, baseline, x + 9, baseline, 1.2, Pen.INK);
    }
}
