package org.evenfall.trays;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.flight.DrivingPattern;

/** Places the trays and the three passes. */
public final class TrayLayouts {

    /** Common practice: trays of a test where the owner states no number. */
    public static final int USUAL_TRAYS = 7;

    /** Assumption: fewest trays that separate centre, overlap and side with one to spare. */
    public static final int FEWEST_TRAYS = 5;

    /** Assumption: more nobody puts out. */
    public static final int MOST_TRAYS = 33;

    private TrayLayouts() {}

    /**
     * Trays evenly from half-way to the next tramline on the left to half-way on the right; at seven 0, ±W/6, ±W/3,
     * ±W/2.
     *
     * @param tramlineWidthM distance between tramlines, m, above 0
     * @param trays number of trays, 5 to 33
     * @param trayAreaM2 catching area of one tray, m², above 0
     * @throws IllegalArgumentException when a value is out of its range
     */
    public static TrayLayout of(double tramlineWidthM, int trays, double trayAreaM2, DrivingPattern pattern) {
        if (!(tramlineWidthM > 0) || !(trayAreaM2 > 0) || trays < FEWEST_TRAYS || trays > MOST_TRAYS) {
            throw new IllegalArgumentException("width and area above 0, trays " + FEWEST_TRAYS + " to " + MOST_TRAYS
                    + ": " + tramlineWidthM + " m, " + trayAreaM2 + " m², " + trays);
        }
        List<Double> positions = IntStream.range(0, trays)
                .mapToObj(i -> tramlineWidthM * (i / (trays - 1.0) - 0.5))
                .toList();
        boolean sameWay = pattern == DrivingPattern.ROUND_AND_ROUND;
        return new TrayLayout(
                positions,
                tramlineWidthM,
                trayAreaM2,
                List.of(-tramlineWidthM, 0.0, tramlineWidthM),
                List.of(sameWay, true, sameWay),
                WheelMarks.USUAL,
                Collections.nCopies(trays, 0.0),
                List.of());
    }

    /**
     * The same layout with the trays that a wheel would run over moved to the nearest free place between their
     * neighbours. A tray without one keeps its place and is listed.
     *
     * @param trayAcrossM side of a tray across the travel, m, above 0
     * @throws IllegalArgumentException for a side not above 0
     */
    public static TrayLayout asideFrom(WheelMarks marks, TrayLayout even, double trayAcrossM) {
        if (!(trayAcrossM > 0)) {
            throw new IllegalArgumentException("tray across above 0: " + trayAcrossM);
        }
        return new WheelMarkAvoidance(even, marks, trayAcrossM).layout();
    }
}
