package org.evenfall.granule;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Log likelihood of sieve classes under a log-normal distribution, in alpha = mu/sigma and beta = 1/sigma. In these it is
 * concave, so that Newton steps, halved where they overshoot, find its one maximum. Source (from memory): Burridge 1981,
 * J. Royal Statistical Society B 43:41-45; the tests search a grid as well.
 */
final class ClassLikelihood {

    /** Largest sigma given: geometric standard deviation 3. Assumption: a single product stays far below. */
    static final double WIDEST_SIGMA = Math.log(3);

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final int MOST_STEPS = 200;

    /** Rise of the log likelihood that a Newton step promises, below which the maximum is reached. */
    private static final double LEAST_RISE = 1e-20;

    /** Share of the promised rise that a step must bring, else it is halved (Armijo's rule). */
    private static final double ARMIJO_SHARE = 1e-4;

    /** Share of a Newton step below which halving ends. */
    private static final double SHORTEST_STEP = 1e-12;

    private final double[] edges;
    private final double[] shares;
    private final double centre;

    private double value;
    private double gradientAlpha;
    private double gradientBeta;
    private double curvatureAlpha;
    private double curvatureMixed;
    private double curvatureBeta;

    /**
     * @param edges ends of the classes as ln mm, the first and last infinite
     * @param shares share of each class, summing to 1, mass in at least two classes that are no neighbours
     */
    ClassLikelihood(double[] edges, double[] shares) {
        this.centre = (edges[1] + edges[edges.length - 2]) / 2;
        this.edges = edges.clone();
        for (int i = 0; i < edges.length; i++) {
            this.edges[i] -= centre;
        }
        this.shares = shares.clone();
    }

    /** The fit of maximum likelihood; a bound where sigma would exceed {@link #WIDEST_SIGMA}. */
    LogNormalFit maximum() {
        double range = edges[edges.length - 2] - edges[1];
        double alpha = 0;
        double beta = 1 / Math.max(0.1, range / 2);
        at(alpha, beta);
        for (int step = 0; step < MOST_STEPS; step++) {
            double determinant = curvatureAlpha * curvatureBeta - curvatureMixed * curvatureMixed;
            double stepAlpha = -(curvatureBeta * gradientAlpha - curvatureMixed * gradientBeta) / determinant;
            double stepBeta = -(curvatureAlpha * gradientBeta - curvatureMixed * gradientAlpha) / determinant;
            double rise = gradientAlpha * stepAlpha + gradientBeta * stepBeta;
            if (!(rise > LEAST_RISE)) {
                break;
            }
            double before = value;
            double length = 1;
            at(alpha + stepAlpha, beta + stepBeta);
            while (!(value >= before + ARMIJO_SHARE * length * rise) && length > SHORTEST_STEP) {
                length /= 2;
                at(alpha + length * stepAlpha, beta + length * stepBeta);
            }
            alpha += length * stepAlpha;
            beta += length * stepBeta;
            if (length <= SHORTEST_STEP) {
                break;
            }
        }
        double sigma = 1 / beta;
        return sigma > 0 && sigma <= WIDEST_SIGMA
                ? new LogNormalFit(centre + alpha / beta, sigma, false)
                : new LogNormalFit(centre + median(1 / WIDEST_SIGMA) * WIDEST_SIGMA, WIDEST_SIGMA, true);
    }

    /** The most likely alpha at a given beta. */
    private double median(double beta) {
        double alpha = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            at(alpha, beta);
            double change = -gradientAlpha / curvatureAlpha;
            alpha += Math.max(-1, Math.min(1, change));
            if (Math.abs(change) < SHORTEST_STEP) {
                break;
            }
        }
        return alpha;
    }

    /** Value, gradient and curvature at a point; the value is minus infinity where beta is not above 0. */
    private void at(double alpha, double beta) {
        value = beta > 0 ? 0 : Double.NEGATIVE_INFINITY;
        gradientAlpha = 0;
        gradientBeta = 0;
        curvatureAlpha = 0;
        curvatureMixed = 0;
        curvatureBeta = 0;
        for (int i = 0; i < shares.length && beta > 0; i++) {
            if (shares[i] > 0) {
                add(shares[i], edges[i], edges[i + 1], alpha, beta);
            }
        }
    }

    private void add(double share, double low, double high, double alpha, double beta) {
        double a = beta * low - alpha;
        double b = beta * high - alpha;
        double mass = massBetween(a, b);
        if (!(mass > 0)) {
            value = Double.NEGATIVE_INFINITY;
            return;
        }
        double lowX = Double.isInfinite(low) ? 0 : low;
        double highX = Double.isInfinite(high) ? 0 : high;
        double byAlpha = (density(a, 0) - density(b, 0)) / mass;
        double byBeta = (highX * density(b, 0) - lowX * density(a, 0)) / mass;
        value += share * Math.log(mass);
        gradientAlpha += share * byAlpha;
        gradientBeta += share * byBeta;
        curvatureAlpha += share * ((density(a, 1) - density(b, 1)) / mass - byAlpha * byAlpha);
        curvatureMixed += share * ((highX * density(b, 1) - lowX * density(a, 1)) / mass - byAlpha * byBeta);
        curvatureBeta +=
                share * ((lowX * lowX * density(a, 1) - highX * highX * density(b, 1)) / mass - byBeta * byBeta);
    }

    /** Probability of a standard normal number between a and b, without losing figures in either tail. */
    static double massBetween(double a, double b) {
        return a > 0
                ? STANDARD.cumulativeProbability(-a) - STANDARD.cumulativeProbability(-b)
                : STANDARD.cumulativeProbability(b) - STANDARD.cumulativeProbability(a);
    }

    /** Standard normal density times z to a power of 0 or 1; 0 at infinity. */
    static double density(double z, int power) {
        if (Double.isInfinite(z)) {
            return 0;
        }
        return power == 0 ? STANDARD.density(z) : z * STANDARD.density(z);
    }
}
