package org.evenfall.flight;

import java.util.ArrayList;
import java.util.List;

/**
 * The field that one pattern gives at a working width: the sum of the patterns of all passes. Driven back and forth every
 * second pass is turned, so that a side meets its own kind; round and round all go the same way, so that opposite sides
 * meet. The sum over a working width is the sum of one pass.
 *
 * <p>Source: Fertilizer Australia, on back-and-forth and round-and-round spreading.
 */
public final class Overlap {

    /** Places across a working width at which the coefficient of variation is taken. */
    private static final int CV_PLACES = 96;

    /** Most passes to a side of a place that are summed up. Assumption: no line of trays reaches over as many. */
    private static final int MOST_PASSES = 100_000;

    /** A position this little left of the middle counts as the middle, m: rounding. */
    private static final double MIDDLE_M = 1e-9;

    private final SpreadPattern pass;
    private final boolean turned;

    /** @param driving how the passes follow each other; {@link DrivingPattern#UNANSWERED} counts as back and forth */
    public Overlap(SpreadPattern pass, DrivingPattern driving) {
        this.pass = pass;
        this.turned = driving != DrivingPattern.ROUND_AND_ROUND;
    }

    /**
     * Amount at a place with passes at every whole multiple of the width.
     *
     * @param widthM working width, m, above 0
     * @param xM place, m, from the middle of a pass that is not turned
     * @throws IllegalArgumentException when the width is not above 0, or so small that passes from afar would reach the place
     */
    public double at(double widthM, double xM) {
        Ranges.positive("widthM", widthM);
        double reach = Math.max(Math.abs(pass.leftmostM()), Math.abs(pass.rightmostM()));
        double firstPass = Math.ceil((xM - reach) / widthM);
        double lastPass = Math.floor((xM + reach) / widthM);
        if (!(Math.abs(firstPass) <= MOST_PASSES && Math.abs(lastPass) <= MOST_PASSES)) {
            throw new IllegalArgumentException(
                    "at most " + MOST_PASSES + " passes to a side: " + firstPass + " to " + lastPass);
        }
        int first = (int) firstPass;
        int last = (int) lastPass;
        double sum = 0;
        for (int k = first; k <= last; k++) {
            double fromPass = xM - k * widthM;
            sum += pass.at(turned && k % 2 != 0 ? -fromPass : fromPass);
        }
        return sum;
    }

    /** Amounts at places. */
    public List<Double> at(double widthM, List<Double> placesM) {
        return placesM.stream().map(x -> at(widthM, x)).toList();
    }

    /**
     * Places at which the positions of the pattern meet each other, where their spacing divides the width; else about as
     * many at even distances. From the first position right of the middle over one whole repeat of the field: one working
     * width round and round, two back and forth. Their mean is what one pass gives on a working width.
     *
     * @param widthM working width, m, above 0
     */
    public List<Double> placesM(double widthM) {
        double spacing = (pass.rightmostM() - pass.leftmostM()) / (pass.size() - 1);
        int perWidth = (int) Math.max(2, Math.round(widthM / spacing));
        double step = widthM / perWidth;
        double start = firstRightM();
        List<Double> places = new ArrayList<>();
        for (int i = 0; i < (turned ? 2 : 1) * perWidth; i++) {
            places.add(start + i * step);
        }
        return places;
    }

    private double firstRightM() {
        for (int i = 0; i < pass.size(); i++) {
            if (pass.positionM(i) >= -MIDDLE_M) {
                return pass.positionM(i);
            }
        }
        return 0;
    }

    /**
     * Coefficient of variation over one working width about a pass, %, from {@value #CV_PLACES} places in the middle of even
     * cells, with n − 1; {@link Double#NaN} where the pattern gives nothing.
     */
    public double cvPercent(double widthM) {
        double sum = 0;
        double squares = 0;
        double[] values = new double[CV_PLACES];
        for (int i = 0; i < CV_PLACES; i++) {
            values[i] = at(widthM, widthM * ((i + 0.5) / CV_PLACES - 0.5));
            sum += values[i];
        }
        double mean = sum / CV_PLACES;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return mean > 0 ? 100 * Math.sqrt(squares / (CV_PLACES - 1)) / mean : Double.NaN;
    }
}
