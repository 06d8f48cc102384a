package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.BucketFacts;
import org.jspecify.annotations.Nullable;

/**
 * The bucket with the weight expected in it, its tolerance as a band round the level; next to it every bucket test, left
 * and right, on one axis of flow with the same band.
 */
public final class BucketPicture extends Picture {

    /** Height of the axis of the flows, and of each test over it, em. */
    private static final double FLOWS_EM = 5.2;

    private static final double TEST_EM = 2.7;

    /** So many tests get room before the bucket. */
    private static final int MOST_TESTS = 5;

    private static final double LOWEST_BUCKET_EM = 6;
    private static final double HIGHEST_BUCKET_EM = 15;

    private BucketFacts.@Nullable Expected expected;
    private boolean caught = true;
    private List<BucketResult> tests = List.of();

    /** Begins with nothing to show. */
    public BucketPicture(Sentences words) {
        super(words, 0.4);
        show(null, false, List.of());
    }

    /**
     * Draws these.
     *
     * @param wanted what one outlet ought to give; null while it is not known
     * @param timed a known weight is timed: there is no bucket
     * @param results bucket tests that can be read, oldest first
     */
    public void show(BucketFacts.@Nullable Expected wanted, boolean timed, List<BucketResult> results) {
        expected = wanted;
        caught = !timed;
        tests = List.copyOf(results);
        redraw(spoken(wanted));
    }

    private String spoken(BucketFacts.@Nullable Expected wanted) {
        return wanted == null || !caught
                ? words.text("picture.bucket.empty")
                : words.text(
                        "picture.bucket.spoken",
                        Arg.number(wanted.kg(), 1, Unit.KG),
                        Arg.number(wanted.seconds(), 0, Unit.S),
                        Arg.count(tests.size()));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        BucketFacts.Expected wanted = expected;
        if (tests.isEmpty() && (wanted == null || !caught)) {
            nothingYet(brush, width, height, words.text("picture.bucket.empty"));
            return;
        }
        double em = brush.em();
        double top = 0;
        if (wanted != null && caught) {
            double room =
                    tests.isEmpty() ? height : height - (FLOWS_EM + TEST_EM * Math.min(tests.size(), MOST_TESTS)) * em;
            double tall = Math.min(room, HIGHEST_BUCKET_EM * em);
            if (tall >= LOWEST_BUCKET_EM * em) {
                new BucketLevel(brush, words).draw(wanted, tests.isEmpty() ? (room - tall) / 2 : 0, tall, width);
                top = tall;
            }
        }
        if (!tests.isEmpty()) {
            flows(brush, wanted, top, height, width);
        }
    }

    private void flows(Brush brush, BucketFacts.@Nullable Expected wanted, double top, double height, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double floor = Math.min(height - 2.8 * em, top + (1.8 + 3.4 * tests.size()) * em);
        int shown = (int) Math.max(1, Math.min(tests.size(), (floor - top - 1.6 * em) / (1.9 * em)));
        List<BucketResult> last = tests.subList(tests.size() - shown, tests.size());
        Scale across = scale(wanted, last, em, width);
        double start = top + 1.5 * em;
        if (wanted != null) {
            double line = across.at(wanted.kgPerMin());
            // the same band as round the level in the bucket
            double from = across.clamped(wanted.kgPerMin() * wanted.goodKg().low() / wanted.kg());
            double to = across.clamped(wanted.kgPerMin() * wanted.goodKg().high() / wanted.kg());
            brush.box(from, start, to - from, floor - start, Palette.faint(palette.good(), 0.2));
            brush.line(line, start, line, floor, palette.good(), 2);
            brush.within(
                    words.text("picture.bucket.wanted", Arg.number(wanted.kgPerMin(), 1, Unit.KG_PER_MIN)),
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

    /** Wide enough for the wanted flow with its band and for every side that was caught. */
    private static Scale scale(
            BucketFacts.@Nullable Expected wanted, List<BucketResult> shown, double em, double width) {
        double low = wanted == null ? Double.POSITIVE_INFINITY : 0.93 * wanted.kgPerMin();
        double high = wanted == null ? Double.NEGATIVE_INFINITY : 1.07 * wanted.kgPerMin();
        for (BucketResult test : shown) {
            for (Double side : new @Nullable Double[] {
                test.flow().leftKgPerMin(), test.flow().rightKgPerMin()
            }) {
                low = side == null ? low : Math.min(low, side);
                high = side == null ? high : Math.max(high, side);
            }
        }
        double room = Math.max(0.06 * (high - low), 0.02 * high);
        return new Scale(low - room, high + room, 1.6 * em, width - 1.6 * em);
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
