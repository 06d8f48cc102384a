package org.evenfall.trays;

/**
 * A CV after a move: of the field, or as the trays will read it. Counting and reading noise of the next test are in a
 * reading: its square has the mean CV² + σ² and the variance (2 σ⁴ + 4 σ² CV²) / (n − 1), σ the noise of a tray and n their
 * number.
 *
 * @param shapes what the even shapes add
 * @param noisePercent noise of a tray, %; 0 for the field itself
 * @param trays how many, at least 2
 */
record Forecast(EvenShapeVariance shapes, double noisePercent, int trays) {

    /** Five equally likely values with the mean 0 and the standard deviation 1 of a normal number. */
    private static final double[] NORMAL_NODES = {-1.47, -0.55, 0, 0.55, 1.47};

    /** Assumption: what the two shapes do not explain changes by this share, in squares, from one setting to another. */
    private static final double RESIDUAL_ERROR_SHARE = 1;

    /** Assumption: no test reads less than this share of its noise, in squares. */
    private static final double LEAST_SQUARE = 0.1;

    /** A normal amplitude, % of the mean. */
    record Amplitude(double mean, double error) {}

    /** Adds what these amplitudes make to a distribution, with a weight above 0. */
    void add(CvDistribution distribution, double weight, Amplitude centre, Amplitude quarter) {
        double noise = noisePercent * noisePercent;
        double residualError = RESIDUAL_ERROR_SHARE * shapes.residualVariance();
        for (double c : NORMAL_NODES) {
            for (double q : NORMAL_NODES) {
                double square =
                        shapes.cvSquare(centre.mean + c * centre.error, quarter.mean + q * quarter.error);
                double error = Math.sqrt(residualError * residualError
                        + (2 * noise * noise + 4 * noise * square) / (trays - 1));
                for (double r : NORMAL_NODES) {
                    distribution.add(
                            Math.sqrt(Math.max(LEAST_SQUARE * noise, square + noise + r * error)), weight);
                }
            }
        }
    }
}
