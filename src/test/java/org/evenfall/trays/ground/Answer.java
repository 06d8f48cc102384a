package org.evenfall.trays.ground;

/**
 * How a lever answers: what its part has moved, against the good setting, as a bent line of the steps.
 *
 * @param good the good setting, steps from the start
 * @param perStep what one step moves near the good setting, signed, in the unit of the part
 * @param bend share by which each further step moves more or less
 */
record Answer(int good, double perStep, double bend) {

    static final int MOST_FIRST = 6;
    static final int MOST_SECOND = 2;

    /** A lever mis-set by up to a number of steps; reads three draws. */
    static Answer draw(Draws draws, int mostSteps, double lowPerStep, double highPerStep, int up) {
        return new Answer(
                draws.whole(-mostSteps, mostSteps),
                up * draws.between(lowPerStep, highPerStep),
                draws.between(-0.04, 0.04));
    }

    /** What the part has moved from the good setting. */
    double at(int steps) {
        double off = steps - good;
        return perStep * off * (1 + bend * off);
    }
}
