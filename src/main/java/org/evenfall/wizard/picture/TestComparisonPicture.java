package org.evenfall.wizard.picture;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/**
 * Two tray tests on one axis, each tray at its place between the tramlines: the own as discs on a whole line, the other
 * as rings on a dashed one, with 10 and 15 % off the mean as bands. Widths may differ, so the axis is a share of the half.
 */
public final class TestComparisonPicture extends Picture {

    private static final double INNER_PERCENT = CvLimits.GOOD_PERCENT;
    private static final double OUTER_PERCENT = CvLimits.FIELD_PERCENT;

    /**
     * One test.
     *
     * @param name what it is called
     * @param evenness its result
     * @param tramlineWidthM the width it was driven at, above 0
     */
    public record Test(String name, Uniformity evenness, double tramlineWidthM) {}

    private @Nullable Test own;
    private @Nullable Test other;

    /** Begins with nothing to show. */
    public TestComparisonPicture(Sentences words) {
        super(words, 0.6);
        show(null, null);
    }

    /** Draws this; null: nothing yet. */
    public void show(@Nullable Test mine, @Nullable Test compared) {
        own = mine;
        other = compared;
        redraw(
                mine == null || compared == null
                        ? words.text("picture.compared.empty")
                        : words.text(
                                "picture.compared.spoken",
                                Arg.text(mine.name()),
                                Arg.number(mine.evenness().cvPercent(), 0, Unit.PERCENT),
                                Arg.text(compared.name()),
                                Arg.number(compared.evenness().cvPercent(), 0, Unit.PERCENT)));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        Test mine = own;
        Test compared = other;
        if (mine == null || compared == null) {
            nothingYet(brush, width, height, words.text("picture.compared.empty"));
            return;
        }
        double em = brush.em();
        double most = 100 + OUTER_PERCENT + 5;
        double least = 100 - OUTER_PERCENT - 5;
        for (Test test : List.of(mine, compared)) {
            for (double relative : test.evenness().relativePercent()) {
                most = Math.max(most, relative + 3);
                least = Math.min(least, relative - 3);
            }
        }
        double left = brush.width(words.number(100, 0, Unit.PERCENT), brush.note()) + 0.8 * em;
        Scale across = new Scale(-1.06, 1.06, left, width - 0.4 * em);
        Scale up = new Scale(least, most, height - 2.6 * em, 3.2 * em);
        bands(brush, up, left, width - 0.4 * em);
        line(brush, across, up, compared, brush.palette().accent(), true);
        line(brush, across, up, mine, brush.palette().ink(), false);
        name(brush, mine, 0.8 * em, width, brush.palette().ink(), false);
        name(brush, compared, 2.1 * em, width, brush.palette().accent(), true);
        places(brush, across, up.start(), width);
        brush.within(
                words.text("picture.compared.axis"),
                (left + width) / 2,
                height - 0.6 * em,
                brush.note(),
                TextAlignment.CENTER,
                0,
                width);
    }

    private void bands(Brush brush, Scale up, double left, double right) {
        Palette palette = brush.palette();
        double em = brush.em();
        for (double half : new double[] {OUTER_PERCENT, INNER_PERCENT}) {
            brush.box(
                    left,
                    up.at(100 + half),
                    right - left,
                    up.length(2 * half),
                    Palette.faint(palette.good(), half == OUTER_PERCENT ? 0.1 : 0.16));
        }
        brush.line(left, up.at(100), right, up.at(100), palette.good(), 2);
        double free = Double.NEGATIVE_INFINITY;
        for (double value :
                new double[] {100 + OUTER_PERCENT, 100 + INNER_PERCENT, 100, 100 - INNER_PERCENT, 100 - OUTER_PERCENT
                }) {
            double y = up.at(value);
            boolean middle = value == 100;
            if (y - free > 1.05 * em && (middle || Math.abs(y - up.at(100)) > 1.05 * em)) {
                brush.text(
                        words.number(value, 0, Unit.PERCENT),
                        left - 0.4 * em,
                        y,
                        middle ? brush.note().heavy().in(palette.good()) : brush.note(),
                        TextAlignment.RIGHT);
                free = y;
            }
        }
    }

    private static void line(Brush brush, Scale across, Scale up, Test test, Color colour, boolean open) {
        Uniformity evenness = test.evenness();
        int n = evenness.trays();
        double[] x = IntStream.range(0, n)
                .mapToDouble(i -> across.clamped(2 * evenness.positionsM().get(i) / test.tramlineWidthM()))
                .toArray();
        double[] y = IntStream.range(0, n)
                .mapToDouble(i -> up.at(evenness.relativePercent().get(i)))
                .toArray();
        brush.polyline(x, y, colour, 2, open);
        Marks marks = new Marks(brush);
        for (int i = 0; i < n; i++) {
            if (open) {
                marks.ring(x[i], y[i], 0.36 * brush.em(), colour);
            } else {
                marks.disc(x[i], y[i], 0.34 * brush.em(), colour);
            }
        }
    }

    private void name(Brush brush, Test test, double y, double width, Color colour, boolean open) {
        double em = brush.em();
        Marks marks = new Marks(brush);
        if (open) {
            marks.ring(0.8 * em, y, 0.36 * em, colour);
        } else {
            marks.disc(0.8 * em, y, 0.34 * em, colour);
        }
        brush.within(
                words.text(
                        "picture.compared.name",
                        Arg.text(test.name()),
                        Arg.number(test.evenness().cvPercent(), 0, Unit.PERCENT)),
                1.6 * em,
                y,
                brush.note().heavy().in(colour),
                TextAlignment.LEFT,
                1.6 * em,
                width);
    }

    private void places(Brush brush, Scale across, double floor, double width) {
        brush.line(across.start(), floor, across.end(), floor, brush.palette().ink(), 1);
        String[] keys = {"picture.compared.left", "picture.compared.tramline", "picture.compared.right"};
        for (int i = 0; i < keys.length; i++) {
            double x = across.at(i - 1.0);
            brush.line(x, floor, x, floor + 0.3 * brush.em(), brush.palette().ink(), 1);
            brush.within(
                    words.text(keys[i]),
                    x,
                    floor + 0.95 * brush.em(),
                    brush.note(),
                    TextAlignment.CENTER,
                    across.start() - brush.em(),
                    width - 0.1 * brush.em());
        }
    }
}
