package org.evenfall.flight;

import java.util.List;

/**
 * One pass of a twin-disc machine: its fans, where they start and the air they fly through.
 *
 * @param fans fans of both discs; their shares add up to 1
 * @param heightM height of the discs over the crop, m, above 0, at most 5
 * @param discSpacingM distance between the centres of the two discs, m, 0 to 4
 * @param forwardMPerS forward speed, m/s, 0 to 15; the granules carry it with them
 * @param windAlongMPerS wind with the direction of travel, m/s, −15 to 15
 * @param windAcrossMPerS wind to the right, m/s, −15 to 15
 */
public record PassConditions(
        List<Fan> fans,
        double heightM,
        double discSpacingM,
        double forwardMPerS,
        double windAlongMPerS,
        double windAcrossMPerS) {

    // Assumption: what any machine does at most
    private static final double HIGHEST_M = 5;
    private static final double WIDEST_SPACING_M = 4;
    private static final double FASTEST_M_PER_S = 15;

    /** Rounding allowed in the sum of the shares, a fan. */
    private static final double SHARE_TOLERANCE = 1e-12;

    /** @throws IllegalArgumentException when a part is out of its range */
    public PassConditions {
        fans = List.copyOf(fans);
        double shares = fans.stream().mapToDouble(Fan::share).sum();
        if (fans.isEmpty() || Math.abs(shares - 1) > SHARE_TOLERANCE * fans.size()) {
            throw new IllegalArgumentException("the shares of the fans must add up to 1: " + shares);
        }
        Ranges.positive("heightM", heightM);
        Ranges.within("heightM", heightM, 0, HIGHEST_M);
        Ranges.within("discSpacingM", discSpacingM, 0, WIDEST_SPACING_M);
        Ranges.within("forwardMPerS", forwardMPerS, 0, FASTEST_M_PER_S);
        Ranges.within("windAlongMPerS", windAlongMPerS, -FASTEST_M_PER_S, FASTEST_M_PER_S);
        Ranges.within("windAcrossMPerS", windAcrossMPerS, -FASTEST_M_PER_S, FASTEST_M_PER_S);
    }

    /** Speed of the air against the machine along the travel, m/s, positive: from behind. */
    double airAlongMPerS() {
        return windAlongMPerS - forwardMPerS;
    }

    /** Whether the air does not move against the machine. */
    boolean calm() {
        return airAlongMPerS() == 0 && windAcrossMPerS == 0;
    }
}
