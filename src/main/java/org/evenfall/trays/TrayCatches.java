package org.evenfall.trays;

import java.util.List;
import org.evenfall.flight.DrivingPattern;

/**
 * One tray test as the core needs it: only the trays that were read.
 *
 * @param positionsM where they stood, m, negative left
 * @param catchesG catch of each, all runs together, g, at least 0
 * @param tramlineWidthM tramline width, m
 * @param pattern how the passes follow each other
 * @param trayAreaM2 catching area of one tray, m²
 * @param runs how many times the three passes were driven, at least 1
 * @param meanGranuleG see {@link CatchPlans#meanGranuleG}
 * @param readingStepG smallest step read, as grams
 */
public record TrayCatches(
        List<Double> positionsM,
        List<Double> catchesG,
        double tramlineWidthM,
        DrivingPattern pattern,
        double trayAreaM2,
        int runs,
        double meanGranuleG,
        double readingStepG) {

    public TrayCatches {
        positionsM = List.copyOf(positionsM);
        catchesG = List.copyOf(catchesG);
        if (positionsM.size() != catchesG.size() || catchesG.size() < TrayLayouts.FEWEST_TRAYS) {
            throw new IllegalArgumentException("one position a catch and at least 5 catches: " + catchesG);
        }
        if (catchesG.stream().anyMatch(grams -> !(grams >= 0))
                || !(catchesG.stream().mapToDouble(Double::doubleValue).sum() > 0)) {
            throw new IllegalArgumentException("catches at least 0 and not all 0: " + catchesG);
        }
        if (runs < 1 || !(tramlineWidthM > 0) || !(trayAreaM2 > 0) || !(meanGranuleG > 0) || readingStepG < 0) {
            throw new IllegalArgumentException("runs, width, area and granule must be above 0");
        }
    }
}
