package org.evenfall.trays;

import org.evenfall.flight.DrivingPattern;

/**
 * How the field is driven.
 *
 * @param widthM distance between tramlines, m, above 0
 * @param pattern how the passes follow each other; unanswered counts as back and forth
 */
public record Tramlines(double widthM, DrivingPattern pattern) {

    /** @throws IllegalArgumentException for a width not above 0 */
    public Tramlines {
        if (!(widthM > 0)) {
            throw new IllegalArgumentException("widthM must be above 0: " + widthM);
        }
    }
}
