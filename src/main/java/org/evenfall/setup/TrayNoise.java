package org.evenfall.setup;

import org.evenfall.granule.SizeDistribution;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.CatchConversion;
import org.evenfall.trays.CatchPlans;
import org.jspecify.annotations.Nullable;

/**
 * What the noise of a catch is computed from.
 *
 * @param granuleG mean granule, g
 * @param stepG smallest step that is read on scale, cylinder or tube, as grams; 0 where it is not known
 */
record TrayNoise(double granuleG, double stepG) {

    /** Assumption: granule where the product is not measured, 3.2 mm at 1 260 kg/m³, g. */
    private static final double USUAL_GRANULE_G = CatchPlans.meanGranuleG(SizeDistribution.exact(3.2, 1.2), 1260);

    static TrayNoise of(ReadSetup read, ProductResult product) {
        double granuleG = product.sizes() == null || product.particle() == null
                ? USUAL_GRANULE_G
                : CatchPlans.meanGranuleG(product.sizes(), product.particle().kgPerM3());
        return new TrayNoise(granuleG, stepG(read, product));
    }

    private static double stepG(ReadSetup read, ProductResult product) {
        Double step = read.number(TrayPaths.READING_STEP);
        if (step == null) {
            return 0;
        }
        EnteredQuantity typed = read.get(TrayPaths.READING_STEP);
        Double density = product.density() == null ? null : product.density().meanKgPerL();
        return switch (TrayPaths.READING_STEP.range(read.setup(), typed).core().dimension()) {
            case VOLUME -> density == null ? 0 : CatchConversion.gramsOfMl(step, density);
            case LENGTH -> gramsOfHeight(step, read.number(TrayPaths.TUBE_BORE), density);
            default -> step;
        };
    }

    private static double gramsOfHeight(double stepMm, @Nullable Double boreMm, @Nullable Double density) {
        return density == null || boreMm == null ? 0 : CatchConversion.gramsOfHeightMm(stepMm, boreMm, density);
    }
}
