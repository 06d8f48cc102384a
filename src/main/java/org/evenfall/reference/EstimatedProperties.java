package org.evenfall.reference;

import org.evenfall.granule.FlowScaling;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.PublishedBands;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * One product with every gap filled and every figure with its error, so that two can be compared. What was not measured
 * is taken from the other product ("otherwise equal") with an error as wide as products differ.
 *
 * @param bulkKgPerL bulk density, kg/L
 * @param bulkError relative standard error of the bulk density
 * @param bulkKnown it was measured
 * @param d50Mm median diameter, mm
 * @param d50Error standard error of its logarithm
 * @param sizeKnown it was measured
 * @param sigma standard deviation of the logarithm of the diameter
 * @param sigmaStandardError its standard error
 * @param spreadKnown it was measured and is a value, not a bound
 */
record EstimatedProperties(
        double bulkKgPerL,
        double bulkError,
        boolean bulkKnown,
        double d50Mm,
        double d50Error,
        boolean sizeKnown,
        double sigma,
        double sigmaStandardError,
        boolean spreadKnown) {

    /** Least relative error of a bulk density: container volume and the habit of filling. Ours. */
    static final double LEAST_BULK_ERROR = 0.01;

    /** Relative error of a bulk density read from a handbook. Ours. */
    static final double HANDBOOK_BULK_ERROR = 0.02;

    /** Relative error of a bulk density taken from the published band of the form. Ours. */
    static final double BAND_BULK_ERROR = 0.04;

    /** Relative error of a bulk density that nobody measured and no band gives. Ours. */
    static final double UNKNOWN_BULK_ERROR = 0.12;

    /** Error of ln d50 where nobody sieved: granular products run from about 2.5 to 4 mm. Common practice, no source. */
    static final double UNKNOWN_D50_ERROR = 0.12;

    /** Median and spread taken where neither product was sieved: target of the European blenders (seen), GSI 18. */
    static final double USUAL_D50_MM = 3.25;

    static final double USUAL_LN_SD = 0.18;

    /** Error of the spread where nobody measured it. Ours. */
    static final double UNKNOWN_LN_SD_ERROR = 0.05;

    private static final double USUAL_BULK_KG_PER_L = 0.85;

    /**
     * @param bulkError relative standard error of the density, at least 0
     * @param otherBulk density of the product it is compared with, for what is missing here, kg/L
     * @param otherSizes its sizes
     */
    static EstimatedProperties of(
            ProductForm form,
            @Nullable Double bulk,
            double bulkError,
            @Nullable SizeDistribution sizes,
            @Nullable Double otherBulk,
            @Nullable SizeDistribution otherSizes) {
        double bulkHere;
        double bulkErrorHere;
        Double band = bandMiddle(form);
        if (bulk != null) {
            bulkHere = bulk;
            bulkErrorHere = Math.max(bulkError, LEAST_BULK_ERROR);
        } else if (band != null) {
            bulkHere = band;
            bulkErrorHere = BAND_BULK_ERROR;
        } else {
            bulkHere = otherBulk == null ? USUAL_BULK_KG_PER_L : otherBulk;
            bulkErrorHere = UNKNOWN_BULK_ERROR;
        }
        SizeDistribution taken = sizes == null ? otherSizes : sizes;
        double d50 = taken == null ? USUAL_D50_MM : taken.d50Mm();
        double d50Error = sizes == null ? UNKNOWN_D50_ERROR : sizes.lnD50StandardError();
        boolean spreadKnown = sizes != null && !sizes.spreadIsBound();
        double sigma = sigma(sizes, otherSizes);
        double sigmaStandardError =
                sizes != null && !sizes.spreadIsBound() ? sizes.lnSdStandardError() : UNKNOWN_LN_SD_ERROR;
        return new EstimatedProperties(
                bulkHere,
                bulkErrorHere,
                bulk != null,
                d50,
                d50Error,
                sizes != null,
                sigma,
                sigmaStandardError,
                spreadKnown);
    }

    /** A measured spread; else the other product's; never above what this product's own bound allows. */
    private static double sigma(@Nullable SizeDistribution own, @Nullable SizeDistribution other) {
        if (own != null && !own.spreadIsBound()) {
            return own.sigma();
        }
        double guess = other == null || other.spreadIsBound() ? USUAL_LN_SD : other.sigma();
        return own == null ? guess : Math.min(guess, own.sigma());
    }

    private static @Nullable Double bandMiddle(ProductForm form) {
        for (PublishedBand band : PublishedBands.of(form)) {
            if (band.quantity().equals(PublishedBands.BULK_DENSITY)) {
                return (band.low() + band.high()) / 2;
            }
        }
        return null;
    }

    /** The same with another bulk density, kg/L. */
    EstimatedProperties withBulk(double otherKgPerL) {
        return new EstimatedProperties(
                otherKgPerL, bulkError, bulkKnown, d50Mm, d50Error, sizeKnown, sigma, sigmaStandardError, spreadKnown);
    }

    /** Granulometric spread index, %. */
    double spreadIndexPercent() {
        return new SizeDistribution(d50Mm, Math.exp(sigma), 0, 0, false).spreadIndexPercent();
    }

    /** Points of spread index for 1 of ln sd: the index is 100 sinh(z ln sd), z = 0.9945. */
    double spreadIndexSlope() {
        return 99.45 * Math.cosh(0.9945 * sigma);
    }

    /** Flow at the usual opening, kg/min. */
    double flowKgPerMin() {
        return FlowScaling.kgPerMin(bulkKgPerL, FlowScaling.USUAL_OPENING_MM, d50Mm, 9.80665);
    }

    /** Relative change of flow for a relative change of d50: −2.5 k d / (D − k d). */
    double flowSlopeOfD50() {
        double blocked = FlowScaling.K * d50Mm;
        return -2.5 * blocked / (FlowScaling.USUAL_OPENING_MM - blocked);
    }
}
