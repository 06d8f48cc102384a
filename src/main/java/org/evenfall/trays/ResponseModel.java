package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.evenfall.machine.Lever;
import org.evenfall.quantity.Interval;

/**
 * What is known from the tests of how the levers move the shapes. Unknown are: which curve the machine follows
 * ({@link ShapeCurve}), where on it the settings now are, and for each lever how far one step goes along the curve, which
 * way, and what it does to the quarter points apart from the curve ({@link LeverResponse}). Every test adds what its noise
 * allows. Bayesian: the answers of the levers are a fixed sample of their priors, the place on the curve is a grid, and each
 * combination ({@link Hypothesis}) is weighted by how well it explains the tests.
 */
final class ResponseModel implements MoveOutlook {

    private static final int GRID_POINTS = 121;

    /** Hypotheses that weigh less than this against the best are left out. */
    private static final double LOG_LEAST_WEIGHT = Math.log(1e-4);

    /** Grid points further off than this, in squared standard errors, cannot explain the last test. */
    private static final double MOST_SQUARED_ERRORS = 30;

    /** CVs are counted in tenths of a percent up to 300 %. */
    private static final int CV_TENTHS = 3000;

    /** Outside each end of the 90 % interval. */
    private static final double TAIL = 0.05;

    /** Five equally likely values with the mean 0 and the standard deviation 1 of a normal number. */
    private static final double[] NORMAL_NODES = {-1.47, -0.55, 0, 0.55, 1.47};

    /** Assumption: no test reads less than this share of its noise, in squares. */
    private static final double LEAST_SQUARE = 0.1;

    /** @param weight at most 1, relative to the best hypothesis */
    private record Weighted(Hypothesis hypothesis, double weight) {}

    private final EvenShapeVariance variance;
    private final double noisePercent;
    private final int trays;
    private final List<Weighted> posterior;

    /**
     * A model that knows the tests.
     *
     * @param done at least one test, oldest first; the settings of the last are those of the machine now
     * @param levers levers that may be moved
     * @param curves curves that the machine may follow, at least one
     */
    ResponseModel(List<AdviceInput.DoneTest> done, List<Lever> levers, List<ShapeCurve> curves, Tramlines tramlines) {
        AdviceInput.DoneTest last = done.get(done.size() - 1);
        List<Observation> tests = done.stream()
                .map(test -> Observation.of(test, last.settings(), levers))
                .flatMap(Optional::stream)
                .toList();
        variance = EvenShapeVariance.of(last.evenness(), tramlines);
        noisePercent = last.evenness().cv().noisePercent();
        trays = last.evenness().trays();
        posterior = posterior(curves, LeverResponse.prior(levers), tests);
    }

    private static List<Weighted> posterior(
            List<ShapeCurve> curves, List<LeverResponse> responses, List<Observation> tests) {
        List<List<Double>> gridPoints = gridPoints(curves, tests);
        List<Hypothesis> candidates = new ArrayList<>();
        double best = Double.NEGATIVE_INFINITY;
        for (LeverResponse response : responses) {
            for (int c = 0; c < curves.size(); c++) {
                for (double placeDeg : gridPoints.get(c)) {
                    Hypothesis hypothesis = Hypothesis.weighted(curves.get(c), placeDeg, response, tests);
                    best = Math.max(best, hypothesis.logWeight());
                    if (hypothesis.logWeight() > best + LOG_LEAST_WEIGHT) {
                        candidates.add(hypothesis);
                    }
                }
            }
        }
        double most = best;
        return candidates.stream()
                .filter(hypothesis -> hypothesis.logWeight() > most + LOG_LEAST_WEIGHT)
                .map(hypothesis -> new Weighted(hypothesis, Math.exp(hypothesis.logWeight() - most)))
                .toList();
    }

    /** Places on each curve that the last test allows at all; all of them where it allows none. */
    private static List<List<Double>> gridPoints(List<ShapeCurve> curves, List<Observation> tests) {
        List<List<Double>> allowed = curves.stream()
                .map(curve -> grid(curve).stream()
                        .filter(placeDeg -> tests.isEmpty() || explains(curve, placeDeg, tests.get(tests.size() - 1)))
                        .toList())
                .toList();
        return allowed.stream().allMatch(List::isEmpty)
                ? curves.stream().map(ResponseModel::grid).toList()
                : allowed;
    }

    private static List<Double> grid(ShapeCurve curve) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < GRID_POINTS; i++) {
            places.add(curve.lowestDeg() + (curve.highestDeg() - curve.lowestDeg()) * i / (GRID_POINTS - 1.0));
        }
        return places;
    }

    private static boolean explains(ShapeCurve curve, double placeDeg, Observation test) {
        double residual = test.centrePercent() - curve.centrePercent(placeDeg);
        return residual * residual / test.centreVariance() <= MOST_SQUARED_ERRORS;
    }

    @Override
    public double expectedSquare(int[] move) {
        return mean(hypothesis -> hypothesis.cvSquareAfter(move, variance));
    }

    @Override
    public double probabilityWiderUp(int lever) {
        return mean(hypothesis -> hypothesis.response().slopeDeg()[lever] > 0 ? 1 : 0);
    }

    private double mean(ToDoubleFunction<Hypothesis> figure) {
        double sum = 0;
        double weights = 0;
        for (Weighted one : posterior) {
            sum += one.weight() * figure.applyAsDouble(one.hypothesis());
            weights += one.weight();
        }
        return sum / weights;
    }

    /**
     * Tray CV that the next test is expected to read after a move, its median, with its 90 % interval to a tenth of a
     * percent. Counting and reading noise of the next test and the error of the curves are in it: the square of a reading has
     * the mean CV² + σ² and the variance of CV² + (2 σ⁴ + 4 σ² CV²) / (n − 1), σ the noise of a tray and n their number.
     */
    ExpectedCv expected(int[] move) {
        double[] weightAt = new double[CV_TENTHS + 1];
        double weights = 0;
        double noise = noisePercent * noisePercent;
        for (Weighted one : posterior) {
            double square = one.hypothesis().cvSquareAfter(move, variance);
            double error = Math.sqrt(one.hypothesis().squareVarianceAfter(move, variance)
                    + (2 * noise * noise + 4 * noise * square) / (trays - 1));
            for (double node : NORMAL_NODES) {
                double reading = Math.sqrt(Math.max(LEAST_SQUARE * noise, square + noise + node * error));
                weightAt[(int) Math.min(CV_TENTHS, 10 * reading)] += one.weight();
                weights += one.weight();
            }
        }
        double median = quantile(weightAt, weights / 2);
        return new ExpectedCv(
                median, new Interval(quantile(weightAt, TAIL * weights), quantile(weightAt, (1 - TAIL) * weights)));
    }

    private static double quantile(double[] weightAt, double passed) {
        double left = passed;
        int tenths = 0;
        while (tenths < CV_TENTHS && left > weightAt[tenths]) {
            left -= weightAt[tenths];
            tenths++;
        }
        return tenths / 10.0;
    }
}
