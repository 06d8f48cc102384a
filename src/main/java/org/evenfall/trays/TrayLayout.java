package org.evenfall.trays;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Places of the trays and of the passes.
 *
 * @param positionsM across the travel, m, negative left, 0 on the centre tramline
 * @param tramlineWidthM distance between tramlines, m
 * @param trayAreaM2 catching area of one tray, m²
 * @param passesM where the three passes drive, m
 * @param passForward direction of each pass: true in the direction of the middle one
 * @param wheels where the tractor's wheels run in each pass
 * @param movedM how far each tray was moved from its planned place out of the wheel marks, m, 0 where not
 * @param inWheelMarks trays, from 0, that are in a wheel mark and have no free place near
 */
public record TrayLayout(
        List<Double> positionsM,
        double tramlineWidthM,
        double trayAreaM2,
        List<Double> passesM,
        List<Boolean> passForward,
        WheelMarks wheels,
        List<Double> movedM,
        List<Integer> inWheelMarks) {

    /** Copies the lists. */
    public TrayLayout {
        positionsM = List.copyOf(positionsM);
        passesM = List.copyOf(passesM);
        passForward = List.copyOf(passForward);
        movedM = List.copyOf(movedM);
        inWheelMarks = List.copyOf(inWheelMarks);
    }

    /** Largest distance between two neighbouring trays, m. */
    public double largestGapM() {
        return IntStream.range(1, positionsM.size())
                .mapToDouble(i -> positionsM.get(i) - positionsM.get(i - 1))
                .max()
                .orElse(0);
    }

    /** Whether any tray was moved out of a wheel mark. */
    public boolean moved() {
        return movedM.stream().anyMatch(metres -> metres != 0);
    }
}
