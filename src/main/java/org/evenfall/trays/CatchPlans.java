package org.evenfall.trays;

import org.evenfall.granule.SizeDistribution;

/** What will land in a tray and how noisy counting and reading it is. A tray catches whole granules. */
public final class CatchPlans {

    /** Noise wanted at most, %. */
    public static final double WANTED_NOISE_PERCENT = 5;

    /** Runs that one asks of a person at most. */
    public static final int MOST_RUNS = 20;

    private CatchPlans() {}

    /**
     * Mass-weighted mean granule, g: ρ π/6 d50³ exp(4.5 ln²g), the mean that sets the counting noise √(m̄/M) of a mass M.
     *
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
                * Math.exp(4.5 * sizes.sigma() * sizes.sigma());
    }

    /**
     * @param rateKgPerHa product rate, above 0
     * @param trayAreaM2 catching area, above 0
     * @param meanGranuleG see {@link #meanGranuleG}
     * @param readingStepG smallest step read, as grams, at least 0
     */
    public static CatchPlan of(double rateKgPerHa, double trayAreaM2, double meanGranuleG, double readingStepG) {
        if (!(rateKgPerHa > 0) || !(trayAreaM2 > 0) || !(meanGranuleG > 0) || readingStepG < 0) {
            throw new IllegalArgumentException("rate, area and granule must be above 0");
        }
        double catchG = rateKgPerHa * trayAreaM2 / 10;
        int runs = 1;
        while (runs < MOST_RUNS && noisePercent(runs * catchG, meanGranuleG, readingStepG) > WANTED_NOISE_PERCENT) {
            runs++;
        }
        return new CatchPlan(
                catchG,
                catchG / meanGranuleG,
                100 * Math.sqrt(meanGranuleG / catchG),
                100 * readingStepG / Math.sqrt(12) / catchG,
                runs,
                noisePercent(runs * catchG, meanGranuleG, readingStepG));
    }

    /** Counting and reading noise together of a mean catch, %. */
    public static double noisePercent(double catchG, double meanGranuleG, double readingStepG) {
        double reading = readingStepG / Math.sqrt(12) / catchG;
        return 100 * Math.sqrt(meanGranuleG / catchG + reading * reading);
    }
}
