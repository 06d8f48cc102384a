package org.evenfall.trays.ground;

import java.util.Random;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.CatchPlans;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;

/**
 * What is known of a machine before the first test: where it works, with what, and the scales of its two levers.
 *
 * @param tramlines distance and driving
 * @param trays number of trays of a test
 * @param sizes granules by mass
 * @param densityKgPerM3 of a granule
 * @param rateKgPerHa product
 * @param first scale of the lever that is turned first
 * @param second scale of the other
 */
record Job(
        Tramlines tramlines,
        int trays,
        SizeDistribution sizes,
        double densityKgPerM3,
        double rateKgPerHa,
        Scale first,
        Scale second) {

    static final double TRAY_M2 = 0.25;

    /** Side of a tray, m. */
    static final double TRAY_M = 0.5;

    /** The scale that weighs the catch reads tenths of a gram. */
    static final double READ_G = 0.1;

    private static final double[] NARROW_M = {12, 15, 18, 20, 21};
    private static final double[] WIDE_M = {24, 24, 27, 28, 30, 32, 36, 36};
    private static final double NARROW_SHARE = 0.2;
    private static final double ROUND_SHARE = 0.2;

    /** A random distance between tramlines, m. */
    static double drawWidthM(Random random) {
        double[] widths = random.nextDouble() < NARROW_SHARE ? NARROW_M : WIDE_M;
        return widths[random.nextInt(widths.length)];
    }

    /** A random one; {@code sevenTrays} at any width, else as many as the program proposes. */
    static Job draw(Random random, double widthM, boolean sevenTrays) {
        boolean round = random.nextDouble() < ROUND_SHARE;
        return new Job(
                new Tramlines(widthM, round ? DrivingPattern.ROUND_AND_ROUND : DrivingPattern.BACK_AND_FORTH),
                sevenTrays ? TrayLayouts.USUAL_TRAYS : TrayLayouts.proposedTrays(widthM),
                new SizeDistribution(2.8 + random.nextDouble(), 1.15 + 0.15 * random.nextDouble(), 0.03, 0.05, false),
                1250 + 150 * random.nextDouble(),
                90 + 160 * random.nextDouble(),
                Scale.draw(random, "vanes"),
                Scale.draw(random, "drop point"));
    }

    double widthM() {
        return tramlines.widthM();
    }

    TrayLayout layout() {
        return TrayLayouts.of(widthM(), trays, TRAY_M2, tramlines.pattern());
    }

    double granuleG() {
        return CatchPlans.meanGranuleG(sizes, densityKgPerM3);
    }

    CatchPlan plan() {
        return CatchPlans.of(rateKgPerHa, TRAY_M2, granuleG(), READ_G);
    }
}
