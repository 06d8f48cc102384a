package org.evenfall.granule;

import org.evenfall.quantity.Interval;

/**
 * A published range for a kind of product.
 *
 * @param form for which form
 * @param quantity of which quantity
 * @param range the range, in the unit of the quantity
 * @param sourceKey bundle key of the source
 */
public record PublishedBand(ProductForm form, Quantity quantity, Interval range, String sourceKey) {

    /** What a published range is of. */
    public enum Quantity {
        /** Bulk density, kg/L. */
        BULK_DENSITY,
        /** Share of the mass between 2 and 4 mm, %. */
        SHARE_2_TO_4_MM,
        /** Median diameter, mm. */
        MEDIAN,
        /** Granulometric spread index, %. */
        SPREAD_INDEX
    }
}
