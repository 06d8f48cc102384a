package org.evenfall.trays.ground;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenfall.machine.Lever;
import org.evenfall.trays.AdviceInput.DoneTest;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.ShapeKind;

/**
 * A plain learner: the centre amplitude is a straight line of the steps of the first lever; a usual slope is mended by
 * regression over its own tests; it moves to where the line is 0, by at most six steps, and keeps from a tray CV of 10 % on.
 */
record LinearRule(Site site) implements Rule {

    private static final int MOST_STEPS = 6;

    /** Usual slope, % of the mean a step, and its spread. Assumption, about as in the families. */
    private static final double USUAL_SLOPE = -3.5;

    private static final double SLOPE_SPREAD = 2.5;

    /** How far the amplitude is off the line apart from the noise, %. Assumption. */
    private static final double OFF_LINE = 2;

    @Override
    public Decision next(List<DoneTest> tests) {
        DoneTest last = tests.get(tests.size() - 1);
        if (last.evenness().cvPercent() <= CvLimits.GOOD_PERCENT) {
            return Decision.KEEP;
        }
        Lever lever = site.levers().get(0);
        int steps = steps(tests, lever.widerSign());
        double now = last.settings().get(lever.label());
        Map<String, Double> next = new LinkedHashMap<>(last.settings());
        next.put(lever.label(), lever.moved(now, steps));
        return next.equals(last.settings()) && Rule.repeated(tests) ? Decision.STOP : Decision.test(next);
    }

    /** Steps up from the last setting to where the line is 0. */
    private int steps(List<DoneTest> tests, int widerSign) {
        int now = site.first(tests.get(tests.size() - 1).settings());
        double weights = 0;
        double sumX = 0;
        double sumY = 0;
        for (DoneTest test : tests) {
            double weight = 1 / variance(test);
            weights += weight;
            sumX += weight * site.first(test.settings());
            sumY += weight * amplitude(test);
        }
        double priorWeight = 1 / (SLOPE_SPREAD * SLOPE_SPREAD);
        double xx = priorWeight;
        double xy = priorWeight * USUAL_SLOPE * widerSign;
        for (DoneTest test : tests) {
            double x = site.first(test.settings()) - sumX / weights;
            xx += x * x / variance(test);
            xy += x * (amplitude(test) - sumY / weights) / variance(test);
        }
        double slope = xy / xx;
        double here = sumY / weights + slope * (now - sumX / weights);
        return (int) Math.max(-MOST_STEPS, Math.min(MOST_STEPS, Math.round(-here / slope)));
    }

    private static double amplitude(DoneTest test) {
        return test.evenness()
                .shapes()
                .shape(ShapeKind.CENTRE_OVERLAP)
                .orElseThrow()
                .amplitudePercent();
    }

    private static double variance(DoneTest test) {
        double noise = test.evenness()
                .shapes()
                .shape(ShapeKind.CENTRE_OVERLAP)
                .orElseThrow()
                .noisePercent();
        return noise * noise + OFF_LINE * OFF_LINE;
    }
}
