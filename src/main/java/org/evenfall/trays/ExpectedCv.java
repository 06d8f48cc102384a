package org.evenfall.trays;

import org.evenfall.quantity.Interval;

/**
 * CV expected after a move.
 *
 * @param percent expected CV, %, at least 0
 * @param intervalPercent its 90 % interval, which contains it, %
 */
public record ExpectedCv(double percent, Interval intervalPercent) {

    /** @throws IllegalArgumentException when the interval does not contain the expected CV, or this is negative */
    public ExpectedCv {
        if (!(percent >= 0) || !intervalPercent.contains(percent)) {
            throw new IllegalArgumentException(
                    "percent must be at least 0 and in its interval: " + percent + ", " + intervalPercent);
        }
    }
}
