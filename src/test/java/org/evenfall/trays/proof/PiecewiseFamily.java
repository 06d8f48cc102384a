package org.evenfall.trays.proof;

import static org.evenfall.trays.proof.PatternFamily.between;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.rng.UniformRandomProvider;
import org.evenfall.flight.SpreadPattern;

/**
 * Family (b): straight lines between kinks. Each side is a trapezium, a triangle, a shoulder or a "W" with its own kinks and
 * slopes; one side may give less throughout, and a worn vane may leave a dent.
 */
final class PiecewiseFamily implements PatternFamily {

    private enum Shape {
        TRAPEZIUM,
        TRIANGLE,
        SHOULDER,
        W
    }

    @Override
    public SpreadPattern draw(UniformRandomProvider random, double widthM) {
        Shape shape = Shape.values()[random.nextInt(Shape.values().length)];
        double half = between(random, 0.42, 0.58);
        double steep = between(random, 0.1, 1);
        double inner = between(random, 0, 1);
        double drop = between(random, 0.05, 0.3);
        boolean alike = random.nextDouble() < 0.4;
        double[][] left = kinks(shape, half, steep, inner, drop);
        double[][] right = alike
                ? left
                : kinks(
                        shape,
                        half + between(random, -0.05, 0.05),
                        Math.min(1, steep * between(random, 0.8, 1.25)),
                        inner,
                        drop * between(random, 0.7, 1.3));
        double fault = random.nextDouble() < 0.3 ? between(random, 0.75, 0.97) : 1;
        DoubleUnaryOperator dent = random.nextDouble() < 0.3 ? dent(random, widthM) : x -> 1;
        return PatternFamily.sampled(
                1.3 * widthM,
                x -> dent.applyAsDouble(x) * (x < 0 ? fault * at(left, -x / widthM) : at(right, x / widthM)));
    }

    /** Kinks of one side: distance over the width, amount over that at the tramline or nearly so. */
    private static double[][] kinks(Shape shape, double half, double steep, double inner, double drop) {
        // half the amount at the half-rate point, the slope as long as 'steep' of twice the way to it
        double slope = shape == Shape.TRAPEZIUM ? steep : steep / 2;
        double from = half * (1 - slope);
        double to = half * (1 + slope);
        return switch (shape) {
            case TRAPEZIUM -> new double[][] {{0, 1}, {from, 1}, {to, 0}};
            case TRIANGLE -> new double[][] {{0, 1}, {2 * half, 0}};
            case SHOULDER ->
                new double[][] {
                    {0, 1},
                    {(0.3 + 0.4 * inner) * half, 1 - drop},
                    {from + 0.3 * half, 1 - 1.3 * drop},
                    {to + 0.3 * half, 0}
                };
            case W ->
                new double[][] {
                    {0, 1},
                    {(0.25 + 0.2 * inner) * half, 1 - drop},
                    {(0.65 + 0.2 * inner) * half, 1},
                    {0.9 * half + from / 10, 0.9},
                    {to + 0.2 * half, 0}
                };
        };
    }

    private static double at(double[][] kinks, double place) {
        for (int i = 1; i < kinks.length; i++) {
            double[] one = kinks[i - 1];
            double[] next = kinks[i];
            if (place <= next[0] && next[0] > one[0]) {
                return one[1] + Math.max(0, (place - one[0]) / (next[0] - one[0])) * (next[1] - one[1]);
            }
        }
        return 0;
    }

    /** A triangular dent at a random place. */
    private static DoubleUnaryOperator dent(UniformRandomProvider random, double widthM) {
        double middle = between(random, -0.6, 0.6) * widthM;
        double reach = Math.max(1.5, between(random, 0.06, 0.2) * widthM);
        double depth = between(random, 0.1, 0.5);
        return x -> 1 - depth * Math.max(0, 1 - Math.abs(x - middle) / reach);
    }
}
