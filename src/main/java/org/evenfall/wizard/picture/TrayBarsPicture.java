package org.evenfall.wizard.picture;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.Uniformity;

/**
 * The catches as bars at their true places across the tramline: the last test filled, up to two earlier ones as outlines
 * next to it; the mean as a line, 10 and 15 % off it as bands, the lowest and the highest in words.
 */
public final class TrayBarsPicture extends Picture {

    private static final int COMPARED = 3;
    private static final double OUTER_PERCENT = CvLimits.FIELD_PERCENT;
    private static final double MEAN = 100;
    private static final List<Double> LEVELS = List.of(
            MEAN,
            MEAN + OUTER_PERCENT,
            MEAN - OUTER_PERCENT,
            MEAN + CvLimits.GOOD_PERCENT,
            MEAN - CvLimits.GOOD_PERCENT,
            0.0);

    private List<TrayTestResult> tests = List.of();

    /** Begins with nothing to show. */
    public TrayBarsPicture(Sentences words) {
        super(words, 0.75);
        show(List.of());
    }

    /** @param results tests that can be read, oldest first */
    public void show(List<TrayTestResult> results) {
        tests = List.copyOf(results);
        redraw(tests.isEmpty() ? words.text("picture.bars.empty") : spoken());
    }

    private String spoken() {
        Uniformity last = last();
        return words.text(
                "picture.bars.spoken",
                Arg.count(last.trays()),
                Arg.number(last.relativePercent().get(last.catches().lowestTray()), 0, Unit.PERCENT),
                Arg.number(last.relativePercent().get(last.catches().highestTray()), 0, Unit.PERCENT));
    }

    private Uniformity last() {
        return tests.get(tests.size() - 1).evenness();
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (tests.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.bars.empty"));
            return;
        }
        double em = brush.em();
        List<TrayTestResult> compared = tests.subList(Math.max(0, tests.size() - COMPARED), tests.size());
        double highest = 120;
        for (TrayTestResult test : compared) {
            for (double relative : test.evenness().relativePercent()) {
                highest = Math.max(highest, relative);
            }
        }
        TrayBarsFoot foot = new TrayBarsFoot(brush, words, tests);
        Scale up = new Scale(0, 1.04 * highest, height - foot.high(), 2.8 * em);
        double left = brush.width(
                        words.number(100 + OUTER_PERCENT, 0, Unit.PERCENT),
                        brush.note().heavy())
                + 0.7 * em;
        List<List<Double>> places =
                compared.stream().map(test -> test.evenness().positionsM()).toList();
        BarsAcross bars = BarsAcross.of(brush, places, left, width - 0.3 * em, up);
        Scale across = bars.across();
        double bar = bars.bar();
        bars.bands(MEAN, left, width);
        bars.levels(LEVELS.stream().map(this::level).toList(), left - 0.4 * em, TextAlignment.RIGHT);
        for (int k = 0; k < compared.size(); k++) {
            bars(bars, compared.get(k).evenness(), aside(k, compared.size(), bar), k);
        }
        bars.mean(MEAN, left, width);
        bars.floor(left, width);
        double lastAside = aside(compared.size() - 1, compared.size(), bar);
        shape(brush, up, across, lastAside, foot);
        extremes(brush, up, across, lastAside, left, width);
        foot.draw(up.start(), across, left, width);
    }

    /** How far the middle of a test's bars is from the place of the tray, px. */
    private static double aside(int test, int tests, double bar) {
        return (test - (tests - 1) / 2.0) * bar;
    }

    private BarsAcross.Level level(double percent) {
        return new BarsAcross.Level(percent, words.number(percent, 0, Unit.PERCENT));
    }

    /** The bars of one test; those of the last one filled. */
    private void bars(BarsAcross bars, Uniformity evenness, double aside, int test) {
        Palette palette = bars.brush().palette();
        boolean now = test == Math.min(COMPARED, tests.size()) - 1;
        Color fill = now ? Palette.faint(palette.straw(), 0.75) : Palette.faint(palette.soft(), 0.16);
        for (int i = 0; i < evenness.relativePercent().size(); i++) {
            bars.bar(
                    evenness.positionsM().get(i),
                    evenness.relativePercent().get(i),
                    aside,
                    fill,
                    now ? null : palette.soft());
        }
    }

    /** The shape that is significant, as a line over the bars of the last test. */
    private void shape(Brush brush, Scale up, Scale across, double aside, TrayBarsFoot foot) {
        List<Double> shape = last().shapes().significantPercent();
        if (shape.isEmpty() || foot.shapeText().isEmpty()) {
            return;
        }
        double[] x = IntStream.range(0, shape.size())
                .mapToDouble(i -> across.at(last().positionsM().get(i)) + aside)
                .toArray();
        double[] y = shape.stream().mapToDouble(up::at).toArray();
        brush.polyline(x, y, brush.palette().paper(), 5, false);
        brush.polyline(x, y, brush.palette().warn(), 3, false);
    }

    /** Lowest and highest of the last test, in words at their level. */
    private void extremes(Brush brush, Scale up, Scale across, double aside, double left, double width) {
        double em = brush.em();
        for (boolean highest : new boolean[] {false, true}) {
            int tray =
                    highest ? last().catches().highestTray() : last().catches().lowestTray();
            double relative = last().relativePercent().get(tray);
            double y = highest ? 0.8 * em : 2 * em;
            double x = across.at(last().positionsM().get(tray)) + aside;
            brush.line(x, y + 0.6 * em, x, up.at(relative) - 2, brush.palette().ink(), 1);
            brush.onPaper(
                    words.text(
                            highest ? "picture.bars.highest" : "picture.bars.lowest",
                            Arg.number(relative, 0, Unit.PERCENT)),
                    x,
                    y,
                    brush.note().heavy().in(brush.palette().ink()),
                    TextAlignment.CENTER,
                    left,
                    width - 0.2 * em);
        }
    }
}
