package org.evenfall.trays.ground;

/** Outlines that patterns measured with many trays look like; from the middle (0) to the edge (1), straight between knots. */
enum MeasuredShape {
    TRIANGLE(1, 0.8, 0.6, 0.4, 0.2, 0),
    TRAPEZOID(1, 1, 0.95, 0.6, 0.25, 0),
    FLAT_TOPPED(1, 1, 1, 1, 0.5, 0),
    M_SHAPED(0.75, 0.95, 1.05, 0.7, 0.25, 0),
    W_SHAPED(1.1, 0.8, 0.9, 0.75, 0.3, 0);

    private final double[] knots;

    MeasuredShape(double... knots) {
        this.knots = knots;
    }

    /** Amount at a distance from the middle over the reach, at least 0. */
    double at(double share) {
        double place = share * (knots.length - 1);
        int i = (int) place;
        return i >= knots.length - 1 ? 0 : knots[i] + (place - i) * (knots[i + 1] - knots[i]);
    }
}
