package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.PoissonSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.evenfall.flight.DrivingPattern;

/**
 * A machine that exists only here, with two vanes a disc, each of which throws one lobe. It is set for its width,
 * or mis-set, and may have a fault on its left side. Nothing of it is known to the advice.
 *
 * @param tramlines width and driving pattern
 * @param pass what one pass gives, by the distance from the tramline, m
 * @param granuleG mean granule, g
 * @param middleG what the mean tray catches, g
 */
record LobeMachine(Tramlines tramlines, DoubleUnaryOperator pass, double granuleG, double middleG) {

    /** What is wrong with the left side. */
    enum Fault {
        NONE(1, 1),
        /** The long vane throws short and wide of its lobe. */
        BADLY_WORN_VANE(0.74, 1),
        SLIGHTLY_WORN_VANE(0.88, 1),
        OUTLET_25_PERCENT_LOW(1, 0.75);

        private final double reach;
        private final double share;

        Fault(double reach, double share) {
            this.reach = reach;
            this.share = share;
        }
    }

    private static final double[] WIDTHS_M = {18, 21, 24, 28, 30, 32, 36};
    private static final double STEP_G = 0.1;

    /** The same machine for the same seed, mis-set or not, faulty or not. */
    static LobeMachine draw(long seed, boolean misSet, Fault fault, DrivingPattern pattern) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        double width = WIDTHS_M[random.nextInt(WIDTHS_M.length)];
        double longAt = width * random.nextDouble(0.36, 0.46);
        double longHalf = width * random.nextDouble(0.2, 0.3);
        double shortAt = width * random.nextDouble(0.12, 0.2);
        double shortHalf = width * random.nextDouble(0.2, 0.26);
        double longShare = random.nextDouble(0.45, 0.6);
        double off = random.nextBoolean() ? random.nextDouble(1.1, 1.25) : random.nextDouble(0.78, 0.9);
        double granule = random.nextDouble(0.02, 0.035);
        double catchG = random.nextDouble(6, 14);
        Tramlines tramlines = new Tramlines(width, pattern);
        double best = 1;
        for (double scale = 0.6; scale < 1.6; scale += 0.02) {
            if (cv(tramlines, lobes(scale, longAt, longHalf, shortAt, shortHalf, longShare, Fault.NONE))
                    < cv(tramlines, lobes(best, longAt, longHalf, shortAt, shortHalf, longShare, Fault.NONE))) {
                best = scale;
            }
        }
        return new LobeMachine(
                tramlines,
                lobes(misSet ? best * off : best, longAt, longHalf, shortAt, shortHalf, longShare, fault),
                granule,
                catchG);
    }

    private static DoubleUnaryOperator lobes(
            double scale, double longAt, double longHalf, double shortAt, double shortHalf, double share, Fault fault) {
        return x -> {
            double left = fault.share
                    * (share / longHalf * bell((x + scale * fault.reach * longAt) / (scale * longHalf))
                            + (1 - share) / shortHalf * bell((x + scale * shortAt) / (scale * shortHalf)));
            double right = share / longHalf * bell((x - scale * longAt) / (scale * longHalf))
                    + (1 - share) / shortHalf * bell((x - scale * shortAt) / (scale * shortHalf));
            return left + right;
        };
    }

    private static double bell(double z) {
        return Math.exp(-z * z);
    }

    /** The field at a place: three passes on either side are enough. */
    private static double field(Tramlines tramlines, DoubleUnaryOperator pass, double x) {
        double sum = 0;
        for (int k = -2; k <= 2; k++) {
            double away = x - k * tramlines.widthM();
            boolean turned = k % 2 != 0 && tramlines.pattern() != DrivingPattern.ROUND_AND_ROUND;
            sum += pass.applyAsDouble(turned ? -away : away);
        }
        return sum;
    }

    private static double cv(Tramlines tramlines, DoubleUnaryOperator pass) {
        double[] across = new double[60];
        for (int i = 0; i < across.length; i++) {
            across[i] = field(tramlines, pass, tramlines.widthM() * ((i + 0.5) / across.length - 0.5));
        }
        double mean = Arrays.stream(across).average().orElseThrow();
        return 100
                * Math.sqrt(Arrays.stream(across)
                        .map(each -> (each - mean) * (each - mean))
                        .average()
                        .orElseThrow())
                / mean;
    }

    /** True variation of the field, %. */
    double trueCv() {
        return cv(tramlines, pass);
    }

    /** A test with so many trays: whole granules, read to a tenth of a gram. */
    TrayCatches test(int trays, long seed) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        List<Double> places = TrayLayouts.of(tramlines.widthM(), trays, 0.25, tramlines.pattern())
                .positionsM();
        double[] truth =
                places.stream().mapToDouble(x -> field(tramlines, pass, x)).toArray();
        double mean = Arrays.stream(truth).average().orElseThrow();
        List<Double> grams = new ArrayList<>();
        for (double each : truth) {
            double granules = middleG * each / mean / granuleG;
            grams.add(STEP_G
                    * Math.round(granuleG * PoissonSampler.of(random, granules).sample() / STEP_G));
        }
        return new TrayCatches(places, grams, tramlines.widthM(), tramlines.pattern(), 0.25, 1, granuleG, STEP_G);
    }
}
