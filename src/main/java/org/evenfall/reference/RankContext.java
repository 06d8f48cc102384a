package org.evenfall.reference;

import java.util.Objects;
import org.evenfall.flight.ThrowModel;
import org.jspecify.annotations.Nullable;

/**
 * The machine and the job in which products are compared.
 *
 * @param tramlineWidthM tramline width, m, above 0
 * @param discRadiusM centre to vane tip, m, above 0
 * @param discRpm disc speed in use, rpm, above 0
 * @param discRpmHighest highest disc speed the handbook allows, rpm, at least discRpm
 * @param heightOverCropM height above the crop canopy, m, above 0
 * @param chosenId id of the reference the person chose, empty when none
 * @param widestHandbookWidthM widest working width its handbook names, m; null when it names none
 * @param widerLever at least one lever is known to throw wider one way
 */
public record RankContext(
        double tramlineWidthM,
        double discRadiusM,
        double discRpm,
        double discRpmHighest,
        double heightOverCropM,
        String chosenId,
        @Nullable Double widestHandbookWidthM,
        boolean widerLever) {

    /** Height above the crop canopy where none is known, m. Common practice: handbooks of some machines give 0.70 to 0.75. */
    public static final double USUAL_HEIGHT_M = 0.75;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException when a value is outside its range
     */
    public RankContext {
        Objects.requireNonNull(chosenId, "chosenId");
        above0("tramlineWidthM", tramlineWidthM);
        above0("discRadiusM", discRadiusM);
        above0("discRpm", discRpm);
        above0("heightOverCropM", heightOverCropM);
        if (widestHandbookWidthM != null) {
            above0("widestHandbookWidthM", widestHandbookWidthM);
        }
        if (!(discRpmHighest >= discRpm)) {
            throw new IllegalArgumentException("discRpmHighest must be at least " + discRpm + ": " + discRpmHighest);
        }
    }

    /** A context with usual values for what is null; the disc speed in use is the highest where no other is known. */
    public static RankContext of(
            double tramlineWidthM,
            @Nullable Double discRadiusM,
            @Nullable Double discRpm,
            @Nullable Double discRpmHighest,
            @Nullable Double heightOverCropM,
            String chosenId) {
        double rpm = discRpm == null ? ThrowModel.USUAL_DISC_RPM : discRpm;
        return new RankContext(
                tramlineWidthM,
                discRadiusM == null ? ThrowModel.USUAL_DISC_RADIUS_M : discRadiusM,
                rpm,
                discRpmHighest == null ? rpm : Math.max(rpm, discRpmHighest),
                heightOverCropM == null ? USUAL_HEIGHT_M : heightOverCropM,
                chosenId,
                null,
                false);
    }

    /** The same with what is known of the reach of the machine: see {@link Reach}. */
    public RankContext reaching(@Nullable Double widestHandbook, boolean lever) {
        return new RankContext(
                tramlineWidthM, discRadiusM, discRpm, discRpmHighest, heightOverCropM, chosenId, widestHandbook, lever);
    }

    private static void above0(String name, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be above 0: " + value);
        }
    }
}
