package org.evenfall.trays;

import java.util.List;

/**
 * Where the trays stand.
 *
 * @param positionsM across the travel, m, negative left, 0 on the centre tramline
 * @param tramlineWidthM tramline width
 * @param trayAreaM2 catching area of one tray, m²
 * @param passesM where the three passes drive, m
 * @param passForward direction of each pass: true in the direction of the middle one
 */
public record TrayLayout(
        List<Double> positionsM,
        double tramlineWidthM,
        double trayAreaM2,
        List<Double> passesM,
        List<Boolean> passForward) {

    public TrayLayout {
        positionsM = List.copyOf(positionsM);
        passesM = List.copyOf(passesM);
        passForward = List.copyOf(passForward);
    }
}
