package org.evenfall.machine;

/**
 * One lever of the machine, under the owner's label.
 *
 * @param label the owner's label
 * @param unit unit or scale, may be empty
 * @param lowest lowest setting
 * @param highest highest setting, above the lowest
 * @param step smallest step, above 0
 * @param widerWhen which way it throws wider
 */
public record Lever(String label, String unit, double lowest, double highest, double step, Widening widerWhen) {

    /** How far a step turns the fan of granules towards wider, median over machines, degrees. Assumption. */
    public static final double USUAL_STEP_DEG = 2;

    /** Rounding of a setting that does not count, share of a step. */
    private static final double TOLERANCE = 1e-6;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException unless the step is above 0 and lowest below highest
     */
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

    /** Whether a setting is within the end stops, rounding apart. */
    public boolean reaches(double setting) {
        return setting >= lowest - TOLERANCE * step && setting <= highest + TOLERANCE * step;
    }

    /** Whole steps from a setting up to the upper end stop; 0 beyond it. */
    public int stepsUp(double setting) {
        return Math.max(0, (int) Math.floor((highest - setting) / step + TOLERANCE));
    }

    /** Whole steps from a setting down to the lower end stop; 0 beyond it. */
    public int stepsDown(double setting) {
        return Math.max(0, (int) Math.floor((setting - lowest) / step + TOLERANCE));
    }

    /** The setting a number of steps up (positive) or down, limited by the end stops. */
    public double moved(double setting, int steps) {
        int allowed = Math.max(-stepsDown(setting), Math.min(stepsUp(setting), steps));
        return setting + allowed * step;
    }
}
