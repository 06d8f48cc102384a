package org.evenfall.reference;

import org.evenfall.granule.Packing;
import org.evenfall.granule.ProductForm;
import org.evenfall.quantity.Interval;

/**
 * The new product compared with one reference: throw at the edge, flow at the same opening and size spread. Differences are
 * new product less reference; what one of the two lacks is taken from the other, so that a gap in the data gives no
 * direction, only an error.
 */
final class Comparison {

    /** Relative error of the ratio of two granule densities of one form. Assumption: such heaps pack within about 4 %. */
    static final double PACKING_ERROR_SAME_FORM = 0.02;

    /** The same where a form is not known. Assumption: such heaps pack within about 8 %. */
    static final double PACKING_ERROR_UNKNOWN_FORM = 0.04;

    final TestedProduct reference;
    final EstimatedProperties product;
    final EstimatedProperties other;
    final ProductThrow productThrow;
    final ProductThrow otherThrow;
    final LandingEstimate landing;
    private final double packingError;

    /** @param landing where the reference lands by itself, gaps filled with usual figures */
    Comparison(
            TestedProduct reference,
            EstimatedProperties product,
            EstimatedProperties other,
            ProductThrow productThrow,
            ProductThrow otherThrow,
            LandingEstimate landing) {
        this.reference = reference;
        this.product = product;
        this.other = other;
        this.productThrow = productThrow;
        this.otherThrow = otherThrow;
        this.landing = landing;
        this.packingError = packingError(product.form(), other.form());
    }

    /** Standard error of the logarithm of the ratio of two granule densities from their packing. */
    static double packingError(ProductForm form, ProductForm other) {
        if (isUnknown(form) || isUnknown(other)) {
            return PACKING_ERROR_UNKNOWN_FORM;
        }
        return form == other
                ? PACKING_ERROR_SAME_FORM
                : Math.hypot(Packing.of(form).relativeError(), Packing.of(other).relativeError());
    }

    private static boolean isUnknown(ProductForm form) {
        return form == ProductForm.UNANSWERED || form == ProductForm.OTHER;
    }

    /** Throw at the edge under the usual assumptions, m; negative: the new product falls short. */
    double throwM() {
        return productThrow.edge().metres() - otherThrow.edge().metres();
    }

    /** Throw at the edge, % of the reference's. */
    double throwPercent() {
        return 100 * throwM() / otherThrow.edge().metres();
    }

    /** 90 % interval of the throw difference: every measurement of both, packing, range of the model, m. */
    Interval throwIntervalM() {
        return ThrowRange.differenceM(productThrow, otherThrow, throwErrorM());
    }

    /** Farthest end of that, % of the reference's throw, without its sign. */
    double farthestPercent() {
        return ThrowRange.farthestPercent(productThrow, otherThrow, throwErrorM());
    }

    /** Standard error of the throw difference from the measurements of both and from packing, m. */
    double throwErrorM() {
        double own = productThrow.edge().errorM(product.bulkError(), product.d50Error(), product.sigmaStandardError());
        double theirs = otherThrow.edge().errorM(other.bulkError(), other.d50Error(), other.sigmaStandardError());
        return Math.hypot(Math.hypot(own, theirs), otherThrow.edge().perLnDensity() * packingError);
    }

    /** Flow at the same opening, natural logarithm of the ratio. */
    double lnFlow() {
        return Math.log(product.flowKgPerMin() / other.flowKgPerMin());
    }

    /** Size spread, points of the spread index. */
    double spreadPoints() {
        return product.spreadIndexPercent() - other.spreadIndexPercent();
    }
}
