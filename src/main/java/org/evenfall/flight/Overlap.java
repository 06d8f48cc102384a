package org.evenfall.flight;

import java.util.ArrayList;
import java.util.List;

/**
 * Pass laid beside pass: what lies on the field when one pattern is driven at a working width. Driven back and forth every
 * second pass is turned round, so a side meets its own kind; round and round all go the same way, so opposite sides meet
 * (Fertilizer Australia, seen). Superposition; the sum over a working width is the sum of one pass.
 */
public final class Overlap {

    /** Places across a working width where a field is looked at closely. */
    public static final int CLOSE = 96;

    private final SpreadPattern pass;
    private final boolean turned;

    /** @param driving how the passes follow each other; taken as back and forth while unanswered */
    public Overlap(SpreadPattern pass, DrivingPattern driving) {
        this.pass = pass;
        this.turned = driving != DrivingPattern.ROUND_AND_ROUND;
    }

    /**
     * Amount at a place with passes at every whole multiple of the width.
     *
     * @param widthM working width, m, above 0
     * @param xM place, m, from the middle of a pass that goes forth
     */
    public double at(double widthM, double xM) {
        if (!(widthM > 0)) {
            throw new IllegalArgumentException("widthM must be above 0: " + widthM);
        }
        double reach = Math.max(Math.abs(pass.leftmostM()), Math.abs(pass.rightmostM()));
        int first = (int) Math.ceil((xM - reach) / widthM);
        int last = (int) Math.floor((xM + reach) / widthM);
        double sum = 0;
        for (int k = first; k <= last; k++) {
            double there = xM - k * widthM;
            sum += pass.at(turned && k % 2 != 0 ? -there : there);
        }
        return sum;
    }

    /** Amounts at places. */
    public List<Double> at(double widthM, List<Double> placesM) {
        return placesM.stream().map(x -> at(widthM, x)).toList();
    }

    /**
     * Places at which the positions of the pattern meet themselves, where their spacing divides the width; else as many
     * evenly spread. From the first position right of the middle over one whole repeat of the field: one working width
     * round and round, two back and forth. Their mean is what one pass lays on a working width.
     */
    public List<Double> placesM(double widthM) {
        double spacing = (pass.rightmostM() - pass.leftmostM()) / (pass.size() - 1);
        int places = (int) Math.max(2, Math.round(widthM / spacing));
        double step = widthM / places;
        double start = firstRight();
        List<Double> found = new ArrayList<>();
        for (int i = 0; i < (turned ? 2 : 1) * places; i++) {
            found.add(start + i * step);
        }
        return found;
    }

    private double firstRight() {
        for (int i = 0; i < pass.size(); i++) {
            if (pass.positionM(i) >= -1e-9) {
                return pass.positionM(i);
            }
        }
        return 0;
    }

    /** Places across one working width, {@value #CLOSE} of them, at the middle of even cells about the pass. */
    public static List<Double> closePlacesM(double widthM) {
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < CLOSE; i++) {
            places.add(widthM * ((i + 0.5) / CLOSE - 0.5));
        }
        return places;
    }

    /** Coefficient of variation looked at closely, n − 1, %; 0 catches nowhere: {@link Double#NaN}. */
    public double cvPercent(double widthM) {
        double sum = 0;
        double squares = 0;
        double[] values = new double[CLOSE];
        for (int i = 0; i < CLOSE; i++) {
            values[i] = at(widthM, widthM * ((i + 0.5) / CLOSE - 0.5));
            sum += values[i];
        }
        double mean = sum / CLOSE;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return mean > 0 ? 100 * Math.sqrt(squares / (CLOSE - 1)) / mean : Double.NaN;
    }
}
