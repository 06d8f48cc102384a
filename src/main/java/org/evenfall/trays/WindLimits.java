package org.evenfall.trays;

/**
 * Limits for the wind at the test place.
 *
 * @param noteMPerS above this a note, m/s, at least 0
 * @param warnMPerS above this a warning, m/s, at least the note's
 * @param stopMPerS above this no test, m/s, at least the warning's
 */
public record WindLimits(double noteMPerS, double warnMPerS, double stopMPerS) {

    /**
     * Limits where the owner states none: 2, 3 and 4 m/s. Assumption: between those of the sources, which differ: 8 km/h in
     * a farm magazine, Beaufort 3 in another, 15 km/h in a national certification scheme.
     */
    public static final WindLimits USUAL = new WindLimits(2, 3, 4);

    /** How strong a wind is against the limits. */
    public enum Strength {
        /** At most the limit of a note. */
        CALM,
        /** Above the limit of a note. */
        NOTE,
        /** Above the limit of a warning. */
        WARN,
        /** Above the highest limit: no test. */
        STOP
    }

    /** @throws IllegalArgumentException for limits that are negative or fall */
    public WindLimits {
        if (!(0 <= noteMPerS && noteMPerS <= warnMPerS && warnMPerS <= stopMPerS)) {
            throw new IllegalArgumentException(
                    "limits must be at least 0 and must not fall: " + noteMPerS + ", " + warnMPerS + ", " + stopMPerS);
        }
    }

    /** How strong a wind is; a wind at a limit is not above it. */
    public Strength classify(double windMPerS) {
        if (windMPerS > stopMPerS) {
            return Strength.STOP;
        }
        if (windMPerS > warnMPerS) {
            return Strength.WARN;
        }
        return windMPerS > noteMPerS ? Strength.NOTE : Strength.CALM;
    }
}
