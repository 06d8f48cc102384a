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

    public PassConditions {
        fans = List.copyOf(fans);
        double shares = fans.stream().mapToDouble(Fan::share).sum();
        if (fans.isEmpty() || Math.abs(shares - 1) > 1e-12 * fans.size()) {
            throw new IllegalArgumentException("the shares of the fans must add up to 1: " + shares);
        }
        if (!(heightM > 0 && heightM <= 5 && discSpacingM >= 0 && discSpacingM <= 4)) {
            throw new IllegalArgumentException(
                    "height above 0 to 5 m, disc spacing 0 to 4 m: " + heightM + ", " + discSpacingM);
        }
        if (!(forwardMPerS >= 0 && forwardMPerS <= 15)
                || !(Math.abs(windAlongMPerS) <= 15)
                || !(Math.abs(windAcrossMPerS) <= 15)) {
            throw new IllegalArgumentException("forward speed 0 to 15 m/s, wind within 15 m/s: " + forwardMPerS + ", "
                    + windAlongMPerS + ", " + windAcrossMPerS);
        }
    }

    /** Air that moves against the machine, along the travel, m/s. */
    double airAlongMPerS() {
        return windAlongMPerS - forwardMPerS;
    }

    boolean calm() {
        return airAlongMPerS() == 0 && windAcrossMPerS == 0;
    }
}
