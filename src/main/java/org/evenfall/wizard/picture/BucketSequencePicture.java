package org.evenfall.wizard.picture;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.BucketFacts;
import org.jspecify.annotations.Nullable;

/** The bucket test in six small drawings in their order, with what is set and expected now in its place. */
public final class BucketSequencePicture extends Picture {

    /** Width from which three drawings are in a row, em. */
    private static final double WIDE_EM = 26;

    /** Least height of two rows of three, and of three rows of two, em. */
    private static final double IN_THREE_HIGH_EM = 11.5;

    private static final double IN_TWO_HIGH_EM = 18.6;

    /** Places of what is set and of what is good. */
    private static final int OPEN = 3;

    private static final int OUT = 5;

    private BucketFacts facts = new BucketFacts(false, null, null, null, null);
    private RateSetting setting = RateSetting.UNANSWERED;

    /** Begins with nothing known. */
    public BucketSequencePicture(Sentences words) {
        super(words, 0.62);
        show(facts, setting);
    }

    /** Draws with what is known of the test shown. */
    public void show(BucketFacts test, RateSetting rateSetting) {
        facts = test;
        setting = rateSetting;
        redraw(String.join(
                " ",
                List.of(
                        words.text("picture.sequence.stop"),
                        words.text("picture.sequence.bucket"),
                        words.text("picture.sequence.clear"),
                        open(),
                        words.text("picture.sequence.stopAgain"),
                        out())));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        Lettering small = brush.note().in(brush.palette().ink());
        Lettering fact = small.heavy();
        BucketDrawings parts = new BucketDrawings(brush);
        List<Panels.Panel> all = List.of(
                new Panels.Panel(words.text("picture.sequence.stop"), small, parts::key),
                new Panels.Panel(words.text("picture.sequence.bucket"), small, parts::closed),
                new Panels.Panel(words.text("picture.sequence.clear"), small, parts::clear),
                new Panels.Panel(open(), fact, parts::open),
                new Panels.Panel(words.text("picture.sequence.stopAgain"), small, parts::key),
                new Panels.Panel(out(), fact, (x, y, wide, high) -> weigh(brush, x, y, wide, high)));
        boolean inThree = width >= WIDE_EM * brush.em();
        double needed = (inThree ? IN_THREE_HIGH_EM : IN_TWO_HIGH_EM) * brush.em();
        // where there is little room, as in a hall, what is set and what is good
        new Panels(brush, height < needed ? List.of(all.get(OPEN), all.get(OUT)) : all)
                .grid(width, height, inThree ? 3 : 2);
    }

    /** What is set, and for how long the outlet is open. */
    private String open() {
        Double left = facts.openingLeft();
        Double right = facts.openingRight();
        String set = left == null || right == null
                ? words.text("picture.sequence.set")
                : setting.byFactor()
                        ? words.text("picture.sequence.factor", value(left))
                        : left.equals(right)
                                ? words.text("picture.sequence.opening", value(left))
                                : words.text("picture.sequence.openings", value(left), value(right));
        BucketFacts.Expected expected = facts.expected();
        if (facts.timed()) {
            return set + " " + words.text("picture.sequence.through");
        }
        return set + " "
                + (expected == null
                        ? words.text("picture.sequence.open")
                        : words.text("picture.sequence.openFor", Arg.number(expected.seconds(), 0, Unit.S)));
    }

    private Arg value(double opening) {
        return Arg.number(opening, setting.decimals(opening), Unit.NONE);
    }

    /** What is good: on the scales, else net; for a known weight the times. */
    private String out() {
        BucketFacts.Expected expected = facts.expected();
        if (facts.timed()) {
            return expected == null
                    ? words.text("picture.sequence.note")
                    : band("picture.sequence.noteGood", expected.goodS(), 0, Unit.S);
        }
        if (expected == null) {
            return words.text("picture.sequence.out");
        }
        Interval scales = expected.scalesKg();
        return scales == null
                ? band("picture.sequence.outNet", expected.goodKg(), 1, Unit.KG)
                : band("picture.sequence.outScales", scales, 1, Unit.KG);
    }

    private String band(String key, Interval band, int decimals, Unit unit) {
        return words.text(key, Arg.number(band.low(), decimals, Unit.NONE), Arg.number(band.high(), decimals, unit));
    }

    private void weigh(Brush brush, double left, double top, double wide, double high) {
        double middle = left + wide / 2;
        double half = Math.min(0.22 * wide, 0.34 * high);
        double plate = top + 0.62 * high;
        BucketFacts.@Nullable Expected expected = facts.expected();
        if (facts.timed()) {
            new Parts(brush)
                    .window(
                            left + 0.2 * wide,
                            top + 0.25 * high,
                            0.6 * wide,
                            0.5 * high,
                            expected == null ? "" : words.number(expected.seconds(), 0, Unit.S));
            return;
        }
        if (expected == null) {
            new BucketDrawings(brush).bucket(middle, half, top, plate);
        } else {
            new BucketLevel(brush, words).draw(expected, middle, half, top, plate);
        }
        new Parts(brush)
                .scales(
                        left + 0.15 * wide,
                        top + high,
                        0.7 * wide,
                        top + high - plate,
                        words.text("picture.sequence.scales"));
    }
}
