package org.evenfall.trays;

/**
 * What is believed before any test of how an amplitude follows the settings of the levers: a straight line with a slope for
 * each lever, bent a little, and off it a little from one setting to the next. All are standard deviations.
 *
 * @param offset of the amplitude at the settings now, % of the mean
 * @param slope of the change a step up the scale of a lever, % of the mean
 * @param bend of what a step changes more or less for each step further, % of the mean
 * @param offLine of the distance from the bent line, % of the mean
 */
record AmplitudePrior(double offset, double slope, double bend, double offLine) {

    /**
     * Assumption: what a step towards wider takes from the centre-overlap shape, % of the mean. Like the other constants here
     * set on machines of the landing model and tried on others ({@code trays.ground} of the tests).
     */
    static final double CENTRE_STEP_PERCENT = 5;

    /** Assumption: the centre-overlap shape, its slope about {@link #CENTRE_STEP_PERCENT}. */
    static final AmplitudePrior CENTRE = new AmplitudePrior(40, 2.5, 0.15, 2);

    /** Assumption: the quarter-point shape, its slope about 0. */
    static final AmplitudePrior QUARTER = new AmplitudePrior(8, 1, 0.075, 1.5);

    /** Assumption: settings this many steps apart are off the line to the same side, by e^−½ as much. */
    private static final double ALIKE_STEPS = 1.5;

    /**
     * Prior covariance of the amplitude at two settings, %².
     *
     * @param one steps of each lever from the settings now
     * @param other as many
     * @param slopeVariance of each lever, %²
     */
    double covariance(double[] one, double[] other, double[] slopeVariance) {
        double line = 0;
        double product = 0;
        double apart = 0;
        for (int j = 0; j < one.length; j++) {
            line += slopeVariance[j] * one[j] * other[j];
            product += one[j] * other[j];
            apart += (one[j] - other[j]) * (one[j] - other[j]);
        }
        return offset * offset
                + line
                + bend * bend * product * product
                + offLine * offLine * Math.exp(-apart / (2 * ALIKE_STEPS * ALIKE_STEPS));
    }
}
