package org.evenfall.trays;

import org.evenfall.quantity.Interval;

/** A distribution of a CV, counted in tenths of a percent up to 300 %. */
final class CvDistribution {

    private static final int MOST_TENTHS = 3000;

    /** Outside each end of the 90 % interval. */
    private static final double TAIL = 0.05;

    private final double[] weightAt = new double[MOST_TENTHS + 1];
    private double weights;

    /** Adds a CV, %, at least 0, with a weight above 0. */
    void add(double percent, double weight) {
        weightAt[(int) Math.min(MOST_TENTHS, 10 * percent)] += weight;
        weights += weight;
    }

    /** Its median and its 90 % interval, to a tenth of a percent. */
    ExpectedCv expected() {
        return new ExpectedCv(quantile(0.5), new Interval(quantile(TAIL), quantile(1 - TAIL)));
    }

    private double quantile(double share) {
        double left = share * weights;
        int tenths = 0;
        while (tenths < MOST_TENTHS && left > weightAt[tenths]) {
            left -= weightAt[tenths];
            tenths++;
        }
        return tenths / 10.0;
    }
}
