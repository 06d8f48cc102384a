package org.evenfall.trays;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenfall.machine.Lever;

/**
 * What one test contributes to the response model. Its array is never compared nor given away.
 *
 * @param centrePercent centre-overlap amplitude, % of the mean
 * @param centreVariance its variance from noise and from the error of the curves, %²
 * @param quarterPercent quarter-point amplitude, % of the mean
 * @param quarterVariance its variance, %²
 * @param steps how many steps up the scale of each lever its settings are from the settings now; 0 where one is not known
 */
@SuppressWarnings("ArrayRecordComponent")
record Observation(
        double centrePercent, double centreVariance, double quarterPercent, double quarterVariance, double[] steps) {

    /** Assumption: error of a curve's centre-overlap amplitude, a constant part in % of the mean … */
    static final double CENTRE_ERROR_PERCENT = 2;

    /** … and a share of the amplitude. */
    static final double CENTRE_ERROR_SHARE = 0.08;

    /** Assumption: error of a curve's quarter-point amplitude, % of the mean. */
    static final double QUARTER_ERROR_PERCENT = 2;

    /**
     * The observation of a test; empty where its shapes cannot be separated.
     *
     * @param now settings of the machine now, lever label to setting
     */
    static Optional<Observation> of(AdviceInput.DoneTest test, Map<String, Double> now, List<Lever> levers) {
        return Diagnosis.of(test.evenness()).map(shape -> of(shape, steps(test.settings(), now, levers)));
    }

    private static Observation of(Diagnosis shape, double[] steps) {
        SpreadShape centre = shape.centre();
        SpreadShape quarter = shape.quarter();
        double curveError = CENTRE_ERROR_PERCENT + CENTRE_ERROR_SHARE * Math.abs(centre.amplitudePercent());
        return new Observation(
                centre.amplitudePercent(),
                centre.noisePercent() * centre.noisePercent() + curveError * curveError,
                quarter.amplitudePercent(),
                quarter.noisePercent() * quarter.noisePercent() + QUARTER_ERROR_PERCENT * QUARTER_ERROR_PERCENT,
                steps);
    }

    private static double[] steps(Map<String, Double> then, Map<String, Double> now, List<Lever> levers) {
        double[] steps = new double[levers.size()];
        for (int j = 0; j < steps.length; j++) {
            Lever lever = levers.get(j);
            Double from = now.get(lever.label());
            Double to = then.get(lever.label());
            steps[j] = from == null || to == null ? 0 : (to - from) / lever.step();
        }
        return steps;
    }
}
