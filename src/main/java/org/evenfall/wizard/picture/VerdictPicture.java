package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.ExpectedCv;
import org.evenfall.trays.FieldCv;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/**
 * How even the last test is: its trays as bars in percent of their mean over the scale of the field CV with the limits,
 * its interval, the earlier tests and what is expected after the move.
 */
public final class VerdictPicture extends Picture {

    private static final double MEAN = 100;

    /** Usual and highest end of the scale, %. */
    private static final double END_PERCENT = 35;

    private static final double MOST_PERCENT = 100;
    private static final double STEP_PERCENT = 5;

    /** Heights, em: under the bars, a row with its words, a row of an earlier test, the axis. */
    private static final double BARS_FOOT_EM = 3.1;

    private static final double ROW_EM = 2.15;
    private static final double EARLIER_EM = 1.25;
    private static final double AXIS_EM = 2.8;

    /** Least height of bars with what is under them, em. */
    private static final double BARS_EM = 9;

    /** Least share of the bars in the height where earlier tests are drawn too. */
    private static final double BARS_SHARE = 0.5;

    private List<TrayTestResult> tests = List.of();
    private @Nullable ExpectedCv expected;

    /** Begins with nothing to show. */
    public VerdictPicture(Sentences words) {
        super(words, 1.1);
        show(List.of(), null);
    }

    /**
     * Draws this.
     *
     * @param results tests that can be read, oldest first; the last one is drawn as bars
     * @param expectedField field CV expected after the move; null without a move
     */
    public void show(List<TrayTestResult> results, @Nullable ExpectedCv expectedField) {
        tests = List.copyOf(results);
        expected = expectedField;
        redraw(tests.isEmpty() ? words.text("picture.verdict.empty") : spoken());
    }

    private TrayTestResult last() {
        return tests.get(tests.size() - 1);
    }

    private String spoken() {
        FieldCv field = last().evenness().field();
        return words.text(
                "picture.cv.spoken",
                Arg.number(field.medianPercent(), 0, Unit.PERCENT),
                Arg.number(field.lowPercent(), 0, Unit.NONE),
                Arg.number(field.highPercent(), 0, Unit.PERCENT),
                Arg.word("choice.EvennessVerdict." + field.verdict()));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (tests.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.verdict.empty"));
            return;
        }
        double em = brush.em();
        FieldCvScale scale = scale(brush, width, 2);
        if (height - fixed(scale) < BARS_EM * em) {
            scale = scale(brush, width, 1);
        }
        double fixed = fixed(scale);
        double bars = Math.max(BARS_EM * em, BARS_SHARE * height);
        int room = (int) ((height - bars - fixed) / (EARLIER_EM * em));
        int earlier = Math.max(0, Math.min(tests.size() - 1, room));
        double scaleHigh = fixed + earlier * EARLIER_EM * em;
        double gap = Math.min(2 * em, Math.max(0, 0.06 * (height - scaleHigh)));
        double barsHigh = Math.min(height - scaleHigh - gap, 1.1 * width);
        double top = (height - scaleHigh - gap - barsHigh) / 2;
        bars(brush, width, top, top + barsHigh);
        scale(scale, top + barsHigh + gap, earlier, top + barsHigh + gap + scaleHigh - AXIS_EM * em);
    }

    private FieldCvScale scale(Brush brush, double width, int wordRows) {
        double edge = 1.4 * brush.em();
        return new FieldCvScale(brush, words, new Scale(0, end(), edge, width - edge), wordRows);
    }

    /** Height of the scale without earlier tests, px. */
    private double fixed(FieldCvScale scale) {
        return scale.wordsHigh()
                + (ROW_EM * (expected == null ? 1 : 2) + 0.4 + AXIS_EM)
                        * scale.brush().em();
    }

    /** The scale goes on where the last test would be off it. */
    private double end() {
        double median = last().evenness().field().medianPercent();
        return Math.max(END_PERCENT, Math.min(MOST_PERCENT, STEP_PERCENT * Math.ceil(1.1 * median / STEP_PERCENT)));
    }

    private void bars(Brush brush, double width, double top, double foot) {
        double em = brush.em();
        Uniformity evenness = last().evenness();
        double highest = 1.2 * MEAN;
        for (double relative : evenness.relativePercent()) {
            highest = Math.max(highest, relative);
        }
        Scale up = new Scale(0, highest, foot - BARS_FOOT_EM * em, top + 1.4 * em);
        double left = BarsAcross.levelsWide(brush, words) + 0.1 * em;
        double right = width - 0.4 * em;
        BarsAcross bars = BarsAcross.of(brush, List.of(evenness.positionsM()), left, right, up);
        bars.bands(MEAN, left, right);
        bars.levels(BarsAcross.levels(MEAN, words), left - 0.4 * em, TextAlignment.RIGHT);
        List<BarTops.Top> tops = new ArrayList<>();
        for (int i = 0; i < evenness.trays(); i++) {
            double relative = evenness.relativePercent().get(i);
            double place = evenness.positionsM().get(i);
            bars.bar(place, relative, 0, Palette.faint(brush.palette().straw(), 0.75), null);
            tops.add(new BarTops.Top(place, relative, words.number(relative, 0, Unit.NONE)));
        }
        bars.mean(MEAN, left, right);
        bars.floor(left, right);
        BarTops numbers = new BarTops(bars, tops);
        // the furthest from the mean first
        tops.stream()
                .sorted(Comparator.comparingDouble(one -> -Math.abs(one.value() - MEAN)))
                .forEach(one -> numbers.number(
                        one, brush.note().heavy().in(brush.palette().ink())));
        new TrayPlaces(brush, words, evenness.positionsM()).draw(up.start(), bars.across());
        String whole = words.text("picture.verdict.axis");
        boolean fits = brush.width(whole, brush.note()) < width - 0.4 * em;
        brush.within(
                fits ? whole : words.text("picture.verdict.axisShort"),
                (left + right) / 2,
                up.start() + 2.1 * em,
                brush.note(),
                TextAlignment.CENTER,
                0.2 * em,
                width - 0.2 * em);
    }

    private void scale(FieldCvScale scale, double top, int earlier, double floor) {
        Brush brush = scale.brush();
        double em = brush.em();
        Palette palette = brush.palette();
        double y = scale.bands(top, floor);
        FieldCv field = last().evenness().field();
        scale.label(label(field), field.medianPercent(), y + 0.5 * em, palette.ink());
        scale.estimate(field.medianPercent(), field.intervalPercent(), y + 1.45 * em, palette.ink(), false);
        y += ROW_EM * em;
        ExpectedCv after = expected;
        if (after != null) {
            String text = words.text(
                    "picture.verdict.expected",
                    Arg.number(after.percent(), 0, Unit.PERCENT),
                    Arg.number(after.intervalPercent().low(), 0, Unit.NONE),
                    Arg.number(after.intervalPercent().high(), 0, Unit.PERCENT));
            String fitting = scale.fits(text)
                    ? text
                    : words.text("picture.verdict.expectedShort", Arg.number(after.percent(), 0, Unit.PERCENT));
            scale.label(fitting, after.percent(), y + 0.5 * em, palette.accent());
            scale.estimate(after.percent(), after.intervalPercent(), y + 1.45 * em, palette.accent(), true);
            y += ROW_EM * em;
        }
        for (int back = 1; back <= earlier; back++) {
            earlier(scale, tests.get(tests.size() - 1 - back), y + 0.6 * em);
            y += EARLIER_EM * em;
        }
        new Marks(brush).axis(scale.across(), floor, words.text("picture.verdict.cvAxis"), words);
    }

    private String label(FieldCv field) {
        return words.text(
                "picture.cv.test",
                Arg.count(last().index() + 1L),
                Arg.number(field.medianPercent(), 0, Unit.PERCENT),
                Arg.number(field.lowPercent(), 0, Unit.NONE),
                Arg.number(field.highPercent(), 0, Unit.PERCENT));
    }

    /** A small point with the number of its test at its side. */
    private void earlier(FieldCvScale scale, TrayTestResult test, double y) {
        Brush brush = scale.brush();
        double em = brush.em();
        double median = test.evenness().field().medianPercent();
        String text = words.text(
                "picture.verdict.earlier", Arg.count(test.index() + 1L), Arg.number(median, 0, Unit.PERCENT));
        double x = scale.across().clamped(median);
        new Marks(brush).disc(x, y, 0.24 * em, brush.palette().soft());
        boolean right =
                x + 0.6 * em + brush.width(text, brush.note()) < scale.across().end();
        brush.text(
                text, x + (right ? 0.6 : -0.6) * em, y, brush.note(), right ? TextAlignment.LEFT : TextAlignment.RIGHT);
    }
}
