package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenfall.machine.Lever;

/**
 * What the tests at one setting contribute to the response model. Its array is never compared nor given away.
 *
 * @param centrePercent centre-overlap amplitude, % of the mean
 * @param centreVariance its variance from noise, %²
 * @param quarterPercent quarter-point amplitude, % of the mean
 * @param quarterVariance its variance, %²
 * @param steps how many steps up the scale of each lever the setting is from the settings now; 0 where one is not known
 */
@SuppressWarnings("ArrayRecordComponent")
record Observation(
        double centrePercent, double centreVariance, double quarterPercent, double quarterVariance, double[] steps) {

    /** Assumption: least noise of an amplitude, % of the mean. */
    private static final double LEAST_NOISE_PERCENT = 0.5;

    /**
     * One for each setting that was tested, in the order of the first test there; repeats are averaged by their precision.
     * Tests whose shapes cannot be separated are left out.
     */
    static List<Observation> of(List<AdviceInput.DoneTest> tests, List<Lever> levers) {
        Map<String, Double> now = tests.get(tests.size() - 1).settings();
        List<Observation> settings = new ArrayList<>();
        for (AdviceInput.DoneTest test : tests) {
            Optional<Observation> one =
                    Diagnosis.of(test.evenness()).map(shape -> of(shape, steps(test.settings(), now, levers)));
            one.ifPresent(observation -> add(settings, observation));
        }
        return settings;
    }

    private static void add(List<Observation> settings, Observation one) {
        for (int i = 0; i < settings.size(); i++) {
            if (Arrays.equals(settings.get(i).steps, one.steps)) {
                settings.set(i, settings.get(i).and(one));
                return;
            }
        }
        settings.add(one);
    }

    private Observation and(Observation other) {
        double centre = other.centreVariance / (centreVariance + other.centreVariance);
        double quarter = other.quarterVariance / (quarterVariance + other.quarterVariance);
        return new Observation(
                centre * centrePercent + (1 - centre) * other.centrePercent,
                centre * centreVariance,
                quarter * quarterPercent + (1 - quarter) * other.quarterPercent,
                quarter * quarterVariance,
                steps);
    }

    private static Observation of(Diagnosis shape, double[] steps) {
        return new Observation(
                shape.centre().amplitudePercent(),
                variance(shape.centre()),
                shape.quarter().amplitudePercent(),
                variance(shape.quarter()),
                steps);
    }

    private static double variance(SpreadShape shape) {
        double noise = Math.max(LEAST_NOISE_PERCENT, shape.noisePercent());
        return noise * noise;
    }

    /** Steps up the scale of each lever from one setting to another; 0 where one is not known. Settings nearer than a hundredth of a step are the same ({@link LeverSettings}). */
    private static double[] steps(Map<String, Double> then, Map<String, Double> now, List<Lever> levers) {
        double[] steps = new double[levers.size()];
        for (int j = 0; j < steps.length; j++) {
            Lever lever = levers.get(j);
            Double from = now.get(lever.label());
            Double to = then.get(lever.label());
            steps[j] = from == null || to == null ? 0 : Math.round(100 * (to - from) / lever.step()) / 100.0;
        }
        return steps;
    }
}
