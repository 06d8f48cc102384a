package org.evenfall.trays.ground;

import org.evenfall.flight.ThrowConditions;

/**
 * A machine that exists only here: how its two levers answer is hidden from whoever tests it. Settings are whole steps up
 * the scale from the start.
 */
interface Machine {

    /** What is known of it. */
    Job job();

    /** What disc and product promise, as the owner types it. */
    ThrowConditions typed();

    /** What all passes together give, without the noise of the trays. */
    TrueField field(int first, int second, Fault fault);

    /** Mean distance across at which a granule lands, m, or a measure that rises with it: tells wider from narrower. */
    double meanThrowM(int first, int second);

    /** The good setting of the first lever, steps from the start. */
    int goodFirst();

    /** The good setting of the second lever. */
    int goodSecond();

    /** Whether somebody would set a machine so. */
    default boolean plausible() {
        return true;
    }

    /** Whether it is worth a loop: it can do 8 %, and its start is above 10 %. */
    default boolean worthALoop() {
        return field(goodFirst(), goodSecond(), Fault.NONE).cvPercent() <= 8
                && field(0, 0, Fault.NONE).cvPercent() > 10
                && plausible();
    }
}
