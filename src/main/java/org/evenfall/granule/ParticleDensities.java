package org.evenfall.granule;

import java.util.OptionalDouble;
import org.evenfall.quantity.Interval;

/** Apparent density of a granule, estimated from bulk density. */
public final class ParticleDensities {

    /**
     * Bulk over particle density of granular fertiliser. Source: granular urea of Cousins, Roberge, Tabil 2021
     * (CSBE/CIGR), 1 325 kg/m³ a granule at a bulk density of about 0.74 kg/L.
     */
    public static final double USUAL_PACKING = 0.56;

    /** Standard error of the packing between products. Assumption: granular products pack within about 4 %. */
    public static final double PACKING_ERROR = 0.02;

    /** Packing outside which a weight or a volume was mistyped. Assumption: loose to dense random packing with margin. */
    public static final Interval PLAUSIBLE_PACKING = new Interval(0.50, 0.66);

    private static final double UREA_KG_PER_M3 = 1325;

    private static final double CALCIUM_AMMONIUM_NITRATE_KG_PER_M3 = 1850;

    private ParticleDensities() {}

    /**
     * Granule density = bulk density / {@link #USUAL_PACKING}; its relative error from the bulk density and the packing.
     *
     * @param bulk measured bulk density
     * @param form gives the published granule density by which the packing is checked
     */
    public static ParticleDensity fromBulk(BulkDensity bulk, ProductForm form) {
        double kgPerM3 = 1000 * bulk.meanKgPerL() / USUAL_PACKING;
        double relative = Math.hypot(bulk.standardErrorKgPerL() / bulk.meanKgPerL(), PACKING_ERROR / USUAL_PACKING);
        OptionalDouble published = publishedKgPerM3(form);
        double packing = published.isPresent() ? 1000 * bulk.meanKgPerL() / published.getAsDouble() : USUAL_PACKING;
        return new ParticleDensity(kgPerM3, relative * kgPerM3, packing, PLAUSIBLE_PACKING.contains(packing));
    }

    /** Published density of one granule, kg/m³; empty for a form without one. */
    public static OptionalDouble publishedKgPerM3(ProductForm form) {
        return switch (form) {
            // Source: Cousins, Roberge, Tabil 2021, CSBE/CIGR
            case GRANULAR_UREA, PRILLED_UREA -> OptionalDouble.of(UREA_KG_PER_M3);
            // Source (from memory): granule density tables
            case CALCIUM_AMMONIUM_NITRATE -> OptionalDouble.of(CALCIUM_AMMONIUM_NITRATE_KG_PER_M3);
            case AMMONIUM_NITRATE, OTHER, UNANSWERED -> OptionalDouble.empty();
        };
    }
}
