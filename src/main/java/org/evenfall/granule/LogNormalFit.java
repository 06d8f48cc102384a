package org.evenfall.granule;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Fits a log-normal distribution to sieve classes by maximum likelihood on the class probabilities, both end classes
 * open. The amounts are interval-censored: a sieve tells between which apertures a granule lies, no more.
 *
 * <p>Method: expectation maximisation (Dempster, Laird, Rubin 1977, J. Royal Statistical Society B 39:1-38, citation
 * from memory) with the moments of the truncated normal distribution. Each step raises the likelihood; about a hundred
 * steps of a handful of classes.
 *
 * @param mu mean of ln diameter (mm)
 * @param sigma standard deviation of ln diameter
 * @param isBound the classes hold only an upper bound of sigma: all mass lies in one or two classes
 */
record LogNormalFit(double mu, double sigma, boolean isBound) {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /** A class with less than this share counts as empty when the classes that hold mass are counted. */
    private static final double EMPTY_SHARE = 0.002;

    /** Upper bound of sigma where no outer aperture limits it: geometric standard deviation 1.5. Ours. */
    private static final double WIDEST_SIGMA = Math.log(1.5);

    private static final double EDGE = STANDARD.inverseCumulativeProbability(1 - EMPTY_SHARE);

    /** @param shares share of each class, finest first, summing to 1; one more than apertures */
    static LogNormalFit of(double[] aperturesMm, double[] shares) {
        double[] edges = new double[aperturesMm.length + 2];
        edges[0] = Double.NEGATIVE_INFINITY;
        edges[edges.length - 1] = Double.POSITIVE_INFINITY;
        for (int i = 0; i < aperturesMm.length; i++) {
            edges[i + 1] = Math.log(aperturesMm[i]);
        }
        int first = -1;
        int last = -1;
        for (int i = 0; i < shares.length; i++) {
            if (shares[i] > EMPTY_SHARE) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        return switch (last - first) {
            case 0 -> oneClass(edges[first], edges[first + 1]);
            case 1 -> twoClasses(edges, first, shares[first] / (shares[first] + shares[first + 1]));
            default -> maximise(edges, shares);
        };
    }

    private static LogNormalFit oneClass(double low, double high) {
        double lowEnd = Double.isInfinite(low) ? high - 2 * WIDEST_SIGMA : low;
        double highEnd = Double.isInfinite(high) ? low + 2 * WIDEST_SIGMA : high;
        return new LogNormalFit((lowEnd + highEnd) / 2, Math.min(WIDEST_SIGMA, (highEnd - lowEnd) / 2 / EDGE), true);
    }

    /** Only the aperture between the two classes is a known quantile; the outer apertures bound sigma. */
    private static LogNormalFit twoClasses(double[] edges, int first, double shareBelow) {
        double z = STANDARD.inverseCumulativeProbability(shareBelow);
        double middle = edges[first + 1];
        double fromBelow = (middle - edges[first]) / Math.max(0.1, EDGE + z);
        double fromAbove = (edges[first + 2] - middle) / Math.max(0.1, EDGE - z);
        double sigma = Math.min(WIDEST_SIGMA, Math.min(fromBelow, fromAbove));
        return new LogNormalFit(middle - z * sigma, sigma, true);
    }

    private static LogNormalFit maximise(double[] edges, double[] shares) {
        double mu = 0;
        double second = 0;
        for (int i = 0; i < shares.length; i++) {
            double low = Double.isInfinite(edges[i]) ? edges[i + 1] - 0.3 : edges[i];
            double high = Double.isInfinite(edges[i + 1]) ? edges[i] + 0.3 : edges[i + 1];
            mu += shares[i] * (low + high) / 2;
            second += shares[i] * Math.pow((low + high) / 2, 2);
        }
        double sigma = Math.sqrt(Math.max(1e-4, second - mu * mu));
        for (int step = 0; step < 5000; step++) {
            double mean = 0;
            double square = 0;
            for (int i = 0; i < shares.length; i++) {
                double a = (edges[i] - mu) / sigma;
                double b = (edges[i + 1] - mu) / sigma;
                double mass = massBetween(a, b);
                double first = (density(a) - density(b)) / mass;
                double spread = 1 + (edgeTerm(a) - edgeTerm(b)) / mass;
                if (mass < 1e-14) {
                    // far in a tail: the class collapses on its nearer edge
                    first = Math.abs(a) < Math.abs(b) ? a : b;
                    spread = first * first;
                }
                mean += shares[i] * (mu + sigma * first);
                square += shares[i] * (mu * mu + 2 * mu * sigma * first + sigma * sigma * spread);
            }
            double newSigma = Math.sqrt(Math.max(1e-8, square - mean * mean));
            boolean settled = Math.abs(mean - mu) + Math.abs(newSigma - sigma) < 1e-10;
            mu = mean;
            sigma = newSigma;
            if (settled) {
                break;
            }
        }
        return new LogNormalFit(mu, sigma, false);
    }

    private static double massBetween(double a, double b) {
        return a > 0
                ? STANDARD.cumulativeProbability(-a) - STANDARD.cumulativeProbability(-b)
                : STANDARD.cumulativeProbability(b) - STANDARD.cumulativeProbability(a);
    }

    private static double density(double z) {
        return Double.isInfinite(z) ? 0 : STANDARD.density(z);
    }

    private static double edgeTerm(double z) {
        return Double.isInfinite(z) ? 0 : z * STANDARD.density(z);
    }

    /** Expected share of each class. */
    double[] shares(double[] aperturesMm) {
        double[] result = new double[aperturesMm.length + 1];
        double before = 0;
        for (int i = 0; i < aperturesMm.length; i++) {
            double below = STANDARD.cumulativeProbability((Math.log(aperturesMm[i]) - mu) / sigma);
            result[i] = below - before;
            before = below;
        }
        result[aperturesMm.length] = 1 - before;
        return result;
    }
}
