package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.RatePlan;
import org.jspecify.annotations.Nullable;

/**
 * The bucket with the weight expected in it, its tolerance as a band round the level; next to it every bucket test, left
 * and right, on one axis of flow with the same band.
 */
public final class BucketPicture extends Picture {

    private @Nullable RatePlan plan;
    private List<BucketResult> tests = List.of();

    /** Begins with nothing to show. */
    public BucketPicture(Sentences words) {
        super(words, 0.95);
        show(null, List.of());
    }

    /** @param results bucket tests that can be read, oldest first */
    public void show(@Nullable RatePlan wanted, List<BucketResult> results) {
        plan = wanted;
        tests = List.copyOf(results);
        redraw(spoken(wanted));
    }

    private String spoken(@Nullable RatePlan wanted) {
        if (wanted == null || wanted.bucket().kg() == null || wanted.bucket().seconds() == null) {
            return words.text("picture.bucket.empty");
        }
        return words.text(
                "picture.bucket.spoken",
                Arg.number(wanted.bucket().kg(), 1, Unit.KG),
                Arg.number(wanted.bucket().seconds(), 0, Unit.S),
                Arg.count(tests.size()));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        RatePlan wanted = plan;
        boolean expected = wanted != null
                && (wanted.bucket().kg() != null || wanted.bucket().halfMinuteKg() != null);
        if (!expected && tests.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.bucket.empty"));
            return;
        }
        double em = brush.em();
        double high =
                tests.isEmpty() ? height : Math.max(8.5 * em, height - (5.2 + 2.7 * Math.min(tests.size(), 5)) * em);
        if (expected && wanted != null && high > 6 * em) {
            double tall = Math.min(high, 15 * em);
            bucket(brush, wanted, tests.isEmpty() ? (high - tall) / 2 : 0, tall, width);
        }
        if (!tests.isEmpty()) {
            double top = expected ? Math.min(high, 15 * em) : 0;
            flows(brush, wanted, Math.min(top, height - 7 * em), height, width);
        }
    }

    /** Weight and seconds of the time that fits the bucket, else of 30 s. */
    private void bucket(Brush brush, RatePlan wanted, double from, double high, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        Double kg = wanted.bucket().kg() == null
                ? wanted.bucket().halfMinuteKg()
                : wanted.bucket().kg();
        Double litres = wanted.bucket().kg() == null
                ? wanted.bucket().halfMinuteLitres()
                : wanted.bucket().litres();
        double seconds = wanted.bucket().kg() == null || wanted.bucket().seconds() == null
                ? 30
                : wanted.bucket().seconds();
        if (kg == null) {
            return;
        }
        double foot = from + high - 0.8 * em;
        double rim = from + 1.2 * em;
        double half = Math.min(0.2 * width, 0.42 * (foot - rim));
        double middle = half + 1.2 * em;
        double level = foot - 0.62 * (foot - rim);
        brush.shape(
                new double[] {
                    at(middle, half, level, foot, rim, -1),
                    at(middle, half, level, foot, rim, 1),
                    middle + 0.76 * half,
                    middle - 0.76 * half
                },
                new double[] {level, level, foot, foot},
                Palette.faint(palette.straw(), 0.45));
        brush.polyline(
                new double[] {middle - half, middle - 0.76 * half, middle + 0.76 * half, middle + half},
                new double[] {rim, foot, foot, rim},
                palette.ink(),
                2,
                false);
        brush.line(
                at(middle, half, level, foot, rim, -1),
                level,
                at(middle, half, level, foot, rim, 1) + em,
                level,
                palette.straw(),
                2.5);
        double x = middle + half + 1.4 * em;
        double y = brush.paragraph(
                words.text("picture.bucket.weight", Arg.number(kg, 1, Unit.KG)),
                x,
                Math.max(from + 0.4 * em, level - 2.6 * em),
                width - x,
                brush.lead().in(palette.straw()),
                TextAlignment.LEFT);
        y = brush.paragraph(
                words.text("picture.bucket.time", Arg.number(seconds, 0, Unit.S)),
                x,
                y,
                width - x,
                brush.body(),
                TextAlignment.LEFT);
        if (wanted.bucket().toleranceKg() != null && wanted.bucket().kg() != null) {
            double low = foot - (foot - level) * wanted.bucket().toleranceKg().low() / kg;
            double top = foot - (foot - level) * wanted.bucket().toleranceKg().high() / kg;
            brush.box(
                    at(middle, half, level, foot, rim, -1),
                    top,
                    at(middle, half, level, foot, rim, 1) - at(middle, half, level, foot, rim, -1),
                    low - top,
                    Palette.faint(palette.good(), 0.4));
            y = brush.paragraph(
                    words.text(
                            "picture.bucket.band",
                            Arg.number(wanted.bucket().toleranceKg().low(), 1, Unit.NONE),
                            Arg.number(wanted.bucket().toleranceKg().high(), 1, Unit.KG)),
                    x,
                    y,
                    width - x,
                    brush.body().in(palette.good()),
                    TextAlignment.LEFT);
        }
        if (litres != null) {
            brush.paragraph(
                    words.text("picture.bucket.volume", Arg.number(litres, 0, Unit.L)),
                    x,
                    y,
                    width - x,
                    brush.note(),
                    TextAlignment.LEFT);
        }
    }

    /** The bucket's side at a height. */
    private static double at(double middle, double half, double y, double foot, double rim, int side) {
        return middle + side * half * (0.76 + 0.24 * (foot - y) / (foot - rim));
    }

    private void flows(Brush brush, @Nullable RatePlan wanted, double top, double height, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double floor = Math.min(height - 2.8 * em, top + (1.8 + 3.4 * tests.size()) * em);
        int shown = (int) Math.max(1, Math.min(tests.size(), (floor - top - 1.6 * em) / (1.9 * em)));
        List<BucketResult> last = tests.subList(tests.size() - shown, tests.size());
        Double expected = wanted == null ? null : wanted.flow().outletKgPerMin();
        double low = expected == null ? Double.POSITIVE_INFINITY : 0.93 * expected;
        double high = expected == null ? Double.NEGATIVE_INFINITY : 1.07 * expected;
        for (BucketResult test : last) {
            for (Double side : new @Nullable Double[] {
                test.flow().leftKgPerMin(), test.flow().rightKgPerMin()
            }) {
                low = side == null ? low : Math.min(low, side);
                high = side == null ? high : Math.max(high, side);
            }
        }
        if (low > high) {
            return;
        }
        double room = Math.max(0.06 * (high - low), 0.02 * high);
        Scale across = new Scale(low - room, high + room, 1.6 * em, width - 1.6 * em);
        double start = top + 1.5 * em;
        if (expected != null && wanted != null) {
            double line = across.at(expected);
            if (wanted.bucket().kg() != null && wanted.bucket().toleranceKg() != null) {
                // the same band as round the level in the bucket
                double from = across.clamped(expected
                        * wanted.bucket().toleranceKg().low()
                        / wanted.bucket().kg());
                double to = across.clamped(expected
                        * wanted.bucket().toleranceKg().high()
                        / wanted.bucket().kg());
                brush.box(from, start, to - from, floor - start, Palette.faint(palette.good(), 0.2));
            }
            brush.line(line, start, line, floor, palette.good(), 2);
            brush.within(
                    words.text("picture.bucket.wanted", Arg.number(expected, 1, Unit.KG_PER_MIN)),
                    line,
                    top + 0.8 * em,
                    brush.note().heavy().in(palette.good()),
                    TextAlignment.CENTER,
                    0.3 * em,
                    width - 0.3 * em);
        }
        double row = Math.min(3.4 * em, (floor - start) / shown);
        for (int i = 0; i < shown; i++) {
            test(brush, across, last.get(i), tests.size() - shown + i + 1, start + i * row, row, width);
        }
        new Marks(brush).axis(across, floor, words.text("picture.bucket.axis"), words);
    }

    private void test(Brush brush, Scale across, BucketResult test, int number, double y, double row, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        Color colour = test.agreement().withinTolerance() ? palette.good() : palette.warn();
        Double left = test.flow().leftKgPerMin();
        Double right = test.flow().rightKgPerMin();
        double middle = y + 0.7 * row;
        Double deviation = test.agreement().deviationPercent();
        String text = deviation == null || test.kgPerHa() == null
                ? words.text(
                        "picture.bucket.flow",
                        Arg.count(number),
                        Arg.number(test.flow().totalKgPerMin(), 1, Unit.KG_PER_MIN))
                : words.text(
                        Math.abs(deviation) < 0.5
                                ? "picture.bucket.testRight"
                                : deviation > 0 ? "picture.bucket.testMuch" : "picture.bucket.testLittle",
                        Arg.count(number),
                        Arg.number(test.kgPerHa(), 0, Unit.KG_PER_HA),
                        Arg.number(Math.abs(deviation), 0, Unit.PERCENT));
        double x = left == null || right == null
                ? across.clamped(left == null ? right == null ? across.from() : right : left)
                : (across.clamped(left) + across.clamped(right)) / 2;
        brush.onPaper(
                text,
                x,
                y + 0.25 * row,
                brush.note().in(palette.ink()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
        if (left != null && right != null) {
            brush.line(across.clamped(left), middle, across.clamped(right), middle, colour, 1.5);
        }
        boolean leftFirst = left == null || right == null || left <= right;
        side(
                brush,
                across,
                left,
                middle,
                "picture.bucket.left",
                leftFirst,
                test.agreement().withinTolerance(),
                colour,
                width);
        side(
                brush,
                across,
                right,
                middle,
                "picture.bucket.right",
                !leftFirst,
                test.agreement().withinTolerance(),
                colour,
                width);
    }

    private void side(
            Brush brush,
            Scale across,
            @Nullable Double flow,
            double y,
            String key,
            boolean wordLeft,
            boolean good,
            Color colour,
            double width) {
        if (flow == null) {
            return;
        }
        double em = brush.em();
        double x = across.clamped(flow);
        Marks marks = new Marks(brush);
        if (good) {
            marks.disc(x, y, 0.36 * em, colour);
        } else {
            marks.triangle(x, y, 0.42 * em, colour);
        }
        brush.onPaper(
                words.text(key),
                wordLeft ? x - 0.7 * em : x + 0.7 * em,
                y,
                brush.note(),
                wordLeft ? TextAlignment.RIGHT : TextAlignment.LEFT,
                0,
                width);
    }
}
