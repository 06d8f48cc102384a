package org.evenfall.reference;

import org.jspecify.annotations.Nullable;

/** The rules by which a difference becomes a verdict. Ours; the tray test decides in the end. */
public final class Verdicts {

    /** Up to this difference in throw the settings hold, %. */
    public static final double HOLD_PERCENT = 3;

    /** Up to this they hold as a start, %. */
    public static final double START_PERCENT = 10;

    /** From this difference on, which way to go is said, %. */
    public static final double DIRECTION_PERCENT = 1.5;

    /** Up to this difference in the spread index the settings hold, points. */
    public static final double HOLD_SPREAD_POINTS = 6;

    private Verdicts() {}

    /**
     * @param throwPercent new product less reference, %
     * @param intervalHalfPercent half the 90 % interval of it, %
     * @param spreadPoints difference in spread index, points, null where a size is not known
     */
    static Verdict of(
            double throwPercent, double intervalHalfPercent, @Nullable Double spreadPoints, boolean sameWidth) {
        if (!sameWidth || Math.abs(throwPercent) > START_PERCENT) {
            return Verdict.FIRST_GUESS_ONLY;
        }
        boolean close = Math.abs(throwPercent) <= HOLD_PERCENT
                && Math.abs(throwPercent) + intervalHalfPercent <= START_PERCENT
                && spreadPoints != null
                && Math.abs(spreadPoints) <= HOLD_SPREAD_POINTS;
        return close ? Verdict.HOLD : Verdict.HOLD_AS_START;
    }

    static Direction direction(double throwPercent) {
        if (throwPercent < -DIRECTION_PERCENT) {
            return Direction.WIDER;
        }
        return throwPercent > DIRECTION_PERCENT ? Direction.NARROWER : Direction.AS_IT_IS;
    }
}
