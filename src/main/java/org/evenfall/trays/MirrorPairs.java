package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.evenfall.flight.DrivingPattern;

/**
 * Whether one side gets less than the other, from all pairs of trays that a machine with two equal sides would fill alike,
 * each against its noise: Σ d²/s² of the differences d, right less left, is chi-squared with as many degrees of freedom as
 * there are pairs.
 *
 * <p>Which trays are a pair follows from how the field is driven:
 *
 * <ul>
 *   <li>Back and forth each side meets its own kind: the places x and −x are a pair, also the two outermost midway to the
 *       next tramlines, the left one between two left sides, the right one between two right sides.
 *   <li>Round and round left meets right and the field repeats every width W: x and −x are a pair, but not the places midway
 *       at ±W/2, which are one place. They would add noise and no knowledge, and are left out.
 * </ul>
 *
 * <p>A tray without a partner within {@value #TOLERANCE_M} m of its mirrored place is left out, nothing is interpolated: a
 * place in between would take its value from the shape that is in doubt.
 *
 * @param pairs how many pairs there are
 * @param chiSquared sum of their squared differences over their variances, at least 0
 * @param sideSquare what the sides add to CV² beyond the noise, %², at least 0
 * @param leftLessRightPercent difference of the most significant pair, % of the mean; 0 without a pair
 * @param distanceM how far from the tramline that pair is, m, at least 0
 */
record MirrorPairs(int pairs, double chiSquared, double sideSquare, double leftLessRightPercent, double distanceM) {

    /** Chance of so large a sum on a machine with equal sides below which one side gets less. Assumption: 1 %. */
    static final double LEVEL = 0.01;

    /** Largest distance of a tray from the mirrored place of its partner, m. Assumption: a tray is as wide. */
    static final double TOLERANCE_M = 0.5;

    /** Assumption: how much the catch changes across the travel at most, share of the mean a metre. */
    private static final double SLOPE_A_METRE = 0.06;

    /** Assumption: by how much two trays of a machine with equal sides differ in truth, standard deviation, share. */
    private static final double UNLIKE = 0.01;

    private record Pair(double difference, double variance, double distanceM) {
        double square() {
            return difference * difference / variance;
        }
    }

    /** The pairs of a test, or of repeats taken together. */
    static MirrorPairs of(Uniformity test, Tramlines tramlines) {
        List<Pair> pairs = pairs(test, tramlines);
        Pair most = null;
        double sum = 0;
        double sides = 0;
        for (Pair pair : pairs) {
            sum += pair.square();
            // each tray is off the mean of the two by half their difference
            sides += (pair.difference() * pair.difference() - pair.variance()) / (2 * test.trays());
            if (most == null || pair.square() > most.square()) {
                most = pair;
            }
        }
        return most == null
                ? new MirrorPairs(0, 0, 0, 0, 0)
                : new MirrorPairs(
                        pairs.size(), sum, 1e4 * Math.max(0, sides), -100 * most.difference(), most.distanceM());
    }

    /** Whether the sides differ by more than chance; never without a pair. */
    boolean significant() {
        return pairs > 0 && ChiSquaredDistribution.of(pairs).survivalProbability(chiSquared) < LEVEL;
    }

    private static List<Pair> pairs(Uniformity test, Tramlines tramlines) {
        List<Double> places = test.positionsM();
        double noise = test.cv().noisePercent() / 100;
        List<Pair> pairs = new ArrayList<>();
        for (Partners two : partners(places, tramlines)) {
            double one = test.relativePercent().get(two.left()) / 100;
            double other = test.relativePercent().get(two.right()) / 100;
            double slope = SLOPE_A_METRE * (places.get(two.left()) + places.get(two.right()));
            double variance = FieldCvData.noiseVariance(one, noise)
                    + FieldCvData.noiseVariance(other, noise)
                    + UNLIKE * UNLIKE
                    + slope * slope;
            pairs.add(new Pair(other - one, variance, (places.get(two.right()) - places.get(two.left())) / 2));
        }
        return pairs;
    }

    /** Indexes of two trays at mirrored places. */
    record Partners(int left, int right) {}

    /** The pairs of trays that a machine with two equal sides would fill alike. */
    static List<Partners> partners(List<Double> places, Tramlines tramlines) {
        boolean[] used = new boolean[places.size()];
        List<Partners> partners = new ArrayList<>();
        for (int left = 0; left < places.size(); left++) {
            int right = paired(places.get(left), tramlines) ? partner(places, left, used) : -1;
            if (right >= 0) {
                used[right] = true;
                partners.add(new Partners(left, right));
            }
        }
        return partners;
    }

    /** Whether a place is left of the tramline and tells the sides apart. */
    private static boolean paired(double xM, Tramlines tramlines) {
        boolean midway = tramlines.widthM() / 2 + xM < TOLERANCE_M;
        return xM < -TOLERANCE_M && !(midway && tramlines.pattern() == DrivingPattern.ROUND_AND_ROUND);
    }

    private static int partner(List<Double> places, int left, boolean[] used) {
        int best = -1;
        double nearest = TOLERANCE_M;
        for (int i = 0; i < places.size(); i++) {
            double off = Math.abs(places.get(left) + places.get(i));
            if (!used[i] && off <= nearest) {
                best = i;
                nearest = off;
            }
        }
        return best;
    }
}
