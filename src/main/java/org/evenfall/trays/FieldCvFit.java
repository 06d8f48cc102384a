package org.evenfall.trays;

/**
 * One prior given the catches: relative catch r = 1 + Φa + noise with a ~ N(0, Λ), so that r has the covariance
 * K = ΦΛΦ' + N = CC'. With z = C⁻¹(r − 1) and A = C⁻¹ΦΛ the shapes have the mean μ = A'z and the covariance V = Λ − A'A.
 *
 * <p>Source (from memory): Rasmussen and Williams 2006, chapter 2, Bayesian linear model.
 */
final class FieldCvFit {

    private final FieldCvData data;
    private final FieldCvPrior prior;
    private final double[][] root;
    private final double[] whitened;
    private final double logWeight;

    FieldCvFit(FieldCvData data, FieldCvPrior prior) {
        this.data = data;
        this.prior = prior;
        root = data.covariance(prior);
        SmallMatrix.decompose(root);
        whitened = data.deviations();
        SmallMatrix.solve(root, whitened);
        double log = prior.logProbability() - SmallMatrix.dot(whitened, whitened) / 2;
        for (int i = 0; i < root.length; i++) {
            log -= Math.log(root[i][i]);
        }
        logWeight = log;
    }

    /** Logarithm of prior probability times likelihood, up to a constant. */
    double logWeight() {
        return logWeight;
    }

    /**
     * CV² of the field by its first three cumulants: the sum of the squares of all shapes but the mean level, over the
     * square of the mean level, this at its mean. The cumulants of a sum of squares of normal variables are exact: μ'μ +
     * tr V, 2 tr V² + 4 μ'Vμ, 8 tr V³ + 24 μ'V²μ. The traces are written with B = AA' and D = AΛA', which have a row a
     * tray, where V has one a shape.
     */
    PearsonIii squareOfCv() {
        double[][] a = data.shapesTimes(prior.variances());
        SmallMatrix.solve(root, a);
        double[] variances = prior.variances();
        double[] mean = SmallMatrix.combine(whitened, a);
        double level = 1 + mean[0];
        variances[0] = 0;
        mean[0] = 0;
        for (double[] row : a) {
            row[0] = 0;
        }
        double[][] scaled = new double[a.length][];
        double[] fitted = new double[a.length];
        double squares = 0;
        for (int i = 0; i < a.length; i++) {
            scaled[i] = SmallMatrix.times(a[i], variances);
            squares += SmallMatrix.dot(scaled[i], scaled[i]);
            fitted[i] = SmallMatrix.dot(a[i], mean);
        }
        double[][] b = SmallMatrix.products(a, a);
        double[][] d = SmallMatrix.products(scaled, a);
        double[] explained = SmallMatrix.combine(fitted, a);
        double first = -SmallMatrix.trace(b);
        double second = 2 * (SmallMatrix.traceOfProduct(b, b) - 2 * SmallMatrix.trace(d));
        double third = 8 * (3 * SmallMatrix.traceOfProduct(d, b) - 3 * squares - traceOfCube(b));
        for (int mode = 1; mode < mean.length; mode++) {
            double variance = variances[mode];
            double vMean = variance * mean[mode] - explained[mode];
            first += variance + mean[mode] * mean[mode];
            second += 2 * variance * variance + 4 * mean[mode] * vMean;
            third += 8 * variance * variance * variance + 24 * vMean * vMean;
        }
        double square = level * level;
        return PearsonIii.of(first / square, second / (square * square), third / (square * square * square));
    }

    private static double traceOfCube(double[][] lower) {
        double[][] full = SmallMatrix.full(lower);
        return SmallMatrix.traceOfProduct(SmallMatrix.products(full, full), lower);
    }
}
