package org.evenfall.trays;

import java.util.List;
import org.evenfall.flight.DrivingPattern;

/**
 * One tray test as the core needs it: only the trays that were read.
 *
 * @param positionsM their places, m, negative left
 * @param catchesG catch of each, all runs together, g, at least 0
 * @param tramlineWidthM distance between tramlines, m, above 0
 * @param pattern how the passes follow each other
 * @param trayAreaM2 catching area of one tray, m², above 0
 * @param runs how many times the three passes were driven, at least 1
 * @param meanGranuleG see {@link CatchPlans#meanGranuleG}, above 0
 * @param readingStepG smallest step read, as grams, at least 0
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

    /** @throws IllegalArgumentException when a value is out of its range, or fewer than five trays were read */
    public TrayCatches {
        positionsM = List.copyOf(positionsM);
        catchesG = List.copyOf(catchesG);
        if (positionsM.size() != catchesG.size() || catchesG.size() < TrayLayouts.FEWEST_TRAYS) {
            throw new IllegalArgumentException("one position a catch and at least " + TrayLayouts.FEWEST_TRAYS
                    + " catches: " + positionsM + ", " + catchesG);
        }
        if (catchesG.stream().anyMatch(grams -> !(grams >= 0))
                || !(catchesG.stream().mapToDouble(Double::doubleValue).sum() > 0)) {
            throw new IllegalArgumentException("catches at least 0 and not all 0: " + catchesG);
        }
        if (runs < 1 || !(tramlineWidthM > 0) || !(trayAreaM2 > 0) || !(meanGranuleG > 0) || !(readingStepG >= 0)) {
            throw new IllegalArgumentException("runs at least 1, width, area and granule above 0, step at least 0: "
                    + runs + ", " + tramlineWidthM + ", " + trayAreaM2 + ", " + meanGranuleG + ", " + readingStepG);
        }
    }

    /** How the field is driven. */
    public Tramlines tramlines() {
        return new Tramlines(tramlineWidthM, pattern);
    }
}
