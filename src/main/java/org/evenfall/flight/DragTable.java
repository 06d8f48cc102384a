package org.evenfall.flight;

/**
 * How long the drag of {@link SphereDrag} takes, 1 / (coefficient × Reynolds number) over the square of that, tabled once
 * so that a flight costs neither logarithm nor root nor division a stage: for each piece of the correlation 32 cubics an octave, found by the binary
 * exponent, each through four points of the piece. Within 1e-8 relative of the correlation.
 */
final class DragTable {

    private static final int CELL_BITS = 5;
    private static final int CELLS = 1 << CELL_BITS;
    private static final int BIAS = 1023 << CELL_BITS;

    /** Cells beyond either end of a piece, for the stages of a step that ends on a joint. */
    private static final int BEYOND = 6;

    // Chebyshev points of a cell, through which its cubic goes
    private static final double[] POINTS = points();
    private static final int[] FIRST = new int[SphereDrag.PIECES];
    private static final double[][] CUBICS = cubics();

    private DragTable() {}

    /**
     * 1 / (drag coefficient × Reynolds number) by one piece of the correlation; far beyond its ends by the correlation as a
     * whole.
     */
    static double clock(int piece, double reynoldsSquare) {
        long bits = Double.doubleToRawLongBits(reynoldsSquare);
        int at = 4 * ((int) (bits >>> (52 - CELL_BITS)) - FIRST[piece]);
        double[] cubics = CUBICS[piece];
        if (at < 0 || at >= cubics.length) {
            double reynolds = Math.sqrt(Math.max(Double.MIN_NORMAL, reynoldsSquare));
            return 1 / (reynolds * SphereDrag.coefficient(Math.min(SphereDrag.HIGHEST_REYNOLDS, reynolds)));
        }
        double t = (bits & ((1L << (52 - CELL_BITS)) - 1)) * 0x1p-47;
        return cubics[at] + t * (cubics[at + 1] + t * (cubics[at + 2] + t * cubics[at + 3]));
    }

    private static double[] points() {
        double[] points = new double[4];
        for (int i = 0; i < 4; i++) {
            points[i] = 0.5 - 0.5 * Math.cos(Math.PI * (2 * i + 1) / 8);
        }
        return points;
    }

    private static double[][] cubics() {
        double[][] all = new double[SphereDrag.PIECES][];
        for (int piece = 0; piece < all.length; piece++) {
            double low = Math.max(1e-3, SphereDrag.lowest(piece));
            double high = Math.min(SphereDrag.HIGHEST_REYNOLDS, SphereDrag.highest(piece));
            int first = cell(low * low) - BEYOND;
            int last = cell(high * high) + BEYOND;
            double[] cubics = new double[4 * (last - first + 1)];
            for (int cell = first; cell <= last; cell++) {
                cubic(piece, start(cell), start(cell + 1), cubics, 4 * (cell - first));
            }
            FIRST[piece] = first;
            all[piece] = cubics;
        }
        return all;
    }

    private static int cell(double reynoldsSquare) {
        return (int) (Double.doubleToRawLongBits(reynoldsSquare) >>> (52 - CELL_BITS));
    }

    private static double start(int cell) {
        return Math.scalb(1 + (cell % CELLS) / (double) CELLS, (cell - BIAS) >> CELL_BITS);
    }

    /** Newton's divided differences through the four points, then the powers of t. */
    private static void cubic(int piece, double from, double to, double[] into, int at) {
        double[] d = new double[4];
        for (int i = 0; i < 4; i++) {
            double reynolds = Math.sqrt(from + (to - from) * POINTS[i]);
            d[i] = 1 / (reynolds * SphereDrag.coefficient(piece, reynolds));
        }
        for (int order = 1; order < 4; order++) {
            for (int i = 3; i >= order; i--) {
                d[i] = (d[i] - d[i - 1]) / (POINTS[i] - POINTS[i - order]);
            }
        }
        double[] power = {d[3], 0, 0, 0};
        for (int i = 2; i >= 0; i--) {
            for (int j = 3; j > 0; j--) {
                power[j] = power[j - 1] - POINTS[i] * power[j];
            }
            power[0] = d[i] - POINTS[i] * power[0];
        }
        System.arraycopy(power, 0, into, at, 4);
    }
}
