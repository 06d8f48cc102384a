package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * What the catches leave of the field CV: for each prior the posterior of CV² in closed form as a Pearson III
 * distribution, mixed by how well each prior explains the catches.
 *
 * <p>Source (from memory): Rasmussen and Williams 2006, chapter 2, Bayesian linear model with a normal prior. Common
 * practice: cumulants of a quadratic form of normal variables. Assumption: the construction; its intervals are measured on
 * virtual machines.
 */
final class FieldCvPosterior {

    /** A prior whose weight is below this share of the greatest is left out. */
    private static final double SMALLEST_WEIGHT = 1e-4;

    /** Highest CV given, share of the mean. Exact: one tray of 33 alone with a catch has a CV of 5.7 times the mean. */
    private static final double HIGHEST_CV = 6;

    /** Accuracy of a quantile, share of the mean. */
    private static final double ACCURACY = 1e-6;

    private static final int MOST_STEPS = 200;

    private record Part(double weight, PearsonIii squareOfCv) {}

    private final List<Part> parts;

    private FieldCvPosterior(List<Part> parts) {
        this.parts = parts;
    }

    /** The posterior of a test. */
    static FieldCvPosterior of(FieldCvData data) {
        List<FieldCvFit> fits = FieldCvPrior.ALL.stream()
                .map(prior -> new FieldCvFit(data, prior))
                .toList();
        double greatest = fits.stream().mapToDouble(FieldCvFit::logWeight).max().orElseThrow();
        List<Part> parts = new ArrayList<>();
        double sum = 0;
        for (FieldCvFit fit : fits) {
            double weight = Math.exp(fit.logWeight() - greatest);
            if (weight >= SMALLEST_WEIGHT) {
                parts.add(new Part(weight, fit.squareOfCv()));
                sum += weight;
            }
        }
        double all = sum;
        return new FieldCvPosterior(parts.stream()
                .map(part -> new Part(part.weight() / all, part.squareOfCv()))
                .toList());
    }

    /** Probability that the CV is at most this share of the mean, 0 to 1. */
    double probabilityAtMost(double cv) {
        double sum = 0;
        for (Part part : parts) {
            sum += part.weight() * part.squareOfCv().probabilityAtMost(cv * cv);
        }
        return Math.min(1, sum);
    }

    /**
     * The CV, as a share of the mean, that is not exceeded with this probability, 0 to 1. Edge cases: 0 where a CV of 0
     * already has more; {@value #HIGHEST_CV} where none up to there has as much.
     */
    double quantile(double probability) {
        if (probabilityAtMost(0) >= probability) {
            return 0;
        }
        double high = CvLimits.FIELD_PERCENT / 100;
        while (probabilityAtMost(high) < probability) {
            if (high >= HIGHEST_CV) {
                return HIGHEST_CV;
            }
            high = Math.min(HIGHEST_CV, 2 * high);
        }
        return new BrentSolver(ACCURACY).solve(MOST_STEPS, cv -> probabilityAtMost(cv) - probability, 0, high);
    }
}
