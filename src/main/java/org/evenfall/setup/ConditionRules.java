package org.evenfall.setup;

import java.util.Locale;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.machine.MachineCheck;
import org.evenfall.trays.Tramlines;
import org.jspecify.annotations.Nullable;

/**
 * How far a condition may change before a measurement proves nothing, in one place.
 *
 * <ul>
 *   <li>Width and driving pattern decide which passes overlap: the same, to the rounding of a unit.
 *   <li>Product and delivery decide how far granules fly: the same, or measured again and alike.
 *   <li>A part that was worn or replaced changes the pattern: none since the test.
 *   <li>The opening decides the flow, and the pattern changes with the flow: within {@link #FLOW_PERCENT}.
 *   <li>The PTO speed is the speed of the discs: within {@link MachineCheck#WORST_PTO_PERCENT}.
 *   <li>Rate, forward speed and height change the pattern slowly: within {@link #RATE_PERCENT}, {@link #SPEED_PERCENT} and
 *       {@link #HEIGHT_M}.
 * </ul>
 *
 * <p>Assumption: all limits but the flow's, which is the usual tolerance of a rate (source in {@link RateAssessor}).
 */
final class ConditionRules {

    /** Widths nearer than this are the same width typed in another unit, m. */
    static final double SAME_WIDTH_M = 0.1;

    /** Change of the flow that another opening may bring, %. */
    private static final double FLOW_PERCENT = 5;

    /** Change of the product rate, %. */
    static final double RATE_PERCENT = 10;

    /** Change of the forward speed, %. */
    static final double SPEED_PERCENT = 10;

    /** Change of the height over the place where the granules land, m. */
    static final double HEIGHT_M = 0.10;

    /** Rounding room in which a difference still counts as within its limit. */
    private static final double ROUNDING = 1e-9;

    private ConditionRules() {}

    /** Whether tests at two widths and driving patterns are about the same field. */
    static boolean sameTramlines(Tramlines one, Tramlines other) {
        return sameWidth(one, other) && sameDriving(one, other);
    }

    static boolean sameWidth(Tramlines one, Tramlines other) {
        return Math.abs(one.widthM() - other.widthM()) <= SAME_WIDTH_M + ROUNDING;
    }

    /** Unanswered counts as back and forth. */
    static boolean sameDriving(Tramlines one, Tramlines other) {
        return (one.pattern() == DrivingPattern.ROUND_AND_ROUND) == (other.pattern() == DrivingPattern.ROUND_AND_ROUND);
    }

    /** Whether two names are the same, however they are spaced and in capitals or not. */
    static boolean sameName(String one, String other) {
        return plain(one).equals(plain(other));
    }

    /** A name without capitals and needless blanks. */
    static String plain(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /**
     * Whether another opening changes the flow too little to matter.
     *
     * @param changePercent change of the flow without its sign, %
     */
    static boolean sameFlow(double changePercent) {
        return changePercent <= FLOW_PERCENT + ROUNDING;
    }

    /** Whether a number is within some per cent of another; true while one of them is not known. */
    static boolean withinPercent(@Nullable Double then, @Nullable Double now, double percent) {
        return then == null || now == null || Math.abs(then - now) <= percent / 100 * Math.abs(now) + ROUNDING;
    }

    /** Whether two PTO speeds are the same within the limit of the machine check. */
    static boolean samePto(@Nullable Double then, @Nullable Double now) {
        return withinPercent(then, now, MachineCheck.WORST_PTO_PERCENT);
    }

    /** Whether two heights are the same within the limit. */
    static boolean sameHeight(@Nullable Double thenM, @Nullable Double nowM) {
        return thenM == null || nowM == null || Math.abs(thenM - nowM) <= HEIGHT_M + ROUNDING;
    }
}
