package org.evenfall.setup;

import java.util.List;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.SizeCurve;

/** The fitted size distribution of a sieve analysis as points of a curve. */
public final class SieveCurve {

    /** The curve begins at this share of its end: the logarithm of 0 is no size. */
    private static final double FIRST_SHARE = 1e-3;

    private SieveCurve() {}

    /** So many points at equal steps of diameter up to a largest one, mm. */
    public static List<SizeCurve.Point> of(SieveResult sieve, double toMm, int points) {
        return SizeCurve.of(sieve.distribution(), FIRST_SHARE * toMm, toMm, points);
    }
}
