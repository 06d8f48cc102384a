package org.evenfall.trays;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;

/** How many trays a width needs, their places and the three passes. */
public final class TrayLayouts {

    /** Assumption: fewest trays that separate centre, overlap and side with one to spare. */
    public static final int FEWEST_TRAYS = 5;

    /** Assumption: more nobody puts out. */
    public static final int MOST_TRAYS = 33;

    /** Common practice: trays of a test below {@link #CLOSER_FROM_M}. */
    public static final int USUAL_TRAYS = 7;

    /**
     * From this tramline width on trays are closer near the tramline, m. Assumption: seven even trays have three of them
     * within 5 m of the tramline at 24 m, and one at 36 m.
     */
    public static final double CLOSER_FROM_M = 28;

    /**
     * Trays are closer up to this distance from the tramline, m. Source: Lawrence, Yule, Jones 2006, New Zealand Journal of
     * Agricultural Research (abstract: urea in 1 400 trays; most trays within 5 m of the tramline).
     */
    private static final double CLOSER_WITHIN_M = 5;

    /** Assumption: eleven trays from this width on, so that the outer ones are less than 5 m apart up to 36 m, m. */
    private static final double ELEVEN_FROM_M = 32;

    /** Assumption: thirteen trays from this width on; more nobody puts out, so that at 48 m they are 6.3 m apart, m. */
    private static final double THIRTEEN_FROM_M = 36;

    /** Trays outside {@link #CLOSER_WITHIN_M} on each side, by the number of trays; other numbers are spaced evenly. */
    private static final Map<Integer, Integer> OUTER_PER_SIDE = Map.of(9, 2, 11, 3, 13, 3);

    private static final int NINE = 9;
    private static final int ELEVEN = 11;
    private static final int THIRTEEN = 13;

    private TrayLayouts() {}

    /**
     * Trays proposed where the owner states no number: 7 below 28 m, 9 below 32 m, 11 below 36 m, else 13.
     *
     * @param tramlineWidthM distance between tramlines, m
     */
    public static int proposedTrays(double tramlineWidthM) {
        if (tramlineWidthM < CLOSER_FROM_M) {
            return USUAL_TRAYS;
        }
        if (tramlineWidthM < ELEVEN_FROM_M) {
            return NINE;
        }
        return tramlineWidthM < THIRTEEN_FROM_M ? ELEVEN : THIRTEEN;
    }

    /**
     * Trays from midway to the next tramline on the left to midway on the right. From 28 m on 9, 11 and 13 trays are
     * closer within 5 m of the tramline; all other numbers, and all below 28 m, are spaced evenly.
     *
     * @param tramlineWidthM distance between tramlines, m, above 0
     * @param trays number of trays, 5 to 33
     * @param trayAreaM2 catching area of one tray, m², above 0
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static TrayLayout of(double tramlineWidthM, int trays, double trayAreaM2, DrivingPattern pattern) {
        Integer outer = OUTER_PER_SIDE.get(trays);
        if (outer == null || !(tramlineWidthM >= CLOSER_FROM_M)) {
            return even(tramlineWidthM, trays, trayAreaM2, pattern);
        }
        return layout(closerInside(tramlineWidthM / 2, trays, outer), tramlineWidthM, trayAreaM2, pattern);
    }

    /**
     * Trays evenly from midway to the next tramline on the left to midway on the right; at seven 0, ±W/6, ±W/3, ±W/2.
     *
     * @param tramlineWidthM distance between tramlines, m, above 0
     * @param trays number of trays, 5 to 33
     * @param trayAreaM2 catching area of one tray, m², above 0
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static TrayLayout even(double tramlineWidthM, int trays, double trayAreaM2, DrivingPattern pattern) {
        if (!(tramlineWidthM > 0) || trays < FEWEST_TRAYS || trays > MOST_TRAYS) {
            throw new IllegalArgumentException("width above 0, trays " + FEWEST_TRAYS + " to " + MOST_TRAYS + ": "
                    + tramlineWidthM + " m, " + trays);
        }
        List<Double> positions = IntStream.range(0, trays)
                .mapToObj(i -> tramlineWidthM * (i / (trays - 1.0) - 0.5))
                .toList();
        return layout(positions, tramlineWidthM, trayAreaM2, pattern);
    }

    /** Odd number of trays: the inner ones evenly to 5 m on both sides, the outer ones evenly from there to the edge. */
    private static List<Double> closerInside(double edgeM, int trays, int outerPerSide) {
        int innerPerSide = (trays - 1) / 2 - outerPerSide;
        List<Double> positions = new ArrayList<>();
        for (int k = -outerPerSide - innerPerSide; k <= outerPerSide + innerPerSide; k++) {
            int fromTramline = Math.abs(k);
            double placeM = fromTramline <= innerPerSide
                    ? CLOSER_WITHIN_M * fromTramline / innerPerSide
                    : CLOSER_WITHIN_M + (edgeM - CLOSER_WITHIN_M) * (fromTramline - innerPerSide) / outerPerSide;
            positions.add(k < 0 ? -placeM : placeM);
        }
        return positions;
    }

    private static TrayLayout layout(
            List<Double> positionsM, double tramlineWidthM, double trayAreaM2, DrivingPattern pattern) {
        if (!(trayAreaM2 > 0)) {
            throw new IllegalArgumentException("tray area above 0: " + trayAreaM2 + " m²");
        }
        boolean sameWay = pattern == DrivingPattern.ROUND_AND_ROUND;
        return new TrayLayout(
                positionsM,
                tramlineWidthM,
                trayAreaM2,
                List.of(-tramlineWidthM, 0.0, tramlineWidthM),
                List.of(sameWay, true, sameWay),
                WheelMarks.USUAL,
                Collections.nCopies(positionsM.size(), 0.0),
                List.of());
    }

    /**
     * The same layout with the trays that a wheel would run over moved to the nearest free place between their
     * neighbours. A tray without one keeps its place and is listed.
     *
     * @param trayAcrossM side of a tray across the travel, m, above 0
     * @throws IllegalArgumentException for a side not above 0
     */
    public static TrayLayout asideFrom(WheelMarks marks, TrayLayout planned, double trayAcrossM) {
        if (!(trayAcrossM > 0)) {
            throw new IllegalArgumentException("tray across above 0: " + trayAcrossM);
        }
        return new WheelMarkAvoidance(planned, marks, trayAcrossM).layout();
    }
}
