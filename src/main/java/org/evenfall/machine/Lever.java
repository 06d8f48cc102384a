package org.evenfall.machine;

/**
 * One lever of the machine, in the owner's words.
 *
 * @param label the owner's label
 * @param unit unit or scale, may be empty
 * @param lowest lowest setting
 * @param highest highest setting, above the lowest
 * @param step smallest step, above 0
 * @param widerWhen which way throws wider
 */
public record Lever(String label, String unit, double lowest, double highest, double step, Widening widerWhen) {

    private static final double TOLERANCE = 1e-6;

    public Lever {
        if (!(step > 0) || !(highest > lowest)) {
            throw new IllegalArgumentException(label + ": step must be above 0 and lowest below highest: " + lowest
                    + ", " + highest + ", " + step);
        }
    }

    /** Sign of one step up the scale on the throw: 1 wider, −1 narrower, 0 not known. */
    public int widerSign() {
        return switch (widerWhen) {
            case HIGHER -> 1;
            case LOWER -> -1;
            case UNKNOWN, UNANSWERED -> 0;
        };
    }

    public boolean reaches(double setting) {
        return setting >= lowest - TOLERANCE * step && setting <= highest + TOLERANCE * step;
    }

    /** Whole steps that are left up the scale from a setting within the limits. */
    public int stepsUp(double setting) {
        return Math.max(0, (int) Math.floor((highest - setting) / step + TOLERANCE));
    }

    /** Whole steps that are left down the scale. */
    public int stepsDown(double setting) {
        return Math.max(0, (int) Math.floor((setting - lowest) / step + TOLERANCE));
    }

    /** So many steps up (positive) or down from a setting, never past an end stop. */
    public double moved(double setting, int steps) {
        int allowed = Math.max(-stepsDown(setting), Math.min(stepsUp(setting), steps));
        return setting + allowed * step;
    }
}
