package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.result.SourceText;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.Advice;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.ExpectedCv;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** Field CV of each test with its 90 % interval on one axis from 0 to 30 %, the bands at 10, 15 and 20 % named. */
public final class CvPicture extends Picture {

    private static final double END_PERCENT = 30;
    private static final double[] BOUNDS = {
        0, CvLimits.GOOD_PERCENT, CvLimits.FIELD_PERCENT, CvLimits.STRIPES_PERCENT, END_PERCENT
    };

    /** Names of the bands in the bundle; the verdict follows the chance, so that no band has its name. */
    private static final List<String> BANDS = List.of(
            "picture.cv.band.good", "picture.cv.band.field", "picture.cv.band.above", "picture.cv.band.stripes");

    private List<TrayTestResult> tests = List.of();
    private @Nullable Advice advice;

    /** Begins with nothing to show. */
    public CvPicture(Sentences words) {
        super(words, 0.42);
        show(List.of(), null);
    }

    /** @param next advice whose expected CV is drawn as a ring, or null */
    public void show(List<TrayTestResult> results, @Nullable Advice next) {
        tests = List.copyOf(results);
        advice = next;
        redraw(tests.isEmpty() ? words.text("picture.cv.empty") : spoken());
    }

    private String spoken() {
        Uniformity last = tests.get(tests.size() - 1).evenness();
        return words.text(
                "picture.cv.spoken",
                Arg.number(last.field().medianPercent(), 0, Unit.PERCENT),
                Arg.number(last.field().lowPercent(), 0, Unit.NONE),
                Arg.number(last.field().highPercent(), 0, Unit.PERCENT),
                Arg.word("choice.EvennessVerdict." + last.verdict()));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double height = new SourceNote(SourceText.line(words, "source.cvLimits")).draw(brush, width, full);
        double em = brush.em();
        Scale across = new Scale(0, END_PERCENT, 1.4 * em, width - 1.4 * em);
        double floor = height - 2.8 * em;
        double top = bands(brush, across, floor);
        int rows = tests.size() + (expected() == null ? 0 : 1);
        if (tests.isEmpty()) {
            brush.paragraph(
                    words.text("picture.cv.empty"),
                    width / 2,
                    top + 0.4 * em,
                    width - 3 * em,
                    brush.body().in(brush.palette().soft()),
                    TextAlignment.CENTER);
        }
        double row = Math.min(3 * em, (floor - top) / Math.max(1, rows));
        int shown = row < 1.6 * em ? Math.max(1, (int) ((floor - top) / (1.7 * em)) - (rows - tests.size())) : rows;
        row = shown < rows ? (floor - top) / (shown + rows - tests.size()) : row;
        int first = Math.max(0, tests.size() - shown);
        for (int i = first; i < tests.size(); i++) {
            row(brush, across, top + (i - first) * row, row, tests.get(i));
        }
        ExpectedCv expected = expected();
        if (expected != null) {
            double y = top + (tests.size() - first) * row;
            interval(
                    brush,
                    across,
                    y + 0.7 * row,
                    expected.percent(),
                    expected.intervalPercent().low(),
                    expected.intervalPercent().high(),
                    brush.palette().accent(),
                    true);
            label(
                    brush,
                    across,
                    y + 0.25 * row,
                    words.text("picture.cv.expected", Arg.number(expected.percent(), 0, Unit.PERCENT)),
                    expected.percent());
        }
        new Marks(brush).axis(across, floor, words.text("picture.cv.axis"), words);
    }

    private @Nullable ExpectedCv expected() {
        return advice == null ? null : advice.expected();
    }

    /** The named bands; gives the y under their names. */
    private double bands(Brush brush, Scale across, double floor) {
        double em = brush.em();
        Palette palette = brush.palette();
        Color[] colours = {palette.good(), palette.good(), palette.warn(), palette.stop()};
        double[] strength = {0.24, 0.1, 0.13, 0.13};
        boolean narrow = across.length(5) < 5.6 * em;
        double top = narrow ? 2.9 * em : 1.6 * em;
        for (int i = 0; i < BANDS.size(); i++) {
            double from = across.at(BOUNDS[i]);
            double to = across.at(BOUNDS[i + 1]);
            brush.box(from, top, to - from, floor - top, Palette.faint(colours[i], strength[i]));
            if (i > 0) {
                brush.line(from, top, from, floor, palette.paper(), 2);
            }
            // names in two rows where the bands are too narrow for one
            double y = narrow && i % 2 == 1 ? 2.1 * em : 0.9 * em;
            Lettering name = brush.note().heavy().in(colours[i]);
            brush.within(
                    words.text(BANDS.get(i)),
                    (from + to) / 2,
                    y,
                    name,
                    TextAlignment.CENTER,
                    0.2 * em,
                    across.end() + 1.2 * em);
        }
        return top + 0.3 * em;
    }

    private void row(Brush brush, Scale across, double y, double row, TrayTestResult test) {
        Uniformity evenness = test.evenness();
        boolean last = test.equals(tests.get(tests.size() - 1));
        interval(
                brush,
                across,
                y + 0.7 * row,
                evenness.field().medianPercent(),
                evenness.field().lowPercent(),
                evenness.field().highPercent(),
                last ? brush.palette().ink() : brush.palette().soft(),
                false);
        label(
                brush,
                across,
                y + 0.25 * row,
                words.text(
                        "picture.cv.test",
                        Arg.count(test.index() + 1L),
                        Arg.number(evenness.field().medianPercent(), 0, Unit.PERCENT),
                        Arg.number(evenness.field().lowPercent(), 0, Unit.NONE),
                        Arg.number(evenness.field().highPercent(), 0, Unit.PERCENT)),
                evenness.field().medianPercent());
    }

    private void label(Brush brush, Scale across, double y, String text, double at) {
        brush.within(
                text,
                across.clamped(at),
                y,
                brush.note().in(brush.palette().ink()),
                TextAlignment.CENTER,
                across.start() - em(brush),
                across.end() + em(brush));
    }

    private static double em(Brush brush) {
        return brush.em();
    }

    private void interval(
            Brush brush,
            Scale across,
            double y,
            double value,
            @Nullable Double low,
            @Nullable Double high,
            Color colour,
            boolean open) {
        Marks marks = new Marks(brush);
        if (low != null && high != null) {
            if (high > END_PERCENT) {
                marks.arrow(across.clamped(low), y, across.end() + 0.9 * brush.em(), y, colour, 2.5);
            } else {
                brush.line(across.clamped(low), y, across.at(high), y, colour, 2.5);
            }
        }
        if (value > END_PERCENT) {
            return;
        }
        if (open) {
            marks.ring(across.clamped(value), y, 0.45 * brush.em(), colour);
        } else {
            marks.disc(across.clamped(value), y, 0.42 * brush.em(), colour);
        }
    }
}
