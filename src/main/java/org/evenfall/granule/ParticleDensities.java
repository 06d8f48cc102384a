package org.evenfall.granule;

import java.util.OptionalDouble;
import org.evenfall.quantity.Interval;

/**
 * Apparent density of a granule, its pores included, estimated from bulk density by the {@link Packing} of its form. The
 * 1 325 kg/m³ of Cousins, Roberge, Tabil 2021 (gas pycnometer) is the skeleton of granular urea without its pores, and is
 * not used.
 */
public final class ParticleDensities {

    /** Density of solid urea, kg/m³: no granule is denser. Source: ECHA dossier 2009, CAMEO after CRC: 1 330–1 335. */
    public static final double SOLID_UREA_KG_PER_M3 = 1335;

    /** Packing outside which a weight or a volume was mistyped. Assumption: loose to dense random packing with margin. */
    public static final Interval PLAUSIBLE_PACKING = new Interval(0.50, 0.66);

    /** Middle of 1 220–1 300. Source: UNIDO/IFDC Fertilizer Manual, second hand. */
    private static final double GRANULAR_UREA_KG_PER_M3 = 1260;

    /** Middle of 1 300–1 320. Source: UNIDO/IFDC Fertilizer Manual, second hand. */
    private static final double PRILLED_UREA_KG_PER_M3 = 1310;

    /** Middle of 1 650–1 850. Assumption: free of pores it computes to 1 880–1 900. */
    private static final double CALCIUM_AMMONIUM_NITRATE_KG_PER_M3 = 1750;

    private ParticleDensities() {}

    /**
     * Granule density = bulk density / packing of the form, at most that of the solid; its relative error from the bulk
     * density and the packing.
     *
     * @param bulk measured bulk density
     * @param form gives packing, solid and the apparent density by which the packing is checked
     */
    public static ParticleDensity fromBulk(BulkDensity bulk, ProductForm form) {
        Packing packing = Packing.of(form);
        double uncapped = uncappedKgPerM3(bulk.meanKgPerL(), form);
        double relative = Math.hypot(bulk.standardErrorKgPerL() / bulk.meanKgPerL(), packing.relativeError());
        OptionalDouble apparent = apparentKgPerM3(form);
        double share = apparent.isPresent() ? 1000 * bulk.meanKgPerL() / apparent.getAsDouble() : packing.share();
        double kgPerM3 = Math.min(uncapped, solidKgPerM3(form));
        return new ParticleDensity(
                kgPerM3,
                relative * kgPerM3,
                share,
                PLAUSIBLE_PACKING.contains(share),
                uncapped,
                uncapped * (1 - relative) > solidKgPerM3(form));
    }

    /**
     * Granule density of a bulk density, kg/m³; at most that of the solid.
     *
     * @param bulkKgPerL bulk density, kg/L, above 0
     * @param form gives packing and solid
     */
    public static double kgPerM3(double bulkKgPerL, ProductForm form) {
        return Math.min(uncappedKgPerM3(bulkKgPerL, form), solidKgPerM3(form));
    }

    private static double uncappedKgPerM3(double bulkKgPerL, ProductForm form) {
        return 1000 * bulkKgPerL / Packing.of(form).share();
    }

    /** Density of the solid of a form, kg/m³; infinite where none is known. */
    private static double solidKgPerM3(ProductForm form) {
        return form.isUrea() ? SOLID_UREA_KG_PER_M3 : Double.POSITIVE_INFINITY;
    }

    /** Apparent density of one granule, kg/m³; empty for a form without one. */
    private static OptionalDouble apparentKgPerM3(ProductForm form) {
        return switch (form) {
            case GRANULAR_UREA -> OptionalDouble.of(GRANULAR_UREA_KG_PER_M3);
            case PRILLED_UREA -> OptionalDouble.of(PRILLED_UREA_KG_PER_M3);
            case CALCIUM_AMMONIUM_NITRATE -> OptionalDouble.of(CALCIUM_AMMONIUM_NITRATE_KG_PER_M3);
            case AMMONIUM_NITRATE, OTHER, UNANSWERED -> OptionalDouble.empty();
        };
    }
}
