package org.evenfall.flight;

/**
 * Landing distance and time of one granule over its horizontal speed through the air, through a few flights at Chebyshev
 * points of a range of speeds.
 */
final class ThrowCurve {

    private final double[] speeds;
    private final double[] distances;
    private final double[] times;
    private final double[] weights;

    private ThrowCurve(double[] speeds, double[] distances, double[] times) {
        this.speeds = speeds;
        this.distances = distances;
        this.times = times;
        this.weights = new double[speeds.length];
        for (int i = 0; i < speeds.length; i++) {
            weights[i] = 1;
            for (int j = 0; j < speeds.length; j++) {
                if (j != i) {
                    weights[i] /= speeds[i] - speeds[j];
                }
            }
        }
    }

    /**
     * @param slowest slowest horizontal speed asked for, m/s
     * @param fastest fastest, m/s
     * @param nodes flights that are flown, one where all speeds are the same
     * @param upMPerS vertical speed at the start, m/s
     */
    static ThrowCurve of(Granule granule, double slowest, double fastest, int nodes, double upMPerS, double heightM) {
        int flown = fastest - slowest > 1e-9 * fastest ? nodes : 1;
        double[] speeds = new double[flown];
        double[] distances = new double[flown];
        double[] times = new double[flown];
        DormandPrince flight = new DormandPrince(new SphereLaw(granule, Air.STANDARD), Flight.GRAVITY_M_PER_S2);
        for (int i = 0; i < flown; i++) {
            speeds[i] = 0.5 * (slowest + fastest)
                    - 0.5 * (fastest - slowest) * Math.cos(Math.PI * (2 * i + 1) / (2.0 * flown));
            flight.fall(heightM, speeds[i], upMPerS);
            distances[i] = flight.xM();
            times[i] = flight.timeS();
        }
        return new ThrowCurve(speeds, distances, times);
    }

    double distanceM(double speed) {
        return at(speed, distances);
    }

    double timeS(double speed) {
        return at(speed, times);
    }

    /** Barycentric interpolation. */
    private double at(double speed, double[] values) {
        double above = 0;
        double below = 0;
        for (int i = 0; i < speeds.length; i++) {
            double distance = speed - speeds[i];
            if (distance == 0) {
                return values[i];
            }
            double weight = weights[i] / distance;
            above += weight * values[i];
            below += weight;
        }
        return above / below;
    }
}
