package org.evenfall.trays.proof;

import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.trays.Tramlines;

/**
 * What all passes together give: the sum of the patterns of passes at every width, every second one turned when driven back
 * and forth. On a fine even grid over the whole period of the field, its mean 1.
 */
final class Field {

    private static final int CELLS_A_WIDTH = 960;

    private final double[] amounts;
    private final double widthM;

    private Field(double[] amounts, double widthM) {
        this.amounts = amounts;
        this.widthM = widthM;
    }

    /** The field of a pattern. */
    static Field of(SpreadPattern pass, Tramlines tramlines) {
        boolean turned = tramlines.pattern() == DrivingPattern.BACK_AND_FORTH;
        double[] amounts = new double[(turned ? 2 : 1) * CELLS_A_WIDTH];
        double sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            double x = tramlines.widthM() * i / CELLS_A_WIDTH;
            for (int k = -3; k <= 5; k++) {
                double fromPass = x - k * tramlines.widthM();
                amounts[i] += pass.at(turned && k % 2 != 0 ? -fromPass : fromPass);
            }
            sum += amounts[i];
        }
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] *= amounts.length / sum;
        }
        return new Field(amounts, tramlines.widthM());
    }

    /** Variation over the whole period, %. */
    double cvPercent() {
        double squares = 0;
        for (double amount : amounts) {
            squares += (amount - 1) * (amount - 1);
        }
        return 100 * Math.sqrt(squares / amounts.length);
    }

    /** The same field with its differences from the mean times a factor, as if the rest of the product fell evenly. */
    Field times(double factor) {
        double[] scaled = new double[amounts.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = 1 + factor * (amounts[i] - 1);
        }
        return new Field(scaled, widthM);
    }

    /** Smallest amount. */
    double smallest() {
        double smallest = Double.MAX_VALUE;
        for (double amount : amounts) {
            smallest = Math.min(smallest, amount);
        }
        return smallest;
    }

    /** Mean amount over a tray, m from the tramline. */
    double overTray(double middleM, double acrossM) {
        double sum = 0;
        int parts = 8;
        for (int i = 0; i < parts; i++) {
            sum += at(middleM + acrossM * ((i + 0.5) / parts - 0.5));
        }
        return sum / parts;
    }

    private double at(double xM) {
        double cell = xM / widthM * CELLS_A_WIDTH;
        int below = (int) Math.floor(cell);
        double share = cell - below;
        double one = amounts[Math.floorMod(below, amounts.length)];
        double next = amounts[Math.floorMod(below + 1, amounts.length)];
        return one + share * (next - one);
    }
}
