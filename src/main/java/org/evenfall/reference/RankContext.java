package org.evenfall.reference;

import org.evenfall.flight.Throws;
import org.jspecify.annotations.Nullable;

/**
 * The machine and the job in which products are compared.
 *
 * @param tramlineWidthM tramline width, m, above 0
 * @param discRadiusM centre to vane tip, m, above 0
 * @param discRpm disc speed in use, rpm
 * @param discRpmHighest highest disc speed the handbook allows, rpm
 * @param heightOverCropM height over the crop, m
 * @param chosenId id of the reference the person chose, empty when none
 */
public record RankContext(
        double tramlineWidthM,
        double discRadiusM,
        double discRpm,
        double discRpmHighest,
        double heightOverCropM,
        String chosenId) {

    /** Height over the crop where none is known, m: published figures run 0.70 to 0.75. */
    public static final double USUAL_HEIGHT_M = 0.75;

    /** Fills what the owner did not give with usual values. */
    public static RankContext of(
            double tramlineWidthM,
            @Nullable Double discRadiusM,
            @Nullable Double discRpm,
            @Nullable Double discRpmHighest,
            @Nullable Double heightOverCropM,
            String chosenId) {
        double rpm = discRpm == null ? Throws.USUAL_DISC_RPM : discRpm;
        return new RankContext(
                tramlineWidthM,
                discRadiusM == null ? Throws.USUAL_DISC_RADIUS_M : discRadiusM,
                rpm,
                discRpmHighest == null ? rpm : Math.max(rpm, discRpmHighest),
                heightOverCropM == null ? USUAL_HEIGHT_M : heightOverCropM,
                chosenId);
    }
}
