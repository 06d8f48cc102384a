package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One assumption on how large the shapes of a field are before the trays are read; the estimate weighs all of {@link #ALL}.
 * The variance of each shape is a sum of the {@link #COMPONENTS} times the squared amounts of this prior.
 *
 * <p>Assumption: every constant. They span smooth and rough patterns, nearly the same and quite different sides, unevenness
 * of 0.5 to 50 %.
 */
final class FieldCvPrior {

    private static final int SIZES = 10;
    private static final double SMALLEST_SIZE = 0.005;
    private static final double LARGEST_OVER_SMALLEST = 100;

    /** Sizes well above this become unlikely. */
    private static final double LIKELY_SIZE = 0.25;

    /** How the variance of the even shapes falls from each to the next: centre or overlap heavy only, up to many ripples. */
    private static final double[] EVEN_FALLS = {0.15, 0.5, 0.8};

    /** How the variance of the odd shapes falls. */
    private static final double ODD_FALL = 0.6;

    /** Share of the variance that the odd shapes have. */
    private static final double[] ODD_SHARES = {0.05, 0.35};

    /** Size of a rough part in all shapes up to about {@link #ROUGH_UP_TO_MODE}. */
    private static final double[] ROUGHNESSES = {0.01, 0.04};

    private static final double ROUGH_UP_TO_MODE = 16;
    private static final int ROUGH_FALL_POWER = 4;

    /** Variance of the mean level of the field about the mean of the trays. */
    private static final double LEVEL_VARIANCE = 0.25;

    private static final int ODD = EVEN_FALLS.length;
    private static final int ROUGH = ODD + 1;
    private static final int LEVEL = ROUGH + 1;

    /** First index the component; second index the shape, 0 the mean level: shares of variance with the sum 1. */
    static final double[][] COMPONENTS = components();

    /** All priors. */
    static final List<FieldCvPrior> ALL = all();

    private final double[] amounts = new double[COMPONENTS.length];
    private final double[] variances;
    private final double logProbability;

    private FieldCvPrior(double size, int even, double oddShare, double roughness) {
        amounts[even] = size * size * (1 - oddShare);
        amounts[ODD] = size * size * oddShare;
        amounts[ROUGH] = roughness * roughness;
        amounts[LEVEL] = LEVEL_VARIANCE;
        variances = new double[FieldCvModes.COUNT + 1];
        for (int component = 0; component < amounts.length; component++) {
            for (int mode = 0; mode < variances.length; mode++) {
                variances[mode] += amounts[component] * COMPONENTS[component][mode];
            }
        }
        logProbability = Math.log(size / (1 + size * size / (LIKELY_SIZE * LIKELY_SIZE)));
    }

    private static List<FieldCvPrior> all() {
        List<FieldCvPrior> all = new ArrayList<>();
        for (int i = 0; i < SIZES; i++) {
            double size = SMALLEST_SIZE * Math.pow(LARGEST_OVER_SMALLEST, i / (SIZES - 1.0));
            for (int even = 0; even < EVEN_FALLS.length; even++) {
                for (double oddShare : ODD_SHARES) {
                    for (double roughness : ROUGHNESSES) {
                        all.add(new FieldCvPrior(size, even, oddShare, roughness));
                    }
                }
            }
        }
        return List.copyOf(all);
    }

    private static double[][] components() {
        double[][] components = new double[LEVEL + 1][FieldCvModes.COUNT + 1];
        components[LEVEL][0] = 1;
        for (int mode = 1; mode <= FieldCvModes.COUNT; mode++) {
            int before = FieldCvModes.harmonic(mode) - 1;
            if (FieldCvModes.even(mode)) {
                for (int even = 0; even < EVEN_FALLS.length; even++) {
                    components[even][mode] = (1 - EVEN_FALLS[even]) * Math.pow(EVEN_FALLS[even], before);
                }
            } else {
                components[ODD][mode] = (1 - ODD_FALL) * Math.pow(ODD_FALL, before);
            }
            components[ROUGH][mode] = 1 / (1 + Math.pow(mode / ROUGH_UP_TO_MODE, ROUGH_FALL_POWER));
        }
        double rough = Arrays.stream(components[ROUGH]).sum();
        components[ROUGH] =
                Arrays.stream(components[ROUGH]).map(each -> each / rough).toArray();
        return components;
    }

    /** Variance that a component has in this prior. */
    double amount(int component) {
        return amounts[component];
    }

    /** Variance of each shape, share of the mean squared; 0 is the mean level. */
    double[] variances() {
        return variances.clone();
    }

    /** Logarithm of the probability of this prior, up to a constant. */
    double logProbability() {
        return logProbability;
    }
}
