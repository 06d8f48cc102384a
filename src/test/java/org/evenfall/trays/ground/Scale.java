package org.evenfall.trays.ground;

import java.util.Random;
import org.evenfall.machine.Lever;
import org.evenfall.machine.Widening;

/**
 * The scale of a lever.
 *
 * @param label its label
 * @param lowest lowest setting, in the unit of the scale
 * @param step smallest step, in the same unit
 * @param startSteps where it is before the first test, steps above the lowest
 * @param up sign of what a higher number does to the part that it moves, 1 or −1
 */
record Scale(String label, double lowest, double step, int startSteps, int up) {

    private static final int STEPS = 24;
    private static final double[] STEP_SIZES = {0.5, 1, 1, 2, 5};

    static Scale draw(Random random, String label) {
        return new Scale(
                label,
                random.nextInt(3) * 10,
                STEP_SIZES[random.nextInt(STEP_SIZES.length)],
                9 + random.nextInt(7),
                random.nextBoolean() ? 1 : -1);
    }

    /** The setting so many steps up from the start. */
    double setting(int steps) {
        return lowest + step * (startSteps + steps);
    }

    /** Steps up from the start. */
    int steps(double setting) {
        return (int) Math.round((setting - lowest) / step) - startSteps;
    }

    Lever lever(Widening widening) {
        return new Lever(label, "", lowest, lowest + STEPS * step, step, widening);
    }
}
