package org.evenfall.reference;

import java.util.stream.IntStream;
import org.evenfall.flight.ThrowAssumptions;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.NinetyPercent;

/**
 * 90 % interval of the difference of two throws at the edge: from every measurement of both products and from the range of
 * the model. Under each of {@link ThrowAssumptions#RANGE} the difference has its own 90 % interval; the widest ends of all
 * are taken, so that it holds at least nine times in ten whichever assumption is true.
 */
final class ThrowRange {

    private ThrowRange() {}

    /**
     * The interval; it always encloses the difference under the usual assumptions.
     *
     * @param product throw of the one product
     * @param other throw of the other
     * @param errorM standard error of the difference from the measurements under the usual assumptions, m
     */
    static Interval differenceM(ProductThrow product, ProductThrow other, double errorM) {
        double usualM = product.edge().metres() - other.edge().metres();
        return IntStream.range(0, ThrowAssumptions.RANGE.size())
                .mapToObj(i -> differenceM(product, other, errorM, i))
                .reduce(NinetyPercent.of(usualM, 0), ThrowRange::widest);
    }

    /** Farthest end of it, % of the throw of the other under the same assumption, without its sign. */
    static double farthestPercent(ProductThrow product, ProductThrow other, double errorM) {
        double farthest = 0;
        for (int i = 0; i < ThrowAssumptions.RANGE.size(); i++) {
            Interval interval = differenceM(product, other, errorM, i);
            double metres = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
            farthest = Math.max(farthest, 100 * metres / other.edgesM().get(i));
        }
        return farthest;
    }

    /** Under one of the assumptions. */
    private static Interval differenceM(ProductThrow product, ProductThrow other, double errorM, int assumption) {
        return NinetyPercent.of(
                product.edgesM().get(assumption) - other.edgesM().get(assumption),
                errorM * product.sensitivities().get(assumption));
    }

    private static Interval widest(Interval one, Interval other) {
        return new Interval(Math.min(one.low(), other.low()), Math.max(one.high(), other.high()));
    }
}
