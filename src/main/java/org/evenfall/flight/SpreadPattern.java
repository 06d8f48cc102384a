package org.evenfall.flight;

import java.util.Arrays;
import java.util.List;

/**
 * What one pass gives across the travel: amounts at rising positions, straight lines between them, nothing beyond the
 * outermost. From the landing model or from a line of trays. Immutable.
 */
public final class SpreadPattern {

    private final double[] positionsM;
    private final double[] amounts;

    /**
     * A pattern; the arrays are copied.
     *
     * @param positionsM across the travel, m, rising, negative left of the pass
     * @param amounts amount at each, any one unit, at least 0, as many as positions and at least two
     * @throws IllegalArgumentException when the numbers differ or are below two, positions do not rise or an amount is below
     *     0 or NaN
     */
    public SpreadPattern(double[] positionsM, double[] amounts) {
        if (positionsM.length != amounts.length || positionsM.length < 2) {
            throw new IllegalArgumentException(
                    "need as many amounts as positions and two at least: " + positionsM.length + ", " + amounts.length);
        }
        for (int i = 0; i < amounts.length; i++) {
            if (!(amounts[i] >= 0) || (i > 0 && !(positionsM[i] > positionsM[i - 1]))) {
                throw new IllegalArgumentException("positions must rise and amounts be at least 0: at " + i + " "
                        + positionsM[i] + ", " + amounts[i]);
            }
        }
        this.positionsM = positionsM.clone();
        this.amounts = amounts.clone();
    }

    /** Number of positions. */
    public int size() {
        return amounts.length;
    }

    /** Position number i, m. */
    public double positionM(int i) {
        return positionsM[i];
    }

    /** Amount at position number i. */
    public double amount(int i) {
        return amounts[i];
    }

    /** All positions, m. */
    public List<Double> positionsM() {
        return Arrays.stream(positionsM).boxed().toList();
    }

    /** All amounts. */
    public List<Double> amounts() {
        return Arrays.stream(amounts).boxed().toList();
    }

    /** Leftmost position, m. */
    public double leftmostM() {
        return positionsM[0];
    }

    /** Rightmost position, m. */
    public double rightmostM() {
        return positionsM[positionsM.length - 1];
    }

    /** Amount at a place, m; 0 beyond the outermost position. */
    public double at(double xM) {
        int last = positionsM.length - 1;
        if (!(xM >= positionsM[0] && xM <= positionsM[last])) {
            return 0;
        }
        // right at the first guess on an even grid
        int i = (int) ((xM - positionsM[0]) / (positionsM[last] - positionsM[0]) * last);
        i = Math.max(0, Math.min(last - 1, i));
        while (i > 0 && positionsM[i] > xM) {
            i--;
        }
        while (i < last - 1 && positionsM[i + 1] < xM) {
            i++;
        }
        double t = (xM - positionsM[i]) / (positionsM[i + 1] - positionsM[i]);
        return amounts[i] + t * (amounts[i + 1] - amounts[i]);
    }

    /** Area under the pattern between two places, amount × m; 0 where the second is not right of the first. */
    public double area(double fromM, double toM) {
        double sum = 0;
        for (int i = 0; i + 1 < positionsM.length; i++) {
            double from = Math.max(fromM, positionsM[i]);
            double to = Math.min(toM, positionsM[i + 1]);
            if (to > from) {
                sum += (to - from) * (at(from) + at(to)) / 2;
            }
        }
        return sum;
    }

    /** Area under the whole pattern, amount × m. */
    public double area() {
        return area(leftmostM(), rightmostM());
    }
}
