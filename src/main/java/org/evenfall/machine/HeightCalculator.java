package org.evenfall.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Height of the machine over the top of the crop. */
public final class HeightCalculator {

    private HeightCalculator() {}

    /**
     * All heights over the ground, m.
     *
     * @param cropM crop at several places, at least one
     * @param growthM growth until the next pass, at least 0
     * @param wantedOverCropM wanted height of the reference point over the crop
     * @param leftM reference point now, left, or null
     * @param rightM right, or null
     * @param frontM front, or null
     * @param rearM rear, or null
     * @param chainPointOverReferenceM where the chain hangs from, over the reference point; 0 when not told
     * @param throwPer10CmM change of throw for 10 cm of height, from the flight model, or null
     */
    public record Measured(
            List<Double> cropM,
            double growthM,
            double wantedOverCropM,
            @Nullable Double leftM,
            @Nullable Double rightM,
            @Nullable Double frontM,
            @Nullable Double rearM,
            double chainPointOverReferenceM,
            @Nullable Double throwPer10CmM) {

        public Measured {
            cropM = List.copyOf(cropM);
            if (cropM.isEmpty() || !(wantedOverCropM > 0) || growthM < 0) {
                throw new IllegalArgumentException("need a crop height, a wanted height above 0, growth at least 0");
            }
        }
    }

    /**
     * The machine is set for the crop half-way through the growth expected, so that it is neither half too low now nor
     * half too high later. Ours.
     */
    public static HeightResult assess(Measured measured) {
        double crop = measured.cropM().stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
        double lowest =
                measured.cropM().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double highest =
                measured.cropM().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double cropLater = crop + measured.growthM() / 2;
        double overGround = cropLater + measured.wantedOverCropM();
        Double now = mean(measured.leftM(), measured.rightM());
        if (now == null) {
            now = mean(measured.frontM(), measured.rearM());
        }
        return new HeightResult(
                crop,
                highest - lowest,
                cropLater,
                measured.wantedOverCropM(),
                overGround,
                difference(measured.leftM(), measured.rightM()),
                difference(measured.frontM(), measured.rearM()),
                now == null ? null : Double.valueOf(now - crop),
                now == null ? null : Double.valueOf(overGround - now),
                Math.max(0, measured.wantedOverCropM() + measured.chainPointOverReferenceM()),
                measured.throwPer10CmM());
    }

    private static @Nullable Double mean(@Nullable Double first, @Nullable Double second) {
        if (first == null || second == null) {
            return first == null ? second : first;
        }
        return (first + second) / 2;
    }

    private static @Nullable Double difference(@Nullable Double first, @Nullable Double second) {
        return first == null || second == null ? null : Double.valueOf(first - second);
    }
}
