package org.evenfall.granule;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Fits a log-normal distribution to sieve classes by maximum likelihood on the class probabilities, both end classes
 * open. The amounts are interval-censored: a sieve shows between which apertures a granule lies, no more.
 *
 * <p>Where the mass fills a single class, or two neighbours, the likelihood has no maximum (it rises as the spread
 * shrinks to nothing); then the largest spread that leaves the other classes nearly empty is given, as a bound.
 *
 * @param mu mean of ln diameter (mm)
 * @param sigma standard deviation of ln diameter, above 0
 * @param isBound the figures are bounds, not values: all mass lies in one or two classes, or its two ends lie further
 *     apart than any one product's ({@link ClassLikelihood#WIDEST_SIGMA}), or the median lies far outside the sieves
 */
record LogNormalFit(double mu, double sigma, boolean isBound) {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /** Largest share in a class that appears empty. Assumption: what a kitchen scale and a shaken sieve miss. */
    static final double EMPTY_SHARE = 0.002;

    /** How far an open class reaches beyond its aperture where only it holds mass. Assumption: a factor of 2. */
    private static final double OPEN_REACH = Math.log(2);

    /** Normal quantile beyond which a class appears empty. */
    private static final double EDGE = STANDARD.inverseCumulativeProbability(1 - EMPTY_SHARE);

    /** Mass of a class below which it adds nothing to the information matrix. */
    private static final double LEAST_MASS = 1e-12;

    /**
     * The fit to measured shares.
     *
     * @param aperturesMm apertures, mm, strictly rising
     * @param shares share of each class, finest first, summing to 1; one more than apertures
     */
    static LogNormalFit of(double[] aperturesMm, double[] shares) {
        int first = -1;
        int last = -1;
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] > 0) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        double[] edges = edges(aperturesMm);
        return switch (last - first) {
            case 0 -> oneClass(edges[first], edges[first + 1]);
            case 1 -> twoClasses(edges, first, shares[first]);
            default -> withinReach(new ClassLikelihood(edges, shares).maximum(), edges);
        };
    }

    /** A median far outside the sieves is no measurement: it is limited to the end of the open class, as a bound. */
    private static LogNormalFit withinReach(LogNormalFit fit, double[] edges) {
        double lowest = edges[1] - OPEN_REACH;
        double highest = edges[edges.length - 2] + OPEN_REACH;
        double limited = Math.max(lowest, Math.min(highest, fit.mu));
        return limited == fit.mu ? fit : new LogNormalFit(limited, fit.sigma, true);
    }

    private static double[] edges(double[] aperturesMm) {
        double[] edges = new double[aperturesMm.length + 2];
        edges[0] = Double.NEGATIVE_INFINITY;
        edges[edges.length - 1] = Double.POSITIVE_INFINITY;
        for (int i = 0; i < aperturesMm.length; i++) {
            edges[i + 1] = Math.log(aperturesMm[i]);
        }
        return edges;
    }

    private static LogNormalFit oneClass(double low, double high) {
        double lowEnd = Double.isInfinite(low) ? high - OPEN_REACH : low;
        double highEnd = Double.isInfinite(high) ? low + OPEN_REACH : high;
        return new LogNormalFit((lowEnd + highEnd) / 2, (highEnd - lowEnd) / 2 / EDGE, true);
    }

    /** Only the aperture between the two classes is a known quantile; their outer apertures bound sigma. */
    private static LogNormalFit twoClasses(double[] edges, int first, double shareBelow) {
        double middle = edges[first + 1];
        double low = Double.isInfinite(edges[first]) ? middle - OPEN_REACH : edges[first];
        double high = Double.isInfinite(edges[first + 2]) ? middle + OPEN_REACH : edges[first + 2];
        double z = STANDARD.inverseCumulativeProbability(shareBelow);
        double fromBelow = EDGE + z > 0 ? (middle - low) / (EDGE + z) : Double.POSITIVE_INFINITY;
        double fromAbove = EDGE - z > 0 ? (high - middle) / (EDGE - z) : Double.POSITIVE_INFINITY;
        double sigma = Math.min(fromBelow, fromAbove);
        return new LogNormalFit(middle - z * sigma, sigma, true);
    }

    /** Expected share of each class. */
    double[] shares(double[] aperturesMm) {
        double[] result = new double[aperturesMm.length + 1];
        double[] edges = edges(aperturesMm);
        for (int i = 0; i < result.length; i++) {
            result[i] = ClassLikelihood.massBetween((edges[i] - mu) / sigma, (edges[i + 1] - mu) / sigma);
        }
        return result;
    }

    /**
     * Standard errors of mu and sigma by the Fisher information of so many independent granules of equal mass.
     *
     * @param granules effective number of granules, above 0
     */
    double[] errors(double[] aperturesMm, double granules) {
        double[] edges = edges(aperturesMm);
        double mm = 0;
        double ms = 0;
        double ss = 0;
        for (int i = 0; i <= aperturesMm.length; i++) {
            double a = (edges[i] - mu) / sigma;
            double b = (edges[i + 1] - mu) / sigma;
            double mass = ClassLikelihood.massBetween(a, b);
            if (mass > LEAST_MASS) {
                double byMu = -(ClassLikelihood.density(b, 0) - ClassLikelihood.density(a, 0)) / sigma;
                double bySigma = -(ClassLikelihood.density(b, 1) - ClassLikelihood.density(a, 1)) / sigma;
                mm += byMu * byMu / mass;
                ms += byMu * bySigma / mass;
                ss += bySigma * bySigma / mass;
            }
        }
        double determinant = mm * ss - ms * ms;
        return new double[] {Math.sqrt(ss / determinant / granules), Math.sqrt(mm / determinant / granules)};
    }
}
