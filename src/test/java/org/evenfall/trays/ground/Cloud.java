package org.evenfall.trays.ground;

import org.evenfall.flight.SpreadPattern;

/** Granules landed across the travel, counted in cells of a quarter metre and smoothed over about a metre. */
final class Cloud {

    private static final double CELL_M = 0.25;
    private static final double REACH_M = 60;
    private static final int CELLS = (int) (2 * REACH_M / CELL_M) + 1;

    private double[] amounts = new double[CELLS];

    /** Adds an amount at a place, m; beyond 60 m it is lost. */
    void add(double xM, double amount) {
        double cell = (xM + REACH_M) / CELL_M;
        int below = (int) Math.floor(cell);
        if (below >= 0 && below < CELLS - 1) {
            amounts[below] += amount * (1 - cell + below);
            amounts[below + 1] += amount * (cell - below);
        }
    }

    SpreadPattern pattern() {
        smooth();
        smooth();
        double[] places = new double[CELLS];
        for (int i = 0; i < CELLS; i++) {
            places[i] = i * CELL_M - REACH_M;
        }
        return new SpreadPattern(places, amounts);
    }

    private void smooth() {
        double[] smoothed = new double[CELLS];
        for (int i = 1; i < CELLS - 1; i++) {
            smoothed[i] = (amounts[i - 1] + amounts[i] + amounts[i + 1]) / 3;
        }
        amounts = smoothed;
    }
}
