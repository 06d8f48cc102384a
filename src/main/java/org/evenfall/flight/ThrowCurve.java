package org.evenfall.flight;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.DividedDifferenceInterpolator;

/**
 * Landing distance and time of one granule over its horizontal speed through the air: a polynomial through a few flights at
 * Chebyshev points of a range of speeds.
 */
final class ThrowCurve {

    /** Speeds that differ by less than this share are one. */
    private static final double SAME_SPEED = 1e-9;

    private final UnivariateFunction distances;
    private final UnivariateFunction times;

    private ThrowCurve(UnivariateFunction distances, UnivariateFunction times) {
        this.distances = distances;
        this.times = times;
    }

    /**
     * The curve of a granule in still air.
     *
     * @param slowest slowest horizontal speed of the range, m/s
     * @param fastest fastest, m/s
     * @param nodes flights computed, at least 1; one where all speeds are the same
     * @param upMPerS vertical speed at the start, m/s
     * @param heightM height of the start over the landing, m
     */
    static ThrowCurve of(Granule granule, double slowest, double fastest, int nodes, double upMPerS, double heightM) {
        int flights = fastest - slowest > SAME_SPEED * fastest ? nodes : 1;
        double[] speeds = new double[flights];
        double[] distances = new double[flights];
        double[] times = new double[flights];
        Trajectory.RelaxationRate rate = Trajectory.sphere(granule, Air.STANDARD);
        for (int i = 0; i < flights; i++) {
            double chebyshev = Math.cos(Math.PI * (2 * i + 1) / (2.0 * flights));
            speeds[i] = 0.5 * (slowest + fastest) - 0.5 * (fastest - slowest) * chebyshev;
            Trajectory.State landed = Trajectory.integrateToGround(
                    rate, Flight.GRAVITY_M_PER_S2, heightM, speeds[i], upMPerS, Trajectory.PATTERN_STEP);
            distances[i] = landed.x();
            times[i] = landed.timeS();
        }
        return new ThrowCurve(through(speeds, distances), through(speeds, times));
    }

    private static UnivariateFunction through(double[] speeds, double[] values) {
        return values.length == 1
                ? speed -> values[0]
                : new DividedDifferenceInterpolator().interpolate(speeds, values);
    }

    /** Landing distance at a horizontal speed, m. */
    double distanceM(double speed) {
        return distances.value(speed);
    }

    /** Time of flight at a horizontal speed, s. */
    double timeS(double speed) {
        return times.value(speed);
    }
}
