package org.evenfall.setup.tool;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.rate.Nutrients;
import org.evenfall.trays.CatchConversion;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.CatchPlans;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.WheelMarks;
import org.jspecify.annotations.Nullable;

/** Where the trays of a test are placed, and how often to drive over them. */
public final class TrayPlanTool {

    /** Fewest trays of a test. */
    public static final int FEWEST_TRAYS = TrayLayouts.FEWEST_TRAYS;

    /** Most trays of a test. */
    public static final int MOST_TRAYS = TrayLayouts.MOST_TRAYS;

    private TrayPlanTool() {}

    /**
     * The trays of a test.
     *
     * @param count number of trays, {@link #FEWEST_TRAYS} to {@link #MOST_TRAYS}
     * @param lengthM side along the travel, m
     * @param widthM side across the travel, m
     */
    public record Trays(int count, double lengthM, double widthM) {

        /** Area of one tray, m². */
        public double areaM2() {
            return lengthM * widthM;
        }
    }

    /** Positions of the trays between two tramlines, moved out of the wheel marks. */
    public static TrayLayout layout(double tramlineWidthM, Trays trays, DrivingPattern driving, WheelMarks wheelMarks) {
        return TrayLayouts.asideFrom(
                wheelMarks, TrayLayouts.of(tramlineWidthM, trays.count(), trays.areaM2(), driving), trays.widthM());
    }

    /**
     * How much lands in a tray in one run and how many runs make the catch sure enough.
     *
     * @param rateKgPerHa product rate, kg/ha
     * @param granuleKgPerM3 density of a granule, kg/m³
     * @param readingStepG smallest step of the reading as mass, g
     */
    public static CatchPlan runs(
            double rateKgPerHa, Trays trays, SizeDistribution sizes, double granuleKgPerM3, double readingStepG) {
        return CatchPlans.of(rateKgPerHa, trays.areaM2(), CatchPlans.meanGranuleG(sizes, granuleKgPerM3), readingStepG);
    }

    /** Trays proposed for a tramline width where no number is stated. */
    public static int proposedTrays(double tramlineWidthM) {
        return TrayLayouts.proposedTrays(tramlineWidthM);
    }

    /**
     * What the runs add to the strip.
     *
     * @param rateKgPerHa product rate, kg/ha
     * @param nitrogenPercent nitrogen share of the product, %; null where it is not known
     */
    public static StripLoad strip(
            double rateKgPerHa, @Nullable Double nitrogenPercent, CatchPlan runs, double tramlineWidthM) {
        Double nitrogenKgPerHa = nitrogenPercent == null
                ? null
                : Double.valueOf(Nutrients.nitrogenKgPerHa(rateKgPerHa, nitrogenPercent));
        return StripLoad.of(rateKgPerHa, nitrogenKgPerHa, runs.runsNeeded(), tramlineWidthM);
    }

    /** Mass of a column of product in a tube, g. */
    public static double tubeG(double heightMm, double boreMm, double bulkDensityKgPerL) {
        return CatchConversion.gramsOfHeightMm(heightMm, boreMm, bulkDensityKgPerL);
    }
}
