package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.ExpectedCv;
import org.evenfall.trays.FieldCv;
import org.jspecify.annotations.Nullable;

/**
 * How even the last test is: its trays as bars in percent of their mean over the scale of the field CV with the limits,
 * its interval, the earlier tests and what is expected after the move.
 */
public final class VerdictPicture extends Picture {

    /** Usual and highest end of the scale, %. */
    private static final double END_PERCENT = 35;

    private static final double MOST_PERCENT = 100;
    private static final double STEP_PERCENT = 5;

    /** Heights, em: a row with its words, a row of an earlier test, the axis. */
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
        new PercentBars(brush, words, last().evenness()).draw(width, top, top + barsHigh);
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
