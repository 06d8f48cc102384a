package org.evenfall.reference;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.evenfall.granule.ProductForm;

/**
 * How likely the measured figures are if the new product is a reference measured again, over how likely they are if it is
 * any product of its form. Only figures that both have count, so that a reference known by one figure is neither favoured
 * nor pushed behind.
 */
final class SameProduct {

    /**
     * Chance that the new product, or one made alike, is among the references at all. Assumption: in half of the cases, as
     * most people type in what their dealers sell.
     */
    static final double PRIOR = 0.5;

    /** Least standard error of ln d50 between two deliveries of one product. Assumption: one sieved sample is no better. */
    static final double LEAST_D50_ERROR = 0.015;

    /** Least standard error of sigma between two deliveries of one product. Assumption, likewise. */
    static final double LEAST_SIGMA_ERROR = 0.01;

    /** Chance that one product was entered under two forms. Assumption. */
    static final double OTHER_FORM = 0.02;

    private SameProduct() {}

    /**
     * Natural logarithm of the ratio of the two likelihoods.
     *
     * @param product the new product, gaps filled with usual figures
     * @param other a reference, likewise
     */
    static double lnLikelihoodRatio(EstimatedProperties product, EstimatedProperties other) {
        double lnRatio = maybeSameForm(product.form(), other.form()) ? 0 : Math.log(OTHER_FORM);
        if (product.bulkKnown() && other.bulkKnown()) {
            lnRatio += lnRatio(
                    Math.log(product.bulkKgPerL() / EstimatedProperties.usualBulkKgPerL(product.form())),
                    Math.log(product.bulkKgPerL() / other.bulkKgPerL()),
                    Math.hypot(product.bulkError(), other.bulkError()),
                    Math.hypot(EstimatedProperties.usualBulkError(product.form()), product.bulkError()));
        }
        if (product.sizeKnown() && other.sizeKnown()) {
            lnRatio += lnRatio(
                    Math.log(product.d50Mm() / EstimatedProperties.usualD50Mm(product.form())),
                    Math.log(product.d50Mm() / other.d50Mm()),
                    Math.max(LEAST_D50_ERROR, Math.hypot(product.d50Error(), other.d50Error())),
                    Math.hypot(EstimatedProperties.USUAL_D50_ERROR, product.d50Error()));
        }
        if (product.spreadKnown() && other.spreadKnown()) {
            lnRatio += lnRatio(
                    product.sigma() - EstimatedProperties.USUAL_SIGMA,
                    product.sigma() - other.sigma(),
                    Math.max(LEAST_SIGMA_ERROR, Math.hypot(product.sigmaStandardError(), other.sigmaStandardError())),
                    Math.hypot(EstimatedProperties.UNKNOWN_SIGMA_ERROR, product.sigmaStandardError()));
        }
        return lnRatio;
    }

    /** Whether two products may be of one form: it is the same, or one is not answered. */
    static boolean maybeSameForm(ProductForm form, ProductForm other) {
        return form == other || form == ProductForm.UNANSWERED || other == ProductForm.UNANSWERED;
    }

    /** Log density of the difference from the reference, less that of the difference from a usual product. */
    private static double lnRatio(double fromUsual, double fromOther, double error, double variation) {
        return NormalDistribution.of(0, error).logDensity(fromOther)
                - NormalDistribution.of(0, variation).logDensity(fromUsual);
    }
}
