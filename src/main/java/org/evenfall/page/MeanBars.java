package org.evenfall.page;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.jspecify.annotations.Nullable;

/**
 * Bars against their mean, with a line at the mean and dashed lines to either side of it.
 *
 * @param bars the bars from left to right
 * @param bands distance of the dashed lines from the mean, %
 * @param height height of the highest bar that is not cut, points
 * @param mostPercent a taller bar is cut there; its number is printed all the same, % of the mean
 * @param figures styles in which the number of a bar may be written, the largest first
 * @param tag element of the figure, which has the same in words
 */
public record MeanBars(
        List<Bar> bars,
        List<Double> bands,
        double height,
        double mostPercent,
        List<TextStyle> figures,
        PDStructureElement tag)
        implements Flow.Piece {

    /** Space above the highest bar. */
    private static final double ABOVE = 2;

    /** Space below the base line. */
    private static final double BELOW = 4;

    /** Copies the lists. */
    public MeanBars {
        bars = List.copyOf(bars);
        bands = List.copyOf(bands);
        figures = List.copyOf(figures);
    }

    /**
     * One bar.
     *
     * @param from left edge, share of the width, from 0
     * @param to right edge, share of the width, up to 1
     * @param percent its height, % of the mean
     */
    public record Bar(double from, double to, double percent) {}

    @Override
    public double height(Pen pen, double width) {
        return height + ABOVE + BELOW;
    }

    /** Distance of a value from the top of the piece. */
    public double below(double percent) {
        return height + ABOVE - percent * height / mostPercent;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        double scale = height / mostPercent;
        double base = top + height + ABOVE;
        TextStyle style = style(pen, width);
        pen.mark(tag, () -> {
            for (Bar bar : bars) {
                double tall = Math.min(mostPercent, bar.percent()) * scale;
                double left = x + bar.from() * width;
                double wide = (bar.to() - bar.from()) * width;
                pen.fill(left, base - tall, wide, tall, Colours.ACCENT);
                if (style != null) {
                    figure(pen, style, left + wide / 2, base, tall, bar.percent());
                }
            }
            pen.line(x, base, x + width, base, 0.8, Colours.INK);
            pen.line(x, base - 100 * scale, x + width, base - 100 * scale, 0.9, Colours.INK);
            for (double band : bands) {
                dashed(pen, x, base - (100 - band) * scale, width);
                dashed(pen, x, base - (100 + band) * scale, width);
            }
        });
    }

    /** The largest style in which a number fits into every bar; null for none. */
    private @Nullable TextStyle style(Pen pen, double width) throws IOException {
        for (TextStyle style : figures) {
            double needed = pen.width(style, "100");
            if (bars.stream().allMatch(bar -> needed < (bar.to() - bar.from()) * width)) {
                return style;
            }
        }
        return null;
    }

    /** The number in the bar, or above it where the bar is too low. */
    private static void figure(Pen pen, TextStyle style, double middle, double base, double tall, double percent)
            throws IOException {
        String text = Long.toString(Math.round(percent));
        double left = middle - pen.width(style, text) / 2;
        boolean in = tall > style.size() + 4;
        pen.text(style.in(in ? Color.WHITE : Colours.INK), left, in ? base - 5 : base - tall - 4, text);
    }

    private static void dashed(Pen pen, double x, double y, double width) throws IOException {
        for (double at = 0; at < width; at += 6) {
            pen.line(x + at, y, x + Math.min(width, at + 3), y, 0.5, Colours.INK);
        }
    }
}
