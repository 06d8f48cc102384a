package org.evenfall.wizard.picture;

import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.BucketFacts;

/** The bucket with the weight to expect in it, its tolerance as a band round the level, and the words at its right. */
record BucketLevel(Brush brush, Sentences words) {

    /** Level of the expected weight, share of the height. */
    private static final double LEVEL = 0.62;

    /** Half of the foot's width, in half widths of the rim. */
    private static final double FOOT = 0.76;

    void draw(BucketFacts.Expected expected, double from, double high, double width) {
        double em = brush.em();
        double foot = from + high - 0.8 * em;
        double rim = from + 0.8 * em;
        double half = Math.min(0.2 * width, 0.42 * (foot - rim));
        double middle = half + 1.2 * em;
        draw(expected, middle, half, rim, foot);
        words(expected, middle + half + 1.4 * em, from, foot - LEVEL * (foot - rim), width);
    }

    /** Only the bucket. */
    void draw(BucketFacts.Expected expected, double middle, double half, double rim, double foot) {
        Palette palette = brush.palette();
        double level = foot - LEVEL * (foot - rim);
        brush.shape(
                new double[] {
                    at(middle, half, level, foot, rim, -1),
                    at(middle, half, level, foot, rim, 1),
                    middle + FOOT * half,
                    middle - FOOT * half
                },
                new double[] {level, level, foot, foot},
                Palette.faint(palette.straw(), 0.45));
        double low = foot - (foot - level) * expected.goodKg().low() / expected.kg();
        double top = foot - (foot - level) * expected.goodKg().high() / expected.kg();
        double left = at(middle, half, level, foot, rim, -1);
        brush.box(
                left, top, at(middle, half, level, foot, rim, 1) - left, low - top, Palette.faint(palette.good(), 0.4));
        brush.polyline(
                new double[] {middle - half, middle - FOOT * half, middle + FOOT * half, middle + half},
                new double[] {rim, foot, foot, rim},
                palette.ink(),
                2,
                false);
        brush.line(left, level, 2 * middle - left + 0.4 * half, level, palette.straw(), 2.5);
    }

    private void words(BucketFacts.Expected expected, double x, double from, double level, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double y = brush.paragraph(
                words.text("picture.bucket.weight", Arg.number(expected.kg(), 1, Unit.KG)),
                x,
                Math.max(from + 0.2 * em, level - 2.6 * em),
                width - x,
                brush.lead().in(palette.straw()),
                TextAlignment.LEFT);
        y = brush.paragraph(
                words.text("picture.bucket.time", Arg.number(expected.seconds(), 0, Unit.S)),
                x,
                y,
                width - x,
                brush.body(),
                TextAlignment.LEFT);
        y = brush.paragraph(
                band("picture.bucket.band", expected.goodKg()),
                x,
                y,
                width - x,
                brush.body().in(palette.good()),
                TextAlignment.LEFT);
        if (expected.scalesKg() != null) {
            brush.paragraph(
                    band("picture.bucket.scales", expected.scalesKg()),
                    x,
                    y,
                    width - x,
                    brush.body().in(palette.good()),
                    TextAlignment.LEFT);
        }
    }

    private String band(String key, Interval kg) {
        return words.text(key, Arg.number(kg.low(), 1, Unit.NONE), Arg.number(kg.high(), 1, Unit.KG));
    }

    /** The bucket's side at a height. */
    private static double at(double middle, double half, double y, double foot, double rim, int side) {
        return middle + side * half * (FOOT + (1 - FOOT) * (foot - y) / (foot - rim));
    }
}
