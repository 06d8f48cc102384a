package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;
import org.evenfall.quantity.Interval;

/** Tray tests made up for the tests of this room. */
final class TestFields {

    static final double WIDTH_M = 28;
    static final Tramlines BACK_AND_FORTH = new Tramlines(WIDTH_M, DrivingPattern.BACK_AND_FORTH);
    static final Tramlines ROUND_AND_ROUND = new Tramlines(WIDTH_M, DrivingPattern.ROUND_AND_ROUND);
    static final String LEVER = "long vane";
    static final MachineOrder IN_ORDER = new MachineOrder(true, true, true);
    static final double[] CENTRE_HEAVY = {7.5, 9, 11.5, 13, 11.5, 9, 7.5};

    private TestFields() {}

    static List<Double> list(double... values) {
        return Arrays.stream(values).boxed().toList();
    }

    static List<Double> places(int trays) {
        return TrayLayouts.even(WIDTH_M, trays, 0.25, DrivingPattern.BACK_AND_FORTH)
                .positionsM();
    }

    static TrayCatches catches(DrivingPattern pattern, double... grams) {
        return new TrayCatches(places(grams.length), list(grams), WIDTH_M, pattern, 0.25, 3, 0.028, 0.1);
    }

    static Uniformity uniformity(double... grams) {
        return UniformityCalculator.of(catches(DrivingPattern.BACK_AND_FORTH, grams));
    }

    /** Seven trays that hold exactly these amplitudes, % of the mean, with a noise of one tray of so many per cent. */
    static Uniformity shaped(double noisePercent, double side, double centre, double quarter) {
        List<Double> grams = new ArrayList<>();
        for (double x : places(7)) {
            double turn = Math.PI * x / WIDTH_M;
            grams.add(10
                    + 0.1 * side * Math.sin(turn)
                    + 0.1 * centre * Math.cos(2 * turn)
                    + 0.1 * quarter * Math.cos(4 * turn));
        }
        double mean = grams.stream().mapToDouble(v -> v).average().orElseThrow();
        double granuleG = mean * noisePercent * noisePercent / 1e4;
        return UniformityCalculator.of(
                new TrayCatches(places(7), grams, WIDTH_M, DrivingPattern.BACK_AND_FORTH, 0.25, 1, granuleG, 0));
    }

    /** A field CV of this median, surely even up to 10 %, probably up to 15 %. */
    static FieldCv field(double medianPercent) {
        double chance =
                medianPercent <= CvLimits.GOOD_PERCENT ? 0.95 : medianPercent <= CvLimits.FIELD_PERCENT ? 0.7 : 0.3;
        return new FieldCv(medianPercent, new Interval(medianPercent / 2, 2 * medianPercent), chance);
    }

    /** Seven trays with these amplitudes, % of the mean. */
    private static List<Double> relative(double side, double centre, double quarter) {
        List<Double> percent = new ArrayList<>();
        for (double x : places(7)) {
            double turn = Math.PI * x / WIDTH_M;
            percent.add(100 + side * Math.sin(turn) + centre * Math.cos(2 * turn) + quarter * Math.cos(4 * turn));
        }
        return percent;
    }

    /** A result with stated figures, whatever trays it would take; shapes have a standard error of 1 %. */
    static Uniformity stated(double cvPercent, double noisePercent, double side, double centre, double quarter) {
        return new Uniformity(
                new CatchSummary(places(7), relative(side, centre, quarter), 10, 10, null),
                new CvEstimate(
                        cvPercent,
                        noisePercent,
                        new Interval(cvPercent / 2, 2 * cvPercent),
                        new LimitProbabilities(0.25, 0.5, 0.75)),
                statedField(cvPercent),
                new RegionContrasts(
                        new Contrast(-1.5 * side, 1), new Contrast(1.5 * centre, 1), new Contrast(-1.5 * quarter, 1)),
                new ShapeFit(
                        List.of(
                                SpreadShape.of(ShapeKind.CENTRE_OVERLAP, centre, 1),
                                SpreadShape.of(ShapeKind.QUARTER_POINTS, quarter, 1),
                                SpreadShape.of(ShapeKind.LEFT_RIGHT, side, 1)),
                        List.of()));
    }

    /** A field CV whose verdict follows its median: even up to 10, probably even up to 15 %. */
    private static FieldCv statedField(double percent) {
        double chance = percent <= CvLimits.GOOD_PERCENT ? 0.95 : percent <= CvLimits.FIELD_PERCENT ? 0.7 : 0.2;
        return new FieldCv(percent, new Interval(percent / 2, 2 * percent), chance);
    }

    static AdviceInput.DoneTest at(double lever, Uniformity evenness) {
        return new AdviceInput.DoneTest(evenness, Map.of(LEVER, lever), 1.0);
    }

    static AdviceInput.DoneTest test(double lever, double... grams) {
        return at(lever, uniformity(grams));
    }

    static Lever lever(Widening widening) {
        return new Lever(LEVER, "", 0, 20, 1, widening);
    }

    static Advice advise(List<Lever> levers, MachineOrder order, AdviceInput.DoneTest... tests) {
        return Advisor.advise(new AdviceInput(
                List.of(tests), new LeverRules(levers, false), order, BACK_AND_FORTH, WindLimits.USUAL));
    }

    /** One lever that goes wider up its scale, machine in order. */
    static Advice advise(AdviceInput.DoneTest... tests) {
        return advise(List.of(lever(Widening.HIGHER)), IN_ORDER, tests);
    }

    static List<AdviceReason.Kind> kinds(Advice advice) {
        return advice.reasons().stream().map(AdviceReason::kind).toList();
    }
}
