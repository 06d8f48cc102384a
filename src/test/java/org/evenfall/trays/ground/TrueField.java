package org.evenfall.trays.ground;

import java.util.function.DoubleUnaryOperator;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.trays.Tramlines;

/** What all passes together give, on a fine even grid over one whole repeat of the field, its mean 1. */
final class TrueField {

    private static final int CELLS_A_WIDTH = 240;
    private static final int PARTS_OF_A_TRAY = 5;

    private final double widthM;
    private final double[] amounts;

    private TrueField(double widthM, double[] amounts) {
        this.widthM = widthM;
        this.amounts = amounts;
        double sum = 0;
        for (double amount : amounts) {
            sum += amount;
        }
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] *= amounts.length / sum;
        }
    }

    /** A field given as a function of the place, m from a tramline that is driven forth; repeats after two widths. */
    static TrueField of(Tramlines tramlines, DoubleUnaryOperator amount) {
        double[] amounts = new double[2 * CELLS_A_WIDTH];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = Math.max(0, amount.applyAsDouble(tramlines.widthM() * i / CELLS_A_WIDTH));
        }
        return new TrueField(tramlines.widthM(), amounts);
    }

    /**
     * The sum of passes.
     *
     * @param forth what a pass gives
     * @param back what a pass the other way gives, as the machine sees it; the same but for the wind
     */
    static TrueField of(Tramlines tramlines, SpreadPattern forth, SpreadPattern back) {
        double width = tramlines.widthM();
        boolean turned = tramlines.pattern() != DrivingPattern.ROUND_AND_ROUND;
        double reach = Math.max(Math.abs(forth.leftmostM()), Math.abs(forth.rightmostM()));
        double[] amounts = new double[(turned ? 2 : 1) * CELLS_A_WIDTH];
        for (int i = 0; i < amounts.length; i++) {
            double x = width * i / CELLS_A_WIDTH;
            int last = (int) Math.floor((x + reach) / width);
            for (int k = (int) Math.ceil((x - reach) / width); k <= last; k++) {
                double from = x - k * width;
                amounts[i] += turned && k % 2 != 0 ? back.at(-from) : forth.at(from);
            }
        }
        return new TrueField(width, amounts);
    }

    /** True variation of the whole field, %. */
    double cvPercent() {
        double squares = 0;
        for (double amount : amounts) {
            squares += (amount - 1) * (amount - 1);
        }
        return 100 * Math.sqrt(squares / amounts.length);
    }

    /** Mean amount over a tray, m from the tramline. */
    double overTray(double middleM) {
        double sum = 0;
        for (int i = 0; i < PARTS_OF_A_TRAY; i++) {
            sum += at(middleM + Job.TRAY_M * ((i + 0.5) / PARTS_OF_A_TRAY - 0.5));
        }
        return sum / PARTS_OF_A_TRAY;
    }

    /** Mean amount over each tray of a job. */
    double[] overTrays(Job job) {
        return job.layout().positionsM().stream().mapToDouble(this::overTray).toArray();
    }

    private double at(double xM) {
        double cell = xM / widthM * CELLS_A_WIDTH;
        int below = (int) Math.floor(cell);
        double share = cell - below;
        double one = amounts[Math.floorMod(below, amounts.length)];
        return one + share * (amounts[Math.floorMod(below + 1, amounts.length)] - one);
    }
}
