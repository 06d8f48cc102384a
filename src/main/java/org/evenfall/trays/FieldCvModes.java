package org.evenfall.trays;

import java.util.List;
import org.evenfall.flight.DrivingPattern;

/**
 * The shapes across the width that a field can be made of, each with mean 0 and mean square 1 over the period of the field,
 * at right angles to each other: the CV of the field is the root of the sum of their squared sizes over the mean level.
 * Driven back and forth the field mirrors at half the width on either side; driven round and round it repeats every width.
 */
final class FieldCvModes {

    /** Number of shapes without the mean level. Assumption: enough for structure of a twentieth of the width. */
    static final int COUNT = 40;

    private FieldCvModes() {}

    /** Harmonic of a shape, from 1; shapes come in pairs, one of the odd part and one of the even part. */
    static int harmonic(int mode) {
        return (mode + 1) / 2;
    }

    /** Whether a shape is the same left and right of the tramline. */
    static boolean even(int mode) {
        return mode % 2 == 0;
    }

    /**
     * The value of each shape at each tray.
     *
     * @return first index the tray; second index the shape, 0 (constant, 1) to {@link #COUNT}
     */
    static double[][] at(List<Double> positionsM, Tramlines tramlines) {
        double[][] shapes = new double[positionsM.size()][COUNT + 1];
        for (int tray = 0; tray < shapes.length; tray++) {
            for (int mode = 0; mode <= COUNT; mode++) {
                shapes[tray][mode] = value(mode, positionsM.get(tray) / tramlines.widthM(), tramlines.pattern());
            }
        }
        return shapes;
    }

    /** A shape at a place, given as a share of the width. */
    private static double value(int mode, double place, DrivingPattern pattern) {
        if (mode == 0) {
            return 1;
        }
        if (pattern != DrivingPattern.ROUND_AND_ROUND) {
            return Math.sqrt(2) * Math.cos(mode * Math.PI * (place + 0.5));
        }
        double turn = 2 * Math.PI * harmonic(mode) * place;
        return Math.sqrt(2) * (even(mode) ? Math.cos(turn) : Math.sin(turn));
    }
}
