package org.evenfall.flight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The working widths at which one pattern gives an even field. They need not be one interval, so every interval is given.
 * Source: Fertilizer Australia.
 *
 * @param widths widths computed, in the unit of the pattern's positions, rising
 * @param cvPercent coefficient of variation at each, n − 1, %
 * @param intervals limit of the CV, %, to every interval in which it is at most that
 */
public record WidthScan(List<Double> widths, List<Double> cvPercent, Map<Double, List<Interval>> intervals) {

    /** Steps between the narrowest and the widest; an interval narrower than a step may be missed. */
    private static final int STEPS = 240;

    /** Narrowest width of a scan, share of the pattern's reach. Assumption: nobody drives narrower. */
    private static final double NARROWEST_SHARE = 1.0 / 8;

    /** Ends of intervals are found within this, in the unit of the positions. */
    private static final double END_TOLERANCE = 1e-9;

    private static final int MOST_EVALUATIONS = 200;

    /**
     * One interval of widths.
     *
     * @param from narrowest
     * @param to widest
     */
    public record Interval(double from, double to) {}

    /** Copies the lists. */
    public WidthScan {
        widths = List.copyOf(widths);
        cvPercent = List.copyOf(cvPercent);
        intervals = Map.copyOf(intervals);
    }

    /**
     * Every interval in which the CV is at most a limit.
     *
     * @throws IllegalArgumentException for a limit that was not scanned for
     */
    public List<Interval> atMost(double limitPercent) {
        List<Interval> found = intervals.get(limitPercent);
        if (found == null) {
            throw new IllegalArgumentException("limitPercent was not scanned for: " + limitPercent);
        }
        return found;
    }

    /**
     * Scans widths in even steps; at the ends of the intervals the limit still holds.
     *
     * @param narrowest above 0
     * @param widest above the narrowest
     * @throws IllegalArgumentException when the widths are not in this order
     * @param limitsPercent limits of the CV, %, above 0
     */
    public static WidthScan of(
            SpreadPattern pattern,
            DrivingPattern driving,
            double narrowest,
            double widest,
            List<Double> limitsPercent) {
        if (!(narrowest > 0 && widest > narrowest)) {
            throw new IllegalArgumentException("need 0 < narrowest < widest: " + narrowest + ", " + widest);
        }
        Overlap overlap = new Overlap(pattern, driving);
        List<Double> widths = new ArrayList<>();
        List<Double> cvs = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double width = narrowest + (widest - narrowest) * i / STEPS;
            widths.add(width);
            cvs.add(overlap.cvPercent(width));
        }
        Map<Double, List<Interval>> intervals = new LinkedHashMap<>();
        limitsPercent.forEach(limit -> intervals.put(limit, List.copyOf(intervals(overlap, widths, cvs, limit))));
        return new WidthScan(widths, cvs, intervals);
    }

    /** From an eighth of the pattern's reach to all of it, where neighbours cease to meet. */
    public static WidthScan of(SpreadPattern pattern, DrivingPattern driving, List<Double> limitsPercent) {
        double reach = pattern.rightmostM() - pattern.leftmostM();
        return of(pattern, driving, reach * NARROWEST_SHARE, reach, limitsPercent);
    }

    private static List<Interval> intervals(Overlap overlap, List<Double> widths, List<Double> cvs, double limit) {
        List<Interval> intervals = new ArrayList<>();
        double from = Double.NaN;
        for (int i = 0; i < widths.size(); i++) {
            boolean inside = cvs.get(i) <= limit;
            if (inside && Double.isNaN(from)) {
                from = i == 0 ? widths.get(0) : end(overlap, widths.get(i - 1), widths.get(i), limit);
            } else if (!inside && !Double.isNaN(from)) {
                intervals.add(new Interval(from, end(overlap, widths.get(i - 1), widths.get(i), limit)));
                from = Double.NaN;
            }
        }
        if (!Double.isNaN(from)) {
            intervals.add(new Interval(from, widths.get(widths.size() - 1)));
        }
        return intervals;
    }

    /** Where between two widths, one within the limit and one not, the limit is reached, on the side within. */
    private static double end(Overlap overlap, double low, double high, double limit) {
        return new BracketingNthOrderBrentSolver(END_TOLERANCE, 5)
                .solve(
                        MOST_EVALUATIONS,
                        width -> overlap.cvPercent(width) - limit,
                        low,
                        high,
                        AllowedSolution.BELOW_SIDE);
    }
}
