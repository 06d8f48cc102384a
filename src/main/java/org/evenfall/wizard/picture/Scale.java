package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a value is drawn on the screen.
 *
 * @param from value at the start
 * @param to value at the end, not equal to from
 * @param start pixel of from
 * @param end pixel of to
 */
record Scale(double from, double to, double start, double end) {

    double at(double value) {
        return start + (value - from) / (to - from) * (end - start);
    }

    /** Kept within the scale's ends. */
    double clamped(double value) {
        return at(Math.max(Math.min(from, to), Math.min(Math.max(from, to), value)));
    }

    /** Pixels of a length, always positive. */
    double length(double value) {
        return Math.abs(value / (to - from) * (end - start));
    }

    /** Round values between the ends, at most so many. */
    List<Double> ticks(int most) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        double step = roundStep((high - low) / Math.max(1, most));
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** Decimals that tell the ticks apart. */
    int tickDecimals(int most) {
        double step = roundStep(Math.abs(to - from) / Math.max(1, most));
        return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    }

    /** The next of 1, 2, 5, 10 … not below. */
    private static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * power >= least * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }
}
