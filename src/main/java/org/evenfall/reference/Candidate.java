package org.evenfall.reference;

import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The new product as measured.
 *
 * @param form what the granules are
 * @param bulkDensityKgPerL bulk density, above 0
 * @param bulkDensitySe its standard error, kg/L
 * @param sizes size distribution, or null when it was not sieved
 */
public record Candidate(
        ProductForm form,
        double bulkDensityKgPerL,
        double bulkDensitySe,
        @Nullable SizeDistribution sizes) {

    public Candidate {
        if (!(bulkDensityKgPerL > 0) || bulkDensitySe < 0) {
            throw new IllegalArgumentException("bulk density must be above 0: " + bulkDensityKgPerL);
        }
    }
}
