package org.evenfall.setup.path;

import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;

/** Ranges that depend on another answer or on the unit that was typed. */
final class RangeRules {

    /** A sieve class as mass, percent or height of a column, as the answer says; percent while it is not answered. */
    static final RangeChoice SIEVE_AMOUNT =
            RangeChoice.byAnswer(setup -> switch (setup.product().sieveAmounts()) {
                case MASS -> Ranges.SIEVE_MASS;
                case HEIGHT -> Ranges.SIEVE_HEIGHT;
                case PERCENT, VOLUME, UNANSWERED -> Ranges.SIEVE_SHARE;
            });

    /** A catch as mass, volume or height in a tube, as the answer says; mass while it is not answered. */
    static final RangeChoice CATCH =
            RangeChoice.byAnswer(setup -> ofCatch(setup.trays().catchKind()));

    /** A catch of a single pass; an empty tray at the ends of the line is usual. */
    static final RangeChoice LINE_CATCH = RangeChoice.byAnswer(setup -> {
        Range range = ofCatch(setup.trays().catchKind());
        return range.usually(0, range.usual().high());
    });

    /** Nitrogen as mass, or in fertiliser units whose basis is asked. */
    static final RangeChoice NITROGEN_RATE = RangeChoice.byUnit(Ranges.NITROGEN_RATE, Ranges.NITROGEN_UNITS);

    /** The smallest step of a scale, a cylinder or a tube, by the unit that was typed. */
    static final RangeChoice READING_STEP =
            RangeChoice.byUnit(Ranges.READING_STEP_MASS, Ranges.READING_STEP_VOLUME, Ranges.READING_STEP_HEIGHT);

    /** An opening, or the factor of a terminal where the rate is set by one. */
    static final RangeChoice OPENING = RangeChoice.byAnswer(setup -> byFactor(setup) ? Ranges.FACTOR : Ranges.OPENING);

    private RangeRules() {}

    /** Whether the rate is set by a factor, so that an opening is one. */
    static boolean byFactor(Setup setup) {
        return setup.machine().rateSetting().byFactor();
    }

    private static Range ofCatch(AmountKind kind) {
        return switch (kind) {
            case VOLUME -> Ranges.CATCH_VOLUME;
            case HEIGHT -> Ranges.CATCH_HEIGHT;
            case MASS, PERCENT, UNANSWERED -> Ranges.CATCH_MASS;
        };
    }
}
