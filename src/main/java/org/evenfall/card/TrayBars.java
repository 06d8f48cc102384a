package org.evenfall.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.page.Colours;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.TextStyle;
import org.evenfall.trays.CvLimits;
import org.jspecify.annotations.Nullable;

/**
 * Each tray against the mean, with the band of 10 % to either side.
 *
 * @param percent each tray, % of the mean
 * @param tag element of the figure, which has the same in words
 */
record TrayBars(List<Double> percent, PDStructureElement tag) implements Flow.Piece {

    private static final double HEIGHT = 40;

    /** A taller bar is cut at the top; its number is printed all the same, % of the mean. */
    private static final double MOST_PERCENT = 130;

    TrayBars {
        percent = List.copyOf(percent);
    }

    @Override
    public double height(Pen pen, double width) {
        return HEIGHT + 6;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        double scale = HEIGHT / MOST_PERCENT;
        double base = top + HEIGHT + 2;
        double step = width / percent.size();
        TextStyle style = style(pen, 0.8 * step);
        pen.mark(tag, () -> {
            for (int i = 0; i < percent.size(); i++) {
                double height = Math.min(MOST_PERCENT, percent.get(i)) * scale;
                pen.fill(x + i * step + 0.1 * step, base - height, 0.8 * step, height, Colours.ACCENT);
                if (style != null) {
                    figure(pen, style, x + (i + 0.5) * step, base, height, percent.get(i));
                }
            }
            pen.line(x, base, x + width, base, 0.8, Colours.INK);
            pen.line(x, base - 100 * scale, x + width, base - 100 * scale, 0.9, Colours.INK);
            double good = CvLimits.GOOD_PERCENT;
            for (double off : new double[] {100 - good, 100 + good}) {
                dashed(pen, x, base - off * scale, width);
            }
        });
    }

    /** The largest style in which a number fits its bar; null for none. */
    private static @Nullable TextStyle style(Pen pen, double width) throws IOException {
        for (SmallText small : SmallText.SIZES) {
            if (pen.width(small.strong(), "100") < width) {
                return small.strong();
            }
        }
        return null;
    }

    /** The number in the bar, or above it where the bar is too low. */
    private static void figure(Pen pen, TextStyle style, double middle, double base, double height, double percent)
            throws IOException {
        String text = Long.toString(Math.round(percent));
        double left = middle - pen.width(style, text) / 2;
        boolean in = height > style.size() + 4;
        pen.text(style.in(in ? Color.WHITE : Colours.INK), left, in ? base - 5 : base - height - 4, text);
    }

    private static void dashed(Pen pen, double x, double y, double width) throws IOException {
        for (double at = 0; at < width; at += 6) {
            pen.line(x + at, y, x + Math.min(width, at + 3), y, 0.5, Colours.INK);
        }
    }
}
