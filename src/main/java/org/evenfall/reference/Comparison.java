package org.evenfall.reference;

import org.evenfall.granule.ProductForm;

/**
 * The new product compared with one reference: throw, flow at the same opening and size spread, each with the error of
 * the measurements. Differences are new product less reference.
 *
 * <p>The score is the root of the weighted mean square of the three differences, each in standard errors of measuring
 * the new product. The part of a reference's error beyond ordinary measuring is added to the differences in quadrature,
 * so that a gap in the data never counts as similarity.
 */
final class Comparison {

    /** Weights of the differences. Assumption: the bucket test corrects flow, nothing corrects the throw. */
    static final double THROW_WEIGHT = 1;

    static final double SPREAD_WEIGHT = 0.5;

    static final double FLOW_WEIGHT = 0.25;

    /**
     * Relative error of the ratio of two granule densities estimated from bulk densities. Assumption: two heaps of one form
     * pack within about 4 % of each other, of two forms within about 8 %.
     */
    static final double PACKING_ERROR_SAME_FORM = 0.02;

    static final double PACKING_ERROR_OTHER_FORM = 0.04;

    /** Standard errors of ln d50 and of sigma by one sieved sample. Assumption: three sieves, ordinary granules. */
    static final double ORDINARY_D50_ERROR = 0.035;

    static final double ORDINARY_SIGMA_ERROR = 0.03;

    /**
     * Least standard errors of measuring: throw and flow (relative), spread index (points). Assumption: nothing is
     * measured better in a farmyard.
     */
    private static final double LEAST_THROW_ERROR = 0.01;

    private static final double LEAST_FLOW_ERROR = 0.02;
    private static final double LEAST_SPREAD_ERROR = 1;

    final TestedProduct reference;
    final EstimatedProperties product;
    final EstimatedProperties other;
    final ThrowLine productLine;
    final ThrowLine otherLine;
    private final double packingError;
    private final double throwUnitM;
    private final double flowUnit;
    private final double spreadUnit;

    Comparison(
            ProductForm form,
            TestedProduct reference,
            EstimatedProperties product,
            EstimatedProperties other,
            ThrowLine productLine,
            ThrowLine otherLine) {
        this.reference = reference;
        this.product = product;
        this.other = other;
        this.productLine = productLine;
        this.otherLine = otherLine;
        this.packingError = form == reference.form() && form != ProductForm.UNANSWERED && form != ProductForm.OTHER
                ? PACKING_ERROR_SAME_FORM
                : PACKING_ERROR_OTHER_FORM;
        this.throwUnitM = Math.max(
                productLine.errorM(product.bulkError(), product.d50Error(), product.sigmaStandardError()),
                LEAST_THROW_ERROR * productLine.edgeM());
        this.flowUnit = Math.max(
                Math.hypot(product.bulkError(), product.flowSlopeOfD50() * product.d50Error()), LEAST_FLOW_ERROR);
        this.spreadUnit = Math.max(product.spreadIndexSlope() * product.sigmaStandardError(), LEAST_SPREAD_ERROR);
    }

    /** Throw at the edge, m; negative: the new product falls short. */
    double throwM() {
        return productLine.edgeM() - otherLine.edgeM();
    }

    /** Throw at the edge, % of the reference's. */
    double throwPercent() {
        return 100 * throwM() / otherLine.edgeM();
    }

    /** Standard error of the throw difference from every measurement of both and from packing, m. */
    double throwErrorM() {
        double own = productLine.errorM(product.bulkError(), product.d50Error(), product.sigmaStandardError());
        double theirs = otherLine.errorM(other.bulkError(), other.d50Error(), other.sigmaStandardError());
        return Math.hypot(Math.hypot(own, theirs), otherLine.perLnDensity() * packingError);
    }

    /** Flow at the same opening, natural logarithm of the ratio. */
    double lnFlow() {
        return Math.log(product.flowKgPerMin() / other.flowKgPerMin());
    }

    /** Size spread, points of the spread index. */
    double spreadPoints() {
        return product.spreadIndexPercent() - other.spreadIndexPercent();
    }

    /** Standardised difference: 0 equal, 1 about one standard error of measuring. */
    double score() {
        double gapBulk =
                beyond(other.bulkError(), Math.max(product.bulkError(), EstimatedProperties.HANDBOOK_BULK_ERROR));
        double gapD50 = beyond(other.d50Error(), Math.max(product.d50Error(), ORDINARY_D50_ERROR));
        double gapSigma =
                beyond(other.sigmaStandardError(), Math.max(product.sigmaStandardError(), ORDINARY_SIGMA_ERROR));
        double throwGap = otherLine.errorM(gapBulk, gapD50, gapSigma);
        double flowGap = Math.hypot(gapBulk, other.flowSlopeOfD50() * gapD50);
        double spreadGap = other.spreadIndexSlope() * gapSigma;
        return Math.sqrt(square(
                Math.hypot(throwM(), throwGap), Math.hypot(lnFlow(), flowGap), Math.hypot(spreadPoints(), spreadGap)));
    }

    /** The part of an error beyond that of ordinary measuring: √(error² − ordinary²), 0 below it. */
    private static double beyond(double error, double ordinary) {
        return Math.sqrt(Math.max(0, error * error - ordinary * ordinary));
    }

    /**
     * The squared score if the measurements were repeated.
     *
     * @param own errors of the new product, three standard normal numbers
     * @param theirs errors of the reference, three standard normal numbers
     * @param packing error of the packing, a standard normal number
     */
    double squaredScore(double[] own, double[] theirs, double packing) {
        double ownBulk = own[0] * product.bulkError();
        double ownD50 = own[1] * product.d50Error();
        double ownSigma = own[2] * product.sigmaStandardError();
        double theirBulk = theirs[0] * other.bulkError();
        double theirD50 = theirs[1] * other.d50Error();
        double theirSigma = theirs[2] * other.sigmaStandardError();
        double shift = productLine.shiftM(ownBulk, ownD50, ownSigma)
                - otherLine.shiftM(theirBulk + packing * packingError, theirD50, theirSigma);
        double flowShift = ownBulk + product.flowSlopeOfD50() * ownD50 - theirBulk - other.flowSlopeOfD50() * theirD50;
        double spreadShift = product.spreadIndexSlope() * ownSigma - other.spreadIndexSlope() * theirSigma;
        return square(throwM() + shift, lnFlow() + flowShift, spreadPoints() + spreadShift);
    }

    private double square(double throwDifferenceM, double lnFlowDifference, double spreadDifference) {
        double t = throwDifferenceM / throwUnitM;
        double f = lnFlowDifference / flowUnit;
        double s = spreadDifference / spreadUnit;
        return (THROW_WEIGHT * t * t + FLOW_WEIGHT * f * f + SPREAD_WEIGHT * s * s)
                / (THROW_WEIGHT + FLOW_WEIGHT + SPREAD_WEIGHT);
    }
}
