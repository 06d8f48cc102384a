package org.evenfall.trays;

/** When a figure is beyond its noise: one rule for shapes and for contrasts. */
final class Significance {

    /** Standard errors that a figure must be above; Common practice: two, about 95 %. */
    private static final double SIGNIFICANT_ERRORS = 2;

    private Significance() {}

    /** Whether the size of a figure is above twice its standard error, both in the same unit. */
    static boolean of(double figure, double standardError) {
        return Math.abs(figure) > SIGNIFICANT_ERRORS * standardError;
    }
}
