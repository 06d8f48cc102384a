package org.evenfall.trays;

/**
 * Larger trays in place of runs: twice the tray area counts as twice the runs, and adds no nitrogen.
 *
 * @param runs runs of the three passes that these trays need, at least 1
 * @param areaM2 catching area at each place, m²
 * @param sideM side of one square tray of that area, m, rounded up to a centimetre
 * @param traysTogether so many trays of today's size at each place have at least that area
 */
public record LargerTrays(int runs, double areaM2, double sideM, int traysTogether) {

    /** Centimetres in a metre. */
    private static final double CM_PER_M = 100;

    /** A quotient this little above a whole number is that number, off by the rounding of the arithmetic. */
    private static final double ROUNDING = 1e-9;

    static LargerTrays of(int runs, double areaM2, double trayAreaM2) {
        return new LargerTrays(
                runs, areaM2, roundedUp(CM_PER_M * Math.sqrt(areaM2)) / CM_PER_M, (int) roundedUp(areaM2 / trayAreaM2));
    }

    private static double roundedUp(double value) {
        return Math.ceil(value - ROUNDING);
    }
}
