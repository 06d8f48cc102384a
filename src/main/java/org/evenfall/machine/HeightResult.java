package org.evenfall.machine;

import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Heights that set the machine above the crop canopy.
 *
 * @param crop the crop
 * @param wantedOverCropM wanted height of the reference point above the crop canopy, m
 * @param overGroundM height of the reference point above the ground that gives it, m
 * @param now the machine as it hangs now
 * @param chainM length of a chain that just brushes the crop, m, at least 0
 * @param throwPer10CmM change of throw for 10 cm of height, by the flight model, m; null when not known
 * @param throwPer10CmRangeM its range over what the model assumes, m; null when not known
 */
public record HeightResult(
        Crop crop,
        double wantedOverCropM,
        double overGroundM,
        Now now,
        double chainM,
        @Nullable Double throwPer10CmM,
        @Nullable Interval throwPer10CmRangeM) {

    /**
     * Height of the crop canopy above the ground.
     *
     * @param meanM mean of the places now, m
     * @param spreadM highest less lowest place, m
     * @param laterM height for which the machine is set: half of the growth added, m
     */
    public record Crop(double meanM, double spreadM, double laterM) {}

    /**
     * The machine as it hangs now; null where not measured.
     *
     * @param leftRightM left less right, m
     * @param foreAftM front less rear, m
     * @param overCropM height above the crop canopy now, m
     * @param correctionM how much to raise (positive) or lower, m
     */
    public record Now(
            @Nullable Double leftRightM,
            @Nullable Double foreAftM,
            @Nullable Double overCropM,
            @Nullable Double correctionM) {}
}
