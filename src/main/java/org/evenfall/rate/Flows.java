package org.evenfall.rate;

/** Flow, rate, width and speed: kg/min = kg/ha × m × km/h / 600, exact. */
public final class Flows {

    /** Metres × km/h that make one hectare a minute: 10 000 m² / (1000 m / 60 min). */
    private static final double M_KM_PER_H_IN_HA_PER_MIN = 600;

    private Flows() {}

    /** Flow of all outlets, kg/min, from rate, kg/ha, width, m, and speed, km/h. */
    public static double kgPerMin(double rateKgPerHa, double widthM, double speedKmPerH) {
        return rateKgPerHa * widthM * speedKmPerH / M_KM_PER_H_IN_HA_PER_MIN;
    }

    /**
     * Rate, kg/ha, from flow of all outlets, kg/min, width, m, and speed, km/h.
     *
     * @throws IllegalArgumentException unless width and speed are above 0
     */
    public static double kgPerHa(double flowKgPerMin, double widthM, double speedKmPerH) {
        if (!(widthM > 0) || !(speedKmPerH > 0)) {
            throw new IllegalArgumentException("width and speed must be above 0: " + widthM + " m, " + speedKmPerH);
        }
        return flowKgPerMin * M_KM_PER_H_IN_HA_PER_MIN / (widthM * speedKmPerH);
    }

    /**
     * Speed over a measured length, km/h.
     *
     * @throws IllegalArgumentException unless the time is above 0
     */
    public static double kmPerH(double distanceM, double timeS) {
        if (!(timeS > 0)) {
            throw new IllegalArgumentException("time must be above 0 s: " + timeS);
        }
        return 3.6 * distanceM / timeS;
    }
}
