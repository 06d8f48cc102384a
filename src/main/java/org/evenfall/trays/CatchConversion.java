package org.evenfall.trays;

/** Tray catches read as volume or as height in a tube, turned into grams through the bulk density. */
public final class CatchConversion {

    private static final double MM3_PER_ML = 1000;

    private CatchConversion() {}

    /**
     * Grams of a volume.
     *
     * @param bulkDensityKgPerL bulk density, kg/L, which is g/ml
     */
    public static double gramsOfMl(double ml, double bulkDensityKgPerL) {
        return ml * bulkDensityKgPerL;
    }

    /**
     * Grams of a height in a tube.
     *
     * @param heightMm height of the product, mm
     * @param boreMm inner diameter of the tube, mm
     * @param bulkDensityKgPerL bulk density, kg/L
     */
    public static double gramsOfHeightMm(double heightMm, double boreMm, double bulkDensityKgPerL) {
        return gramsOfMl(heightMm * Math.PI / 4 * boreMm * boreMm / MM3_PER_ML, bulkDensityKgPerL);
    }
}
