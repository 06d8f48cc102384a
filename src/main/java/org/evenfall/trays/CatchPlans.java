package org.evenfall.trays;

import org.evenfall.granule.SizeDistribution;

/** What will land in a tray and how noisy counting and reading it is. A tray catches whole granules. */
public final class CatchPlans {

    /** Assumption: highest noise that leaves the limits of the CV meaningful, %. */
    public static final double WANTED_NOISE_PERCENT = 5;

    /** Assumption: more runs are not asked of a person. */
    public static final int MOST_RUNS = 20;

    /** Assumption: side of the largest square tray that one person carries and empties without a spill, m. */
    private static final double LARGEST_TRAY_SIDE_M = 1;

    /** A value rounded to a step is off by a uniform error; its standard deviation is the step over √12 (exact). */
    private static final double UNIFORM_SD_DIVISOR = Math.sqrt(12);

    /** Mass mean of a log-normal distribution of volumes from its mass median diameter: exp(4.5 σ²), exact. */
    private static final double MASS_MEAN_EXPONENT = 4.5;

    /** One kg/ha is a tenth of a gram on a square metre. */
    private static final double KG_PER_HA_OF_G_PER_M2 = 10;

    private CatchPlans() {}

    /**
     * Mass-weighted mean granule m̄, g: ρ π/6 d50³ exp(4.5 σ²), the mean that sets the counting noise √(m̄/M) of a mass M.
     *
     * @param sizes log-normal by mass; σ is the standard deviation of ln d
     * @param particleDensityKgPerM3 apparent density of a granule, kg/m³
     */
    public static double meanGranuleG(SizeDistribution sizes, double particleDensityKgPerM3) {
        double diameterM = sizes.d50Mm() / 1000;
        return 1000
                * particleDensityKgPerM3
                * Math.PI
                / 6
                * diameterM
                * diameterM
                * diameterM
                * Math.exp(MASS_MEAN_EXPONENT * sizes.sigma() * sizes.sigma());
    }

    /**
     * Catch, noise and runs for a rate.
     *
     * @param rateKgPerHa product rate, kg/ha, above 0
     * @param trayAreaM2 catching area, m², above 0
     * @param meanGranuleG see {@link #meanGranuleG}
     * @param readingStepG smallest step read, as grams, at least 0
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static CatchPlan of(double rateKgPerHa, double trayAreaM2, double meanGranuleG, double readingStepG) {
        if (!(rateKgPerHa > 0) || !(trayAreaM2 > 0) || !(meanGranuleG > 0) || !(readingStepG >= 0)) {
            throw new IllegalArgumentException("rate, area and granule above 0, step at least 0: " + rateKgPerHa + ", "
                    + trayAreaM2 + ", " + meanGranuleG + ", " + readingStepG);
        }
        double catchG = rateKgPerHa * trayAreaM2 / KG_PER_HA_OF_G_PER_M2;
        int runs = runs(catchG, meanGranuleG, readingStepG);
        return new CatchPlan(
                catchG,
                catchG / meanGranuleG,
                100 * Math.sqrt(meanGranuleG / catchG),
                100 * readingStepG / UNIFORM_SD_DIVISOR / catchG,
                runs,
                noisePercent(runs * catchG, meanGranuleG, readingStepG),
                runs == 1 ? null : largerTrays(rateKgPerHa, trayAreaM2, meanGranuleG, readingStepG));
    }

    private static int runs(double catchG, double meanGranuleG, double readingStepG) {
        int runs = 1;
        while (runs < MOST_RUNS && noisePercent(runs * catchG, meanGranuleG, readingStepG) > WANTED_NOISE_PERCENT) {
            runs++;
        }
        return runs;
    }

    /** Trays that need one run; where these would be too large, trays of twice the area, for half the runs. */
    private static LargerTrays largerTrays(
            double rateKgPerHa, double trayAreaM2, double meanGranuleG, double readingStepG) {
        double areaM2 = KG_PER_HA_OF_G_PER_M2 * leastCatchG(meanGranuleG, readingStepG) / rateKgPerHa;
        if (areaM2 <= LARGEST_TRAY_SIDE_M * LARGEST_TRAY_SIDE_M) {
            return LargerTrays.of(1, areaM2, trayAreaM2);
        }
        double twiceM2 = 2 * trayAreaM2;
        return LargerTrays.of(
                runs(rateKgPerHa * twiceM2 / KG_PER_HA_OF_G_PER_M2, meanGranuleG, readingStepG), twiceM2, trayAreaM2);
    }

    /**
     * Smallest catch whose noise is at most the wanted one, g: with q the wanted noise and r the error of a reading, q² M² − m̄
     * M − r² = 0, of which the positive root is M = (m̄ + √(m̄² + 4 q² r²)) / (2 q²).
     */
    private static double leastCatchG(double meanGranuleG, double readingStepG) {
        double wantedSquare = WANTED_NOISE_PERCENT * WANTED_NOISE_PERCENT / 1e4;
        double reading = readingStepG / UNIFORM_SD_DIVISOR;
        return (meanGranuleG + Math.sqrt(meanGranuleG * meanGranuleG + 4 * wantedSquare * reading * reading))
                / (2 * wantedSquare);
    }

    /** Counting and reading noise of a catch together, in squares, %; catch in g, above 0. */
    public static double noisePercent(double catchG, double meanGranuleG, double readingStepG) {
        double reading = readingStepG / UNIFORM_SD_DIVISOR / catchG;
        return 100 * Math.sqrt(meanGranuleG / catchG + reading * reading);
    }
}
