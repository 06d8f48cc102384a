package org.evenfall.flight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which working widths one pattern holds even. Acceptable widths need not be one interval (Fertilizer Australia, seen), so
 * every one is told.
 *
 * @param widths widths looked at, in the unit of the pattern's positions, rising
 * @param cvPercent coefficient of variation at each, n − 1, %
 * @param intervals limit of the CV, %, to every interval in which it is at most that
 */
public record WidthScan(List<Double> widths, List<Double> cvPercent, Map<Double, List<Interval>> intervals) {

    /** Looked at for each width between the narrowest and the widest. */
    private static final int STEPS = 240;

    private static final int HALVINGS = 30;

    /**
     * One interval of widths.
     *
     * @param from narrowest
     * @param to widest
     */
    public record Interval(double from, double to) {}

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
     * Scans widths in even steps; the ends of intervals are found by halving.
     *
     * @param narrowest above 0
     * @param widest above the narrowest
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

    /** From an eighth of the pattern's reach to all of it: narrower nobody drives, wider nothing meets. */
    public static WidthScan of(SpreadPattern pattern, DrivingPattern driving, List<Double> limitsPercent) {
        double reach = pattern.rightmostM() - pattern.leftmostM();
        return of(pattern, driving, reach / 8, reach, limitsPercent);
    }

    private static List<Interval> intervals(Overlap overlap, List<Double> widths, List<Double> cvs, double limit) {
        List<Interval> intervals = new ArrayList<>();
        double from = Double.NaN;
        for (int i = 0; i < widths.size(); i++) {
            boolean inside = cvs.get(i) <= limit;
            if (inside && Double.isNaN(from)) {
                from = i == 0 ? widths.get(0) : end(overlap, widths.get(i), widths.get(i - 1), limit);
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

    /** The last width from an inside one towards an outside one at which the limit still holds. */
    private static double end(Overlap overlap, double inside, double outside, double limit) {
        double in = inside;
        double out = outside;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (in + out) / 2;
            if (overlap.cvPercent(middle) <= limit) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }
}
