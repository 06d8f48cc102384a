package org.evenfall.trays;

/**
 * Where the tractor's wheels run in each pass.
 *
 * @param trackM track width, middle of the left wheel to middle of the right, m, above 0
 * @param tyreM width of a tyre, or of a pair of them, m, at least 0
 */
public record WheelMarks(double trackM, double tyreM) {

    /** Common practice: 1.80 m track, tyres of 0.5 m. */
    public static final WheelMarks USUAL = new WheelMarks(1.8, 0.5);

    /** Assumption: free ground between a tyre and a tray, m. */
    static final double FREE_M = 0.05;

    /** @throws IllegalArgumentException when a value is out of its range */
    public WheelMarks {
        if (!(trackM > 0) || !(tyreM >= 0)) {
            throw new IllegalArgumentException("trackM must be above 0, tyreM at least 0: " + trackM + ", " + tyreM);
        }
    }

    /** How near the middle of a tray may come to the middle of a wheel, m. */
    double reachM(double trayAcrossM) {
        return (tyreM + trayAcrossM) / 2 + FREE_M;
    }
}
