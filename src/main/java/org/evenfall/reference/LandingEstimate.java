package org.evenfall.reference;

import java.util.List;

/**
 * Where a product lands, as far as it is known: by itself, gaps filled with usual figures and their range.
 *
 * @param properties its figures with their errors
 * @param at where it lands with these
 */
record LandingEstimate(EstimatedProperties properties, ProductThrow at) {

    /**
     * Where the granules of the three sizes land if the figures are drawn anew, m.
     *
     * @param errors errors of density, median and spread, three standard normal numbers
     * @param packing error of ln granule density from the packing
     */
    double[] drawnM(double[] errors, double packing) {
        double lnDensity = errors[0] * properties.bulkError() + packing;
        double lnD50 = errors[1] * properties.d50Error();
        double sigma = errors[2] * properties.sigmaStandardError();
        List<ThrowLine> lines = at.lines();
        double[] metres = new double[lines.size()];
        for (int i = 0; i < metres.length; i++) {
            metres[i] = lines.get(i).metres() + lines.get(i).shiftM(lnDensity, lnD50, sigma);
        }
        return metres;
    }

    /** Where they land by the figures as they are, m. */
    double[] metres() {
        return at.lines().stream().mapToDouble(ThrowLine::metres).toArray();
    }

    /**
     * Distance of two landings, m: mean difference of the distances that the same share of each product falls short of, at
     * 16, 50 and 84 % of the mass. It approximates the area between their distributions.
     */
    static double distanceM(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += Math.abs(one[i] - other[i]);
        }
        return sum / one.length;
    }
}
