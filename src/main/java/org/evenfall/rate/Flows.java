package org.evenfall.rate;

/** Flow, rate, width and speed: kg/min = kg/ha × m × km/h / 600. Exact. */
public final class Flows {

    private Flows() {}

    public static double kgPerMin(double rateKgPerHa, double widthM, double speedKmPerH) {
        return rateKgPerHa * widthM * speedKmPerH / 600;
    }

    public static double kgPerHa(double flowKgPerMin, double widthM, double speedKmPerH) {
        if (!(widthM > 0) || !(speedKmPerH > 0)) {
            throw new IllegalArgumentException("width and speed must be above 0: " + widthM + " m, " + speedKmPerH);
        }
        return flowKgPerMin * 600 / (widthM * speedKmPerH);
    }

    /** Speed over a measured length, km/h. */
    public static double kmPerH(double distanceM, double timeS) {
        if (!(timeS > 0)) {
            throw new IllegalArgumentException("time must be above 0 s: " + timeS);
        }
        return 3.6 * distanceM / timeS;
    }
}
