package org.evenfall.flight;

/**
 * Drag coefficient times Reynolds number over the square of the Reynolds number: {@link SphereDrag} tabled once, with
 * straight lines between {@value #CELLS} points an octave, so that a flight needs neither logarithm nor root. Within 1e-5
 * of the correlation; where two of its segments meet, their small jump is spread over one cell (0.4 % of the Reynolds
 * number).
 */
final class DragTable {

    private static final int CELL_BITS = 7;
    private static final int CELLS = 1 << CELL_BITS;

    /** Bits of a double below those that number its cell. */
    private static final int REST_BITS = 52 - CELL_BITS;

    // squares of the Reynolds numbers 2^-10 to 2^20
    private static final double LOWEST = 0x1p-20;
    private static final long FIRST = Double.doubleToRawLongBits(LOWEST) >>> REST_BITS;
    private static final double[] PRODUCTS = new double[60 * CELLS + 1];

    static {
        for (int i = 0; i < PRODUCTS.length; i++) {
            PRODUCTS[i] = exact(Double.longBitsToDouble((FIRST + i) << REST_BITS));
        }
    }

    private DragTable() {}

    /** The product at the square of a Reynolds number, at least 0; outside the table computed. */
    static double coefficientTimesReynolds(double reynoldsSquare) {
        long bits = Double.doubleToRawLongBits(reynoldsSquare);
        int cell = (int) ((bits >>> REST_BITS) - FIRST);
        if (cell < 0 || cell >= PRODUCTS.length - 1) {
            return exact(Math.max(LOWEST, reynoldsSquare));
        }
        double share = (bits & ((1L << REST_BITS) - 1)) * (1.0 / (1L << REST_BITS));
        return PRODUCTS[cell] + share * (PRODUCTS[cell + 1] - PRODUCTS[cell]);
    }

    private static double exact(double reynoldsSquare) {
        double reynolds = Math.sqrt(reynoldsSquare);
        return reynolds * SphereDrag.coefficient(Math.min(SphereDrag.HIGHEST_REYNOLDS, reynolds));
    }
}
