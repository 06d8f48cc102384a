package org.evenfall.reference;

import org.evenfall.flight.Throws;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.SizeDistribution;

/**
 * Whether a working width is in reach at all. A model: the coarse granules, thrown at the highest disc speed allowed, must
 * land at least {@link #NEEDED_SHARE} of the tramline width away, since the pattern has to fall gently past the half-way
 * line. Said to be out of reach only when it still fails with a margin and the measurements' error added.
 */
public final class Reach {

    /** Throw needed, share of the tramline width. Ours. */
    public static final double NEEDED_SHARE = 0.6;

    /** Margin on the throw before a width is called out of reach. Ours. */
    public static final double MARGIN = 1.10;

    private Reach() {}

    /** Widest working width that looks reachable, m. */
    static double widestM(Candidate product, RankContext context) {
        return coarseThrowM(product, context) / NEEDED_SHARE;
    }

    static boolean outOfReach(Candidate product, RankContext context, double relativeError) {
        return coarseThrowM(product, context) * (1 + 1.6449 * relativeError) * MARGIN
                < NEEDED_SHARE * context.tramlineWidthM();
    }

    private static double coarseThrowM(Candidate product, RankContext context) {
        SizeDistribution sizes = product.sizes() == null ? Landed.usualSizes(product.form()) : product.sizes();
        return Throws.distanceM(
                sizes.quantileMm(0.84),
                1000 * product.bulkDensityKgPerL() / ParticleDensities.USUAL_PACKING,
                Throws.outletSpeedMPerS(context.discRadiusM(), context.discRpmHighest()),
                context.heightOverCropM());
    }
}
