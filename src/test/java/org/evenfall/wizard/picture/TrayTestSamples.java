package org.evenfall.wizard.picture;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.finding.Sentences;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Interval;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.ExpectedCv;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.WheelMarks;
import org.evenfall.trays.WindLimits;
import org.evenfall.wizard.picture.GuideSamples.Sample;

/** Inputs for the pictures of step 6: nothing typed, half of it, all of it, and what is worse. */
final class TrayTestSamples {

    /** Seven trays at 28 m: a field CV of about 24 %, too much at the tramline. Made up. */
    private static final double[] BAD = {11.6, 15.1, 19.2, 24.8, 20.0, 14.5, 12.2};

    private static final double[] BETTER = {14.5, 16.2, 18.8, 20.9, 19.1, 16.4, 14.8};
    private static final double[] GOOD = {16.5, 17.1, 18.2, 18.9, 18.3, 17.4, 16.8};

    private static final double[] THIRTEEN = {96, 104, 121, 128, 133, 137, 136, 134, 131, 126, 119, 102, 94};

    private static final ExpectedCv AFTER = new ExpectedCv(9, new Interval(4, 16));

    private TrayTestSamples() {}

    static TrayLayout plan(double widthM, int trays, DrivingPattern pattern) {
        return TrayLayouts.asideFrom(WheelMarks.USUAL, TrayLayouts.of(widthM, trays, 0.25, pattern), 0.5);
    }

    static List<Sample> all(Sentences words) {
        TrayLayout seven = plan(28, 7, DrivingPattern.BACK_AND_FORTH);
        TrayLayout thirteen = plan(36, 13, DrivingPattern.ROUND_AND_ROUND);
        return List.of(
                GuideSamples.sample(
                        "6a-pacing",
                        () -> new PacingPicture(words),
                        p -> p.show(null, 28.0),
                        p -> p.show(seven, 28.0),
                        p -> p.show(thirteen, 36.0),
                        p -> p.show(plan(36, 27, DrivingPattern.BACK_AND_FORTH), 36.0),
                        p -> p.show(plan(9, 5, DrivingPattern.BACK_AND_FORTH), 9.0),
                        p -> p.show(plan(10, 21, DrivingPattern.BACK_AND_FORTH), 10.0)),
                GuideSamples.sample(
                        "6b-passes",
                        () -> new PassArrowsPicture(words),
                        p -> p.show(null, 28.0, DrivingPattern.BACK_AND_FORTH, 1.2, WindLimits.USUAL),
                        p -> p.show(seven, 28.0, DrivingPattern.BACK_AND_FORTH, 2.5, WindLimits.USUAL),
                        p -> p.show(thirteen, 36.0, DrivingPattern.ROUND_AND_ROUND, 3.4, WindLimits.USUAL),
                        p -> p.show(thirteen, 36.0, DrivingPattern.ROUND_AND_ROUND, 14.0, WindLimits.USUAL)),
                catches(words, seven, thirteen),
                verdict(words),
                GuideSamples.sample(
                        "6g-switching",
                        () -> new SwitchingPicture(words),
                        p -> p.show(18.0, null, 28.0, Side.UNANSWERED),
                        p -> p.show(18.0, 7.5, 28.0, Side.LEFT),
                        p -> p.show(46.5, 30.0, 36.0, Side.RIGHT),
                        p -> p.show(-2.5, 0.0, 9.0, Side.RIGHT)));
    }

    private static Sample catches(Sentences words, TrayLayout seven, TrayLayout thirteen) {
        List<Double> many = plan(36, 27, DrivingPattern.BACK_AND_FORTH).positionsM();
        return GuideSamples.sample(
                "6c-catches",
                () -> new CatchBarsPicture(words),
                p -> p.show(seven.positionsM(), Arrays.asList(new Double[7]), "g", 0),
                p -> p.show(seven.positionsM(), Arrays.asList(11.2, 14.9, null, null, null, null, null), "g", 2),
                p -> p.show(seven.positionsM(), boxed(BAD), "g", -1),
                p -> p.show(
                        thirteen.positionsM(),
                        Arrays.asList(
                                96.0, 104.0, 121.0, null, 133.0, 137.0, 136.0, 134.0, 131.0, null, null, null, null),
                        "mL",
                        9),
                p -> p.show(thirteen.positionsM(), boxed(THIRTEEN), "mL", 12),
                p -> p.show(
                        many,
                        IntStream.range(0, many.size())
                                .mapToObj(i -> i % 5 == 0 ? 0 : 900.5 + 150 * Math.sin(i))
                                .toList(),
                        "mm",
                        26));
    }

    private static List<Double> boxed(double... grams) {
        return IntStream.range(0, grams.length).mapToObj(i -> grams[i]).toList();
    }

    private static Sample verdict(Sentences words) {
        TrayTestResult bad = Samples.test(0, 28, BAD);
        TrayTestResult better = Samples.test(1, 28, BETTER);
        TrayTestResult good = Samples.test(2, 28, GOOD);
        return GuideSamples.sample(
                "6d-verdict",
                () -> new VerdictPicture(words),
                p -> p.show(List.of(bad), null),
                p -> p.show(List.of(bad), AFTER),
                p -> p.show(List.of(bad, better, good), null),
                p -> p.show(List.of(good, better, bad, good, better, bad), AFTER),
                p -> p.show(List.of(Samples.test(0, 36, THIRTEEN)), null),
                p -> p.show(
                        List.of(Samples.test(8, 28, 0, 0, 80, 3, 5, 2, 1)), new ExpectedCv(41, new Interval(20, 70))));
    }
}
