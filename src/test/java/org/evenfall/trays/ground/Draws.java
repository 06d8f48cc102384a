package org.evenfall.trays.ground;

import java.util.Random;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The hidden numbers of one machine, all from 0 to 1 and spread evenly, read one after the other. A machine is a function of
 * them, so that whoever knows the physics can search among them.
 */
final class Draws {

    /** More than any machine reads. */
    static final int MOST = 40;

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private final double[] numbers;
    private int next;

    Draws(double[] numbers) {
        this.numbers = numbers;
    }

    static double[] numbers(Random random) {
        return random.doubles(MOST).toArray();
    }

    double unit() {
        return numbers[next++];
    }

    double between(double low, double high) {
        return low + (high - low) * unit();
    }

    /** A number of a normal distribution about 0, cut at 3.3 standard deviations. */
    double normal(double deviation) {
        return deviation * STANDARD.inverseCumulativeProbability(Math.max(5e-4, Math.min(1 - 5e-4, unit())));
    }

    /** A whole number from low to high, both included. */
    int whole(int low, int high) {
        return Math.min(high, low + (int) ((high - low + 1) * unit()));
    }
}
