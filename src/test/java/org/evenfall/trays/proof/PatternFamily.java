package org.evenfall.trays.proof;

import org.apache.commons.rng.UniformRandomProvider;
import org.evenfall.flight.SpreadPattern;

/**
 * A way to draw what one pass of a virtual machine gives across the travel. No family knows the shapes or constants of the
 * estimator of the field CV. None has structure finer than about 2 m: granules of one vane come down over metres.
 */
interface PatternFamily {

    /** A random pattern of a machine that is meant for a working width, m; its reach is at most 1.5 widths a side. */
    SpreadPattern draw(UniformRandomProvider random, double widthM);

    /** A number spread evenly between two. */
    static double between(UniformRandomProvider random, double low, double high) {
        return random.nextDouble(low, high);
    }

    /** A number whose logarithm is spread evenly between those of two. */
    static double logBetween(UniformRandomProvider random, double low, double high) {
        return Math.exp(random.nextDouble(Math.log(low), Math.log(high)));
    }

    /** Samples a pattern on an even grid of about 0.1 m, nothing below 0. */
    static SpreadPattern sampled(double reachM, java.util.function.DoubleUnaryOperator amount) {
        int cells = (int) Math.ceil(2 * reachM / 0.1);
        double[] places = new double[cells + 1];
        double[] amounts = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            places[i] = reachM * (2.0 * i / cells - 1);
            amounts[i] = Math.max(0, amount.applyAsDouble(places[i]));
        }
        return new SpreadPattern(places, amounts);
    }
}
