package org.evenfall.reference;

import java.util.Objects;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The new product, as far as it is measured.
 *
 * @param form what the granules are
 * @param bulkDensityKgPerL bulk density, kg/L, above 0; null while not measured
 * @param bulkDensitySe its standard error, kg/L, at least 0
 * @param sizes size distribution; null while not sieved
 */
public record Candidate(
        ProductForm form,
        @Nullable Double bulkDensityKgPerL,
        double bulkDensitySe,
        @Nullable SizeDistribution sizes) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException when a value is outside its range
     */
    public Candidate {
        Objects.requireNonNull(form, "form");
        if (bulkDensityKgPerL != null && !(bulkDensityKgPerL > 0)) {
            throw new IllegalArgumentException("bulkDensityKgPerL must be above 0: " + bulkDensityKgPerL);
        }
        if (!(bulkDensitySe >= 0)) {
            throw new IllegalArgumentException("bulkDensitySe must be at least 0: " + bulkDensitySe);
        }
    }

    /** Whether bulk density or sizes, which decide its flight, are measured. */
    public boolean measured() {
        return bulkDensityKgPerL != null || sizes != null;
    }
}
