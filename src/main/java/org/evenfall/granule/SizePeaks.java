package org.evenfall.granule;

import java.util.List;

/** How many peaks a sieve analysis shows: one for a straight product, two where coarse and fine granules are mixed. */
public final class SizePeaks {

    /** A valley counts only below this share of the lower of its two peaks. Assumption: less is sieving error. */
    private static final double VALLEY_SHARE = 0.8;

    private SizePeaks() {}

    /**
     * Whether the share of mass for equal steps of ln size has two peaks with a valley between. An open class at an end is
     * taken as wide as its neighbour.
     *
     * @param aperturesMm apertures, mm, rising, at least two
     * @param shares share of each class, finest first, one more than apertures
     */
    public static boolean isTwo(List<Double> aperturesMm, List<Double> shares) {
        double[] density = density(aperturesMm, shares);
        for (int valley = 1; valley < density.length - 1; valley++) {
            double before = 0;
            double after = 0;
            for (int i = 0; i < density.length; i++) {
                before = i < valley ? Math.max(before, density[i]) : before;
                after = i > valley ? Math.max(after, density[i]) : after;
            }
            if (density[valley] < VALLEY_SHARE * Math.min(before, after)) {
                return true;
            }
        }
        return false;
    }

    private static double[] density(List<Double> aperturesMm, List<Double> shares) {
        double[] density = new double[shares.size()];
        for (int i = 0; i < density.length; i++) {
            int upper = Math.max(1, Math.min(i, aperturesMm.size() - 1));
            density[i] = shares.get(i) / Math.log(aperturesMm.get(upper) / aperturesMm.get(upper - 1));
        }
        return density;
    }
}
