package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.result.SourceText;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.Advice;
import org.evenfall.trays.ExpectedCv;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** Field CV of each test with its 90 % interval on one axis from 0 to 30 %, the bands at 10, 15 and 20 % named. */
public final class CvPicture extends Picture {

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
        Scale across = new Scale(0, FieldCvScale.END_PERCENT, 1.4 * em, width - 1.4 * em);
        FieldCvScale scale = new FieldCvScale(brush, words, across, 2);
        double floor = height - 2.8 * em;
        double top = scale.bands(0, floor);
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
            row(scale, top + (i - first) * row, row, tests.get(i));
        }
        ExpectedCv expected = expected();
        if (expected != null) {
            double y = top + (tests.size() - first) * row;
            scale.estimate(
                    expected.percent(),
                    expected.intervalPercent(),
                    y + 0.7 * row,
                    brush.palette().accent(),
                    true);
            scale.label(
                    words.text("picture.cv.expected", Arg.number(expected.percent(), 0, Unit.PERCENT)),
                    expected.percent(),
                    y + 0.25 * row,
                    brush.palette().ink());
        }
        new Marks(brush).axis(across, floor, words.text("picture.cv.axis"), words);
    }

    private @Nullable ExpectedCv expected() {
        return advice == null ? null : advice.expected();
    }

    private void row(FieldCvScale scale, double y, double row, TrayTestResult test) {
        Uniformity evenness = test.evenness();
        Palette palette = scale.brush().palette();
        boolean last = test.equals(tests.get(tests.size() - 1));
        double median = evenness.field().medianPercent();
        scale.estimate(
                median,
                evenness.field().intervalPercent(),
                y + 0.7 * row,
                last ? palette.ink() : palette.soft(),
                false);
        scale.label(
                words.text(
                        "picture.cv.test",
                        Arg.count(test.index() + 1L),
                        Arg.number(median, 0, Unit.PERCENT),
                        Arg.number(evenness.field().lowPercent(), 0, Unit.NONE),
                        Arg.number(evenness.field().highPercent(), 0, Unit.PERCENT)),
                median,
                y + 0.25 * row,
                palette.ink());
    }
}
