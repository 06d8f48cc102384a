package org.evenfall.reference;

import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * A product tested on this machine: a reference.
 *
 * @param id unique in the library
 * @param name its name in the library
 * @param form what the granules are
 * @param widthM working width tested at, m
 * @param bulkDensityKgPerL bulk density, kg/L
 * @param sizes size distribution, or null
 * @param testedCvPercent CV that it was tested with, %, or null
 */
public record TestedProduct(
        String id,
        String name,
        ProductForm form,
        double widthM,
        @Nullable Double bulkDensityKgPerL,
        @Nullable SizeDistribution sizes,
        @Nullable Double testedCvPercent) {

    /** Id of today's settings with the product spread so far; no product of a library has it. */
    public static final String TODAY_ID = "(today)";

    /** A product whose tested CV is not known. */
    public TestedProduct(
            String id,
            String name,
            ProductForm form,
            double widthM,
            @Nullable Double bulkDensityKgPerL,
            @Nullable SizeDistribution sizes) {
        this(id, name, form, widthM, bulkDensityKgPerL, sizes, null);
    }
}
