package org.evenfall.trays;

/**
 * A CV after a move: of the field, or as the trays will read it. Counting and reading noise of the next test are in a
 * reading: its square has the mean CV² + σ² and the variance (2 σ⁴ + 4 σ² CV²) / (n − 1), σ the noise of a tray and n their
 * number.
 *
 * @param shapes what the even shapes add to CV², and what else there is now
 * @param evenSquareNow what they add now, %², above 0: what else there is falls with them
 * @param noisePercent noise of a tray, %; 0 for the field itself
 * @param trays how many, at least 2
 */
record Forecast(EvenShapeVariance shapes, double evenSquareNow, double noisePercent, int trays) {

    /** Five equally likely values with the mean 0 and the standard deviation 1 of a normal number. */
    private static final double[] NORMAL_NODES = {-1.47, -0.55, 0, 0.55, 1.47};

    /** The same, finer: a CV is least where the centre amplitude crosses 0. */
    private static final double[] CENTRE_NODES = {
        -1.85, -1.29, -0.97, -0.73, -0.53, -0.34, -0.17, 0, 0.17, 0.34, 0.53, 0.73, 0.97, 1.29, 1.85
    };

    /**
     * Assumption: what the two shapes do not explain is, at another setting, one of these multiples of what is expected, in
     * squares, equally likely.
     */
    private static final double[] REST_NODES = {0.2, 0.5, 1, 1.5, 2.5};

    /** Assumption: this share of what the two shapes do not explain stays where they vanish. */
    private static final double LEAST_REST = 0.1;

    /** Assumption: no test reads less than this share of its noise, in squares. */
    private static final double LEAST_SQUARE = 0.1;

    /**
     * A normal amplitude.
     *
     * @param mean % of the mean catch
     * @param error its standard deviation, %, at least 0
     */
    record Amplitude(double mean, double error) {}

    /** Adds what these amplitudes make to a distribution, with a weight above 0. */
    void add(CvDistribution distribution, double weight, Amplitude centre, Amplitude quarter) {
        for (double c : CENTRE_NODES) {
            for (double q : NORMAL_NODES) {
                add(
                        distribution,
                        weight,
                        shapes.evenSquare(centre.mean + c * centre.error, quarter.mean + q * quarter.error));
            }
        }
    }

    private void add(CvDistribution distribution, double weight, double evenSquare) {
        double rest = shapes.residualVariance() * Math.min(1, LEAST_REST + evenSquare / evenSquareNow);
        double noise = noisePercent * noisePercent;
        for (double r : REST_NODES) {
            double square = evenSquare + r * rest;
            double error = Math.sqrt((2 * noise * noise + 4 * noise * square) / (trays - 1));
            for (double n : NORMAL_NODES) {
                distribution.add(Math.sqrt(Math.max(LEAST_SQUARE * noise, square + noise + n * error)), weight);
            }
        }
    }
}
