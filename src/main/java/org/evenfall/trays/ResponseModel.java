package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.evenfall.machine.Lever;

/**
 * What is known from the tests of how the levers move the shapes. Each even shape follows the settings on a line, bent and
 * off it a little ({@link AmplitudeModel}); which way each lever works is one of a few assumptions ({@link Directions}), each
 * weighted by how well it explains the tests. Bayesian and in closed form.
 */
final class ResponseModel implements MoveOutlook {

    /** @param probability of the assumption after the tests; all have the sum 1 */
    private record Case(Directions directions, AmplitudeModel.Fit centre, double probability) {}

    /** Assumption: what the trays show of the centre-overlap shape is off the model by this in a forecast, % of the mean. */
    private static final double CENTRE_ERROR_PERCENT = 5;

    /** Assumption: and by this share of the change that the model expects. */
    private static final double CHANGE_ERROR_SHARE = 0.3;

    /** Assumption: the same for the quarter-point shape. */
    private static final double QUARTER_ERROR_PERCENT = 4;

    /**
     * Assumption: so much of the variance of what a move does is still there after the move that follows it; the rest is found
     * by the test and mended by that one.
     */
    private static final double UNCERTAIN = 0.5;

    /** Assumption: each part of the machine check that was not looked at adds this share to the squares of these errors. */
    private static final double ERROR_OF_SKIPPED = 0.1;

    private final AmplitudeModel centre;
    private final AmplitudeModel quarter;
    private final AmplitudeModel.Fit quarterFit;
    private final List<Case> cases;
    private final double lessCertain;
    private final Forecast field;
    private final Forecast reading;

    /**
     * A model that knows the tests.
     *
     * @param done at least one test, oldest first, the last with separate shapes; its settings are those of the machine now
     * @param now the last setting with its repeats
     * @param shape its shapes
     * @param levers levers that may be moved
     * @param skippedParts how many parts of the machine check were not looked at
     */
    ResponseModel(
            List<AdviceInput.DoneTest> done,
            Uniformity now,
            Diagnosis shape,
            List<Lever> levers,
            Tramlines tramlines,
            int skippedParts) {
        lessCertain = 1 + ERROR_OF_SKIPPED * skippedParts;
        List<Observation> tests = Observation.of(done, levers);
        List<double[]> settings = tests.stream().map(Observation::steps).toList();
        List<Directions> directions = Directions.all(levers, moved(settings, levers.size()));
        centre = new AmplitudeModel(
                AmplitudePrior.CENTRE,
                directions.get(0).slopeVariance(),
                settings,
                numbers(tests, Observation::centreVariance));
        cases = cases(directions, numbers(tests, Observation::centrePercent));
        double[] quarterSlope = new double[levers.size()];
        double[] quarterVariance = new double[levers.size()];
        Arrays.fill(quarterVariance, AmplitudePrior.QUARTER.slope() * AmplitudePrior.QUARTER.slope());
        quarter = new AmplitudeModel(
                AmplitudePrior.QUARTER, quarterVariance, settings, numbers(tests, Observation::quarterVariance));
        quarterFit = quarter.fit(numbers(tests, Observation::quarterPercent), quarterSlope);
        double fieldPercent = now.field().medianPercent();
        double ofField = Math.max(1, square(EvenShapeVariance.ofField(0), new double[levers.size()], 1));
        field = new Forecast(
                EvenShapeVariance.ofField(Math.max(0, fieldPercent * fieldPercent - ofField)), ofField, 0, now.trays());
        EvenShapeVariance ofTrays = EvenShapeVariance.of(now, shape, tramlines);
        reading = new Forecast(
                ofTrays, Math.max(1, ofTrays.evenSquare(shape)), now.cv().noisePercent(), now.trays());
    }

    private static double[] numbers(List<Observation> tests, ToDoubleFunction<Observation> number) {
        return tests.stream().mapToDouble(number).toArray();
    }

    private static boolean[] moved(List<double[]> settings, int levers) {
        boolean[] moved = new boolean[levers];
        for (double[] steps : settings) {
            for (int j = 0; j < levers; j++) {
                moved[j] |= steps[j] != 0;
            }
        }
        return moved;
    }

    private List<Case> cases(List<Directions> directions, double[] amplitudes) {
        List<AmplitudeModel.Fit> fits = directions.stream()
                .map(one -> centre.fit(amplitudes, one.centreSlope()))
                .toList();
        double best = fits.stream()
                .mapToDouble(AmplitudeModel.Fit::logLikelihood)
                .max()
                .orElseThrow();
        double sum = 0;
        double[] weights = new double[fits.size()];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = directions.get(i).prior() * Math.exp(fits.get(i).logLikelihood() - best);
            sum += weights[i];
        }
        List<Case> all = new ArrayList<>();
        for (int i = 0; i < weights.length; i++) {
            all.add(new Case(directions.get(i), fits.get(i), weights[i] / sum));
        }
        return all;
    }

    @Override
    public double squareAhead(int[] move) {
        return square(field.shapes(), steps(move), UNCERTAIN);
    }

    /** @param uncertain share of the variance that counts */
    private double square(EvenShapeVariance variance, double[] steps, double uncertain) {
        double quarterMean = quarter.mean(quarterFit, steps);
        double mean = 0;
        double meanSquare = 0;
        for (Case one : cases) {
            double ofCase = centre.mean(one.centre(), steps);
            mean += one.probability() * ofCase;
            meanSquare += one.probability() * ofCase * ofCase;
        }
        double centreVariance = centre.variance(steps) + meanSquare - mean * mean;
        return variance.cvSquare(mean, quarterMean)
                + uncertain
                        * (variance.centreShare() * centreVariance + variance.quarterShare() * quarter.variance(steps));
    }

    @Override
    public double probabilityWiderUp(int lever) {
        return cases.stream()
                .mapToDouble(one -> one.probability() * one.directions().widerUp()[lever])
                .sum();
    }

    @Override
    public double probabilityEmptiesMiddle(int lever) {
        return cases.stream()
                .mapToDouble(one -> one.probability()
                        * (one.directions().folded()
                                ? 1 - one.directions().widerUp()[lever]
                                : one.directions().widerUp()[lever]))
                .sum();
    }

    /** Probability that the throw reaches past the neighbouring tramline, so that wider fills the centre, 0 to 1. */
    double probabilityFolded() {
        return cases.stream()
                .filter(one -> one.directions().folded())
                .mapToDouble(Case::probability)
                .sum();
    }

    /** Tray CV that the next test is expected to read after a move, with its 90 % interval. */
    ExpectedCv expected(int[] move) {
        return expected(reading, steps(move));
    }

    /** Field CV expected after a move, with its 90 % interval. */
    ExpectedCv expectedField(int[] move) {
        return expected(field, steps(move));
    }

    private ExpectedCv expected(Forecast forecast, double[] steps) {
        CvDistribution distribution = new CvDistribution();
        double[] here = new double[steps.length];
        Forecast.Amplitude ofQuarter = new Forecast.Amplitude(
                quarter.mean(quarterFit, steps),
                Math.sqrt(quarter.variance(steps) + lessCertain * QUARTER_ERROR_PERCENT * QUARTER_ERROR_PERCENT));
        for (Case one : cases) {
            double mean = centre.mean(one.centre(), steps);
            double changeError = CHANGE_ERROR_SHARE * (mean - centre.mean(one.centre(), here));
            double modelError = CENTRE_ERROR_PERCENT * CENTRE_ERROR_PERCENT + changeError * changeError;
            forecast.add(
                    distribution,
                    one.probability(),
                    new Forecast.Amplitude(mean, Math.sqrt(centre.variance(steps) + lessCertain * modelError)),
                    ofQuarter);
        }
        return distribution.expected();
    }

    private static double[] steps(int[] move) {
        return Arrays.stream(move).asDoubleStream().toArray();
    }
}
