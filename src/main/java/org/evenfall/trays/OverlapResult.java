package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.Overlap;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.WidthScan;
import org.jspecify.annotations.Nullable;

/**
 * The long test: one pass over a line of trays from edge to edge, overlapped with itself by arithmetic for any working
 * width. That is a model of driven passes: wind, drift between passes and a wandering tramline are not in it. Lengths are in
 * the unit of the positions, amounts in the unit they were read in.
 *
 * @param width working width
 * @param positions places over one repeat of the field: one working width round and round, two back and forth
 * @param overlapped amount at each with all passes
 * @param mean mean of them
 * @param cvPercent their coefficient of variation, n − 1, %; null where there is nothing
 * @param halfRateWidth twice the distance at which the rate is half the middle's; null where it never falls to that. Source:
 *     Ohio State University, bulletin B-817
 * @param leftRightPercent left half less right half, % of all
 * @param edgePercent the larger of the outermost two trays, % of the largest: the line should reach where nothing falls
 */
public record OverlapResult(
        double width,
        List<Double> positions,
        List<Double> overlapped,
        double mean,
        @Nullable Double cvPercent,
        @Nullable Double halfRateWidth,
        double leftRightPercent,
        double edgePercent) {

    /** Fewest trays of a line that have a shape at all. */
    public static final int FEWEST = 3;

    /** Assumption: with fewer trays the line misses detail. */
    public static final int USUAL_FEWEST = 9;

    /** Assumption: more nobody puts out. */
    public static final int MOST = 99;

    /** Assumption: above this the line ends inside the pattern, % of the largest catch. */
    public static final double EDGE_PERCENT = 5;

    /** Copies the lists. */
    public OverlapResult {
        positions = List.copyOf(positions);
        overlapped = List.copyOf(overlapped);
    }

    /**
     * One pass overlapped with itself at a working width.
     *
     * @param width working width, above 0
     */
    public static OverlapResult of(SpreadPattern line, DrivingPattern driving, double width) {
        Overlap overlap = new Overlap(line, driving);
        List<Double> positions = overlap.placesM(width);
        List<Double> amounts = overlap.at(width, positions);
        double mean =
                amounts.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double all = line.area();
        double left = line.area(line.leftmostM(), Math.max(line.leftmostM(), 0));
        double right = line.area(Math.min(0, line.rightmostM()), line.rightmostM());
        double most = line.amounts().stream().max(Double::compare).orElseThrow();
        return new OverlapResult(
                width,
                positions,
                amounts,
                mean,
                mean > 0 ? Double.valueOf(UniformityCalculator.cvPercent(amounts)) : null,
                halfRateWidth(line),
                all > 0 ? 100 * (left - right) / all : 0,
                most > 0 ? 100 * Math.max(line.amount(0), line.amount(line.size() - 1)) / most : 0);
    }

    /** Every working width at which this line is good or acceptable. */
    public static WidthScan scan(SpreadPattern line, DrivingPattern driving) {
        return WidthScan.of(line, driving, List.of(CvLimits.GOOD_PERCENT, CvLimits.FIELD_PERCENT));
    }

    /** Where the mean of both sides falls to half of the middle's rate and stays below, counted from outside. */
    private static @Nullable Double halfRateWidth(SpreadPattern line) {
        double middle = line.at(0);
        List<Double> distances = new ArrayList<>();
        for (double x : line.positionsM()) {
            distances.add(Math.abs(x));
        }
        distances.sort(Double::compare);
        for (int i = distances.size() - 1; i > 0; i--) {
            double outer = distances.get(i);
            double inner = distances.get(i - 1);
            double innerExcess = meanOfSides(line, inner) - middle / 2;
            if (innerExcess >= 0 && middle > 0) {
                double outerExcess = meanOfSides(line, outer) - middle / 2;
                double share = innerExcess - outerExcess > 0 ? innerExcess / (innerExcess - outerExcess) : 0;
                return outerExcess > 0 ? null : Double.valueOf(2 * (inner + share * (outer - inner)));
            }
        }
        return null;
    }

    private static double meanOfSides(SpreadPattern line, double distance) {
        return (line.at(distance) + line.at(-distance)) / 2;
    }
}
