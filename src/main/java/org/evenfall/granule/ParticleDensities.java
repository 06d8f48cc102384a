package org.evenfall.granule;

import java.util.OptionalDouble;

/** Apparent density of a granule, estimated from bulk density. */
public final class ParticleDensities {

    /**
     * Bulk over particle density of granular fertiliser. From the granular urea of Cousins, Roberge, Tabil 2021
     * (CSBE/CIGR): 1 325 kg/m³ a granule against a bulk density of about 0.74 kg/L.
     */
    public static final double USUAL_PACKING = 0.56;

    /** Standard error of the packing between products. Ours. */
    public static final double PACKING_ERROR = 0.02;

    /** Outside these a density was mistyped or misread. */
    public static final double LOWEST_PACKING = 0.50;

    public static final double HIGHEST_PACKING = 0.66;

    private ParticleDensities() {}

    public static ParticleDensity fromBulk(BulkDensity bulk, ProductForm form) {
        double kgPerM3 = 1000 * bulk.meanKgPerL() / USUAL_PACKING;
        double relative = Math.hypot(bulk.standardErrorKgPerL() / bulk.meanKgPerL(), PACKING_ERROR / USUAL_PACKING);
        OptionalDouble published = publishedKgPerM3(form);
        double packing = published.isPresent() ? 1000 * bulk.meanKgPerL() / published.getAsDouble() : USUAL_PACKING;
        return new ParticleDensity(
                kgPerM3, relative * kgPerM3, packing, LOWEST_PACKING <= packing && packing <= HIGHEST_PACKING);
    }

    /** Published density of one granule, kg/m³; empty for a form without one. */
    public static OptionalDouble publishedKgPerM3(ProductForm form) {
        return switch (form) {
            // Cousins, Roberge, Tabil 2021, CSBE/CIGR
            case GRANULAR_UREA, PRILLED_UREA -> OptionalDouble.of(1325);
            // from memory
            case CALCIUM_AMMONIUM_NITRATE -> OptionalDouble.of(1850);
            case AMMONIUM_NITRATE, OTHER, UNANSWERED -> OptionalDouble.empty();
        };
    }
}
