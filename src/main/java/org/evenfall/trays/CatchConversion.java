package org.evenfall.trays;

/** Tray catches read as volume or as height in a tube, turned into grams through the bulk density. */
public final class CatchConversion {

    private CatchConversion() {}

    /** Grams of so many millilitres; bulk density in kg/L. */
    public static double gramsOfMl(double ml, double bulkDensityKgPerL) {
        return ml * bulkDensityKgPerL;
    }

    /** Grams of a height in a tube; height and bore in mm, bulk density in kg/L. */
    public static double gramsOfHeightMm(double heightMm, double boreMm, double bulkDensityKgPerL) {
        return gramsOfMl(heightMm * Math.PI / 4 * boreMm * boreMm / 1000, bulkDensityKgPerL);
    }
}
