package org.evenfall.trays.proof;

import static org.evenfall.trays.proof.PatternFamily.between;
import static org.evenfall.trays.proof.PatternFamily.logBetween;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.evenfall.flight.SpreadPattern;

/**
 * Family (c): skewed bells with sides of their own, random bumps, and correlated noise: white noise twice through a filter
 * of first order, which is a Matérn process of order 3/2, with a random correlation length.
 */
final class RoughFamily implements PatternFamily {

    private static final double STEP_M = 0.1;

    @Override
    public SpreadPattern draw(UniformRandomProvider random, double widthM) {
        double[] half = new double[2];
        double[] power = new double[2];
        half[0] = between(random, 0.43, 0.57) * widthM;
        power[0] = logBetween(random, 1.5, 6);
        half[1] = half[0] * between(random, 0.92, 1.08);
        power[1] = power[0] * between(random, 0.8, 1.25);
        double shift = between(random, -0.03, 0.03) * widthM;
        DoubleUnaryOperator amount = x -> {
            int side = x < shift ? 0 : 1;
            return Math.exp(-Math.log(2) * Math.pow(Math.abs(x - shift) / half[side], power[side]));
        };
        DoubleUnaryOperator bumps = x -> 1;
        int count = random.nextInt(5);
        for (int i = 0; i < count; i++) {
            double middle = between(random, -0.7, 0.7) * widthM;
            double width = Math.max(1, logBetween(random, 0.04, 0.2) * widthM);
            double height = between(random, -0.25, 0.25);
            DoubleUnaryOperator before = bumps;
            bumps = x ->
                    before.applyAsDouble(x) + height * Math.exp(-(x - middle) * (x - middle) / (2 * width * width));
        }
        double reach = 1.45 * widthM;
        double[] noise = noise(random, reach, logBetween(random, 2, Math.max(2.5, 0.25 * widthM)));
        double sd = between(random, 0.01, 0.12);
        DoubleUnaryOperator all = bumps;
        return PatternFamily.sampled(
                reach,
                x -> amount.applyAsDouble(x)
                        * Math.max(0, all.applyAsDouble(x) + sd * noise[(int) Math.round((x + reach) / STEP_M)]));
    }

    /** Matérn noise of order 3/2 with mean 0 and standard deviation 1 on an even grid. */
    private static double[] noise(UniformRandomProvider random, double reachM, double lengthM) {
        ZigguratSampler.NormalizedGaussian gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        int count = (int) Math.round(2 * reachM / STEP_M) + 2;
        double keep = Math.exp(-Math.sqrt(3) * STEP_M / lengthM);
        int settle = (int) (10 * lengthM / STEP_M);
        double[] noise = new double[count];
        double first = 0;
        double second = 0;
        // variance of two equal filters of first order in a row, fed with unit white noise
        double variance = (1 + keep * keep) / Math.pow(1 - keep * keep, 3);
        for (int i = -settle; i < count; i++) {
            first = keep * first + gaussian.sample();
            second = keep * second + first;
            if (i >= 0) {
                noise[i] = second / Math.sqrt(variance);
            }
        }
        return noise;
    }
}
