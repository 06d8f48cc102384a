package org.evenfall.trays;

/**
 * Wind at the test place. Sources differ: 8 km/h in a farm magazine, Beaufort 3 in another, 15 km/h in a national
 * certification scheme; these lie between, and the owner may choose others.
 *
 * @param noteMPerS above this a note
 * @param warnMPerS above this a warning
 * @param stopMPerS above this no test
 */
public record WindLimits(double noteMPerS, double warnMPerS, double stopMPerS) {

    public static final WindLimits USUAL = new WindLimits(2, 3, 4);

    /** What the gate says. */
    public enum Answer {
        CALM,
        NOTE,
        WARN,
        STOP
    }

    public WindLimits {
        if (!(noteMPerS <= warnMPerS && warnMPerS <= stopMPerS)) {
            throw new IllegalArgumentException("limits must rise");
        }
    }

    public Answer classify(double windMPerS) {
        if (windMPerS > stopMPerS) {
            return Answer.STOP;
        }
        if (windMPerS > warnMPerS) {
            return Answer.WARN;
        }
        return windMPerS > noteMPerS ? Answer.NOTE : Answer.CALM;
    }
}
