package org.evenfall.report;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.page.Flow;
import org.evenfall.page.MeanBars;
import org.evenfall.page.Pen;
import org.evenfall.report.ReportContent.Chart;
import org.evenfall.report.ReportContent.Tray;

/**
 * The trays of a test as bars at their true places, with the mean, the bands and the places below.
 *
 * @param chart what is drawn
 * @param withNext whether it stays on one page with what follows
 * @param tag element of the figure, which has the same in words
 */
record ChartPiece(Chart chart, boolean withNext, PDStructureElement tag) implements Flow.Piece {

    /** High enough that the labels of lines 10 % apart do not touch. */
    private static final double HEIGHT = 126;

    private static final double MOST_PERCENT = 140;

    /** Share of the distance to the next tray that a bar takes. */
    private static final double BAR = 0.8;

    /** A bar is not wider than this, share of the width. */
    private static final double WIDEST = 0.09;

    /** Distance between two trays where there is only one, m. */
    private static final double ALONE_M = 1;

    /** Between two labels below the axis. */
    private static final double BETWEEN = 4;

    private double nearestM() {
        return IntStream.range(1, chart.trays().size())
                .mapToDouble(i ->
                        chart.trays().get(i).placeM() - chart.trays().get(i - 1).placeM())
                .filter(distance -> distance > 0)
                .min()
                .orElse(ALONE_M);
    }

    /** The place of a tray, share of the width. */
    private double centre(Tray tray) {
        List<Tray> trays = chart.trays();
        double half = nearestM() / 2;
        double first = trays.get(0).placeM() - half;
        double last = trays.get(trays.size() - 1).placeM() + half;
        return (tray.placeM() - first) / (last - first);
    }

    private MeanBars bars() {
        List<Tray> trays = chart.trays();
        double span = trays.get(trays.size() - 1).placeM() - trays.get(0).placeM() + nearestM();
        double half = Math.min(WIDEST, BAR * nearestM() / span) / 2;
        return new MeanBars(
                trays.stream()
                        .map(tray -> new MeanBars.Bar(centre(tray) - half, centre(tray) + half, tray.percent()))
                        .toList(),
                chart.bands(),
                HEIGHT,
                MOST_PERCENT,
                List.of(ReportStyle.FIGURE),
                tag);
    }

    private static double scaleWidth(Pen pen) throws IOException {
        return pen.width(ReportStyle.NOTE, "100 %") + 4;
    }

    /** The bands are labelled in one column each, nearest first; the mean with the first. */
    private double barsWidth(Pen pen, double width) throws IOException {
        return width - Math.max(1, chart.bands().size()) * scaleWidth(pen);
    }

    @Override
    public double height(Pen pen, double width) throws IOException {
        return bars().height(pen, width)
                + ReportStyle.NOTE.lineHeight()
                + pen.paragraphHeight(ReportStyle.NOTE, width, chart.axis())
                + ReportStyle.GAP;
    }

    @Override
    public double gap() {
        return ReportStyle.GAP;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        MeanBars bars = bars();
        double room = barsWidth(pen, width);
        bars.draw(pen, x, top, room);
        double under = top + bars.height(pen, room);
        pen.mark(tag, () -> {
            scale(pen, bars, x + room + 4, top);
            places(pen, x, under, room);
            pen.paragraph(ReportStyle.NOTE, x, under + ReportStyle.NOTE.lineHeight(), width, chart.axis());
        });
    }

    private void scale(Pen pen, MeanBars bars, double x, double top) throws IOException {
        label(pen, bars, x, top, 100);
        for (int i = 0; i < chart.bands().size(); i++) {
            double left = x + i * scaleWidth(pen);
            label(pen, bars, left, top, 100 - chart.bands().get(i));
            label(pen, bars, left, top, 100 + chart.bands().get(i));
        }
    }

    private static void label(Pen pen, MeanBars bars, double x, double top, double percent) throws IOException {
        double middle = top + bars.below(percent);
        pen.text(ReportStyle.NOTE, x, middle + 0.35 * ReportStyle.NOTE.size(), Math.round(percent) + " %");
    }

    /** The place of each tray below its bar, as far as there is room. */
    private void places(Pen pen, double x, double top, double room) throws IOException {
        double free = x;
        for (Tray tray : chart.trays()) {
            double wide = pen.width(ReportStyle.NOTE, tray.label());
            double left = Math.max(x, x + centre(tray) * room - wide / 2);
            if (left >= free) {
                pen.lines(ReportStyle.NOTE, left, top, List.of(tray.label()));
                free = left + wide + BETWEEN;
            }
        }
    }
}
