package org.evenfall.reference;

import org.evenfall.flight.Flight;
import org.evenfall.granule.FlowScaling;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBand;
import org.evenfall.granule.PublishedBands;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * One product with every gap filled and every figure with its standard error, so that two can be compared. What was not
 * measured is taken from the other product ("otherwise equal") with an error as large as products differ.
 *
 * @param form what the granules are; gives packing and solid
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
        ProductForm form,
        double bulkKgPerL,
        double bulkError,
        boolean bulkKnown,
        double d50Mm,
        double d50Error,
        boolean sizeKnown,
        double sigma,
        double sigmaStandardError,
        boolean spreadKnown) {

    /** Least relative error of a bulk density. Assumption: container volume and manner of filling. */
    static final double LEAST_BULK_ERROR = 0.01;

    /** Relative error of a bulk density from a handbook. Assumption: two digits, another delivery. */
    static final double HANDBOOK_BULK_ERROR = 0.015;

    /** Relative error of a bulk density taken from the published band of the form. Assumption: half its width. */
    static final double BAND_BULK_ERROR = 0.04;

    /** Bulk density where nothing is known, kg/L. Assumption: between urea and calcium ammonium nitrate. */
    static final double USUAL_BULK_KG_PER_L = 0.88;

    /** Its relative error. Assumption: products run from about 0.70 to 1.10 kg/L. */
    static final double USUAL_BULK_ERROR = 0.14;

    /** Median where not sieved, mm. Source: European Fertiliser Blenders Association, target. */
    static final double USUAL_D50_MM = 3.25;

    /** Median of prills where not sieved, mm. Assumption: from about 1.5 to 2.7. */
    static final double USUAL_PRILL_D50_MM = 2.0;

    /** Error of its logarithm. Common practice: granular products run from about 2.5 to 4.2 mm. */
    static final double USUAL_D50_ERROR = 0.15;

    /** Sigma where not sieved. Source: European Fertiliser Blenders Association, spread index below 18. */
    static final double USUAL_SIGMA = 0.18;

    /** Error of sigma where not measured. Assumption: spread indices run from about 13 to 23. */
    static final double UNKNOWN_SIGMA_ERROR = 0.05;

    /** Error of a figure taken from another product over that of the usual one: two products vary independently. */
    static final double OF_TWO_PRODUCTS = Math.sqrt(2);

    /**
     * Fills the gaps of one product.
     *
     * @param form what the granules are; gives the published band
     * @param bulk bulk density, kg/L, or null
     * @param bulkError relative standard error of the density, at least 0
     * @param sizes size distribution, or null
     * @param otherBulk bulk density of the product it is compared with, kg/L, or null
     * @param otherSizes its size distribution, or null
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
            bulkErrorHere = otherBulk == null ? USUAL_BULK_ERROR : OF_TWO_PRODUCTS * USUAL_BULK_ERROR;
        }
        SizeDistribution taken = sizes == null ? otherSizes : sizes;
        double d50 = taken == null ? usualD50Mm(form) : taken.d50Mm();
        double d50Error = d50Error(sizes, otherSizes);
        boolean spreadKnown = sizes != null && !sizes.spreadIsBound();
        double sigma = sigma(sizes, otherSizes);
        double sigmaStandardError = sizes != null && spreadKnown ? sizes.sigmaStandardError() : UNKNOWN_SIGMA_ERROR;
        return new EstimatedProperties(
                form,
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

    private static double d50Error(@Nullable SizeDistribution own, @Nullable SizeDistribution other) {
        if (own != null) {
            return own.lnD50StandardError();
        }
        return other == null ? USUAL_D50_ERROR : OF_TWO_PRODUCTS * USUAL_D50_ERROR;
    }

    /** The measured sigma; else the other product's; never above this product's own bound. */
    private static double sigma(@Nullable SizeDistribution own, @Nullable SizeDistribution other) {
        if (own != null && !own.spreadIsBound()) {
            return own.sigma();
        }
        double guess = other == null || other.spreadIsBound() ? USUAL_SIGMA : other.sigma();
        return own == null ? guess : Math.min(guess, own.sigma());
    }

    /** Usual bulk density of a form, kg/L: the middle of its published band, else that of all products. */
    static double usualBulkKgPerL(ProductForm form) {
        Double band = bandMiddle(form);
        return band == null ? USUAL_BULK_KG_PER_L : band;
    }

    /** Relative error of that. */
    static double usualBulkError(ProductForm form) {
        return bandMiddle(form) == null ? USUAL_BULK_ERROR : BAND_BULK_ERROR;
    }

    /** Usual median of a form, mm. */
    static double usualD50Mm(ProductForm form) {
        return form == ProductForm.PRILLED_UREA ? USUAL_PRILL_D50_MM : USUAL_D50_MM;
    }

    private static @Nullable Double bandMiddle(ProductForm form) {
        for (PublishedBand band : PublishedBands.of(form)) {
            if (band.quantity() == PublishedBand.Quantity.BULK_DENSITY) {
                return (band.range().low() + band.range().high()) / 2;
            }
        }
        return null;
    }

    /** The same with another bulk density, kg/L. */
    EstimatedProperties withBulk(double otherKgPerL) {
        return new EstimatedProperties(
                form,
                otherKgPerL,
                bulkError,
                bulkKnown,
                d50Mm,
                d50Error,
                sizeKnown,
                sigma,
                sigmaStandardError,
                spreadKnown);
    }

    /** Density of a granule, kg/m³. */
    double granuleKgPerM3() {
        return ParticleDensities.kgPerM3(bulkKgPerL, form);
    }

    /** Diameter at a normal quantile of its logarithm, mm. */
    double diameterMm(double z) {
        return d50Mm * Math.exp(z * sigma);
    }

    /** Granulometric spread index, %. */
    double spreadIndexPercent() {
        return SizeDistribution.exact(d50Mm, Math.exp(sigma)).spreadIndexPercent();
    }

    /** Points of spread index for 1 of sigma: the index is 100 sinh(z sigma), z the normal quantile of 84 %. */
    double spreadIndexSlope() {
        return 100 * ThrowLine.EDGE_Z * Math.cosh(ThrowLine.EDGE_Z * sigma);
    }

    /** Flow at the usual opening, kg/min. */
    double flowKgPerMin() {
        return FlowScaling.kgPerMin(bulkKgPerL, FlowScaling.USUAL_OPENING_MM, d50Mm, Flight.GRAVITY_M_PER_S2);
    }

    /** Relative change of flow for a relative change of d50: −2.5 k d / (D − k d), from {@link FlowScaling}. */
    double flowSlopeOfD50() {
        double blocked = FlowScaling.K * d50Mm;
        return -FlowScaling.EXPONENT * blocked / (FlowScaling.USUAL_OPENING_MM - blocked);
    }
}
