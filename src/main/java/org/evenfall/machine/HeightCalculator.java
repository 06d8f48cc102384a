package org.evenfall.machine;

import java.util.EnumSet;
import java.util.List;
import org.apache.commons.statistics.descriptive.DoubleStatistics;
import org.apache.commons.statistics.descriptive.Statistic;
import org.evenfall.quantity.Interval;
import org.jspecify.annotations.Nullable;

/** Height of the machine above the crop canopy. */
public final class HeightCalculator {

    /**
     * Share of the growth until the next pass that is added to the crop. Assumption: half of it, so that the machine is
     * neither too low now nor too high later.
     */
    static final double GROWTH_SHARE = 0.5;

    private HeightCalculator() {}

    /**
     * Measured and wanted heights; above the ground where not stated otherwise, m.
     *
     * @param cropM height of the crop canopy at several places, m, at least one
     * @param growthM growth until the next pass, m, at least 0
     * @param wantedOverCropM wanted height of the reference point above the crop canopy, m, above 0
     * @param leftM reference point now, left, m, or null
     * @param rightM right, m, or null
     * @param frontM front, m, or null
     * @param rearM rear, m, or null
     * @param chainPointOverReferenceM height of the chain's upper end above the reference point, m; 0 when not known
     * @param throwPer10CmM change of throw for 10 cm of height, by the flight model, m, or null
     * @param throwPer10CmRangeM its range over what the model assumes, m, or null
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
            @Nullable Double throwPer10CmM,
            @Nullable Interval throwPer10CmRangeM) {

        /**
         * Checks the ranges.
         *
         * @throws IllegalArgumentException when a height is outside its range
         */
        public Measured {
            cropM = List.copyOf(cropM);
            if (cropM.isEmpty() || !(wantedOverCropM > 0) || !(growthM >= 0)) {
                throw new IllegalArgumentException("need a crop height, wantedOverCropM above 0, growthM at least 0: "
                        + cropM + ", " + wantedOverCropM + ", " + growthM);
            }
        }
    }

    /**
     * Heights that set the machine: above the ground = mean crop + {@link #GROWTH_SHARE} × growth + wanted. The height now
     * is the mean of left and right, else of front and rear; one side alone counts for both.
     */
    public static HeightResult assess(Measured measured) {
        DoubleStatistics crop = DoubleStatistics.of(
                EnumSet.of(Statistic.MEAN, Statistic.MIN, Statistic.MAX),
                measured.cropM().stream().mapToDouble(Double::doubleValue).toArray());
        double meanM = crop.getAsDouble(Statistic.MEAN);
        double laterM = meanM + GROWTH_SHARE * measured.growthM();
        double overGroundM = laterM + measured.wantedOverCropM();
        return new HeightResult(
                new HeightResult.Crop(meanM, crop.getAsDouble(Statistic.MAX) - crop.getAsDouble(Statistic.MIN), laterM),
                measured.wantedOverCropM(),
                overGroundM,
                now(measured, meanM, overGroundM),
                Math.max(0, measured.wantedOverCropM() + measured.chainPointOverReferenceM()),
                measured.throwPer10CmM(),
                measured.throwPer10CmRangeM());
    }

    private static HeightResult.Now now(Measured measured, double cropM, double overGroundM) {
        Double now = mean(measured.leftM(), measured.rightM());
        if (now == null) {
            now = mean(measured.frontM(), measured.rearM());
        }
        return new HeightResult.Now(
                difference(measured.leftM(), measured.rightM()),
                difference(measured.frontM(), measured.rearM()),
                now == null ? null : Double.valueOf(now - cropM),
                now == null ? null : Double.valueOf(overGroundM - now));
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
