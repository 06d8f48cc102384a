package org.evenfall.trays;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.Overlap;
import org.evenfall.flight.SpreadPattern;
import org.evenfall.flight.WidthScan;
import org.jspecify.annotations.Nullable;

/**
 * The long test: one pass over a line of trays from edge to edge, laid over itself by arithmetic for any working width.
 * Passes laid by arithmetic are a model of passes driven: wind, drift between passes and a wandering tramline are not in it.
 * Lengths in whatever unit the positions have, amounts in whatever unit they were read.
 *
 * @param width working width
 * @param positions places over one repeat of the field: one working width round and round, two back and forth
 * @param overlapped amount at each with passes beside it
 * @param mean mean of them
 * @param cvPercent their coefficient of variation, n − 1, %; null where nothing lies
 * @param halfRateWidth twice the distance at which the rate is half the middle's (Ohio State B-817, seen); null where it
 *     never falls to that
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

    /** Trays of a line: fewest that mean anything by arithmetic, usual fewest, most. */
    public static final int FEWEST = 3;

    public static final int USUAL_FEWEST = 9;
    public static final int MOST = 99;

    /** Above this the line ends inside the pattern, % of the largest catch. Ours. */
    public static final double EDGE_PERCENT = 5;

    public OverlapResult {
        positions = List.copyOf(positions);
        overlapped = List.copyOf(overlapped);
    }

    /** @param width working width, above 0 */
    public static OverlapResult of(SpreadPattern line, DrivingPattern driving, double width) {
        Overlap overlap = new Overlap(line, driving);
        List<Double> places = overlap.placesM(width);
        List<Double> amounts = overlap.at(width, places);
        double mean =
                amounts.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double all = line.area();
        double left = line.area(line.leftmostM(), Math.max(line.leftmostM(), 0));
        double right = line.area(Math.min(0, line.rightmostM()), line.rightmostM());
        double most = line.amounts().stream().max(Double::compare).orElseThrow();
        return new OverlapResult(
                width,
                places,
                amounts,
                mean,
                mean > 0 ? Double.valueOf(UniformityCalculator.cvPercent(amounts)) : null,
                halfRateWidth(line),
                all > 0 ? 100 * (left - right) / all : 0,
                most > 0 ? 100 * Math.max(line.amount(0), line.amount(line.size() - 1)) / most : 0);
    }

    /** Every working width this line holds even. */
    public static WidthScan scan(SpreadPattern line, DrivingPattern driving) {
        return WidthScan.of(line, driving);
    }

    /** Both sides folded together; where the folded rate first falls to half of the middle's and stays below. */
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
            double there = folded(line, inner) - middle / 2;
            if (there >= 0 && middle > 0) {
                double beyond = folded(line, outer) - middle / 2;
                double share = there - beyond > 0 ? there / (there - beyond) : 0;
                return beyond > 0 ? null : Double.valueOf(2 * (inner + share * (outer - inner)));
            }
        }
        return null;
    }

    private static double folded(SpreadPattern line, double distance) {
        return (line.at(distance) + line.at(-distance)) / 2;
    }
}
