package org.evenfall.setup;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.ThrowAssumptions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.machine.HeightCalculator;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.Entry;
import org.evenfall.setup.path.HeightPaths;
import org.jspecify.annotations.Nullable;

/** Step 4: height above the crop canopy. */
final class HeightAssessor {

    /** Assumption: left and right may differ by this before it is reported, m. */
    static final double REPORTED_LEFT_RIGHT_M = 0.02;

    /** Assumption: the height may be off by this before it is reported, m. */
    static final double REPORTED_CORRECTION_M = 0.05;

    /** Assumption: the crop may differ from place to place by this before it is reported, m. */
    static final double REPORTED_CROP_SPREAD_M = 0.15;

    /** Rounding room in which a difference still counts as within its limit, m. */
    private static final double ROUNDING_M = 1e-9;

    private static final String SOURCE = "source.height";

    /** Half of the 10 cm for which the change of the throw is given, m. */
    private static final double FIVE_CM_M = 0.05;

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private HeightAssessor(ReadSetup read) {
        this.read = read;
    }

    /** @param settingHeightM height of the settings to start from; null while it is not typed */
    static Assessed<HeightResult> assess(
            ReadSetup read, MachineProfile machine, ProductResult product, @Nullable Double settingHeightM) {
        HeightAssessor assessor = new HeightAssessor(read);
        HeightResult result = assessor.height(machine, product, settingHeightM);
        return new Assessed<>(result, assessor.findings);
    }

    private @Nullable HeightResult height(
            MachineProfile machine, ProductResult product, @Nullable Double settingHeightM) {
        List<Double> crop = read.numbers(HeightPaths.CROP_HEIGHTS);
        Double left = read.number(HeightPaths.LEFT);
        Double right = read.number(HeightPaths.RIGHT);
        Double wanted = read.number(HeightPaths.WANTED);
        if (wanted == null && read.isBlank(HeightPaths.WANTED)) {
            wanted = settingHeightM == null ? machine.wantedHeightM() : settingHeightM;
        }
        missing(crop.isEmpty(), "missing.cropHeight", HeightPaths.CROP_HEIGHTS);
        missing(left == null || right == null, "missing.hitchHeight", HeightPaths.LEFT);
        missing(wanted == null, "missing.wantedHeight", HeightPaths.WANTED);
        if (crop.isEmpty() || wanted == null) {
            return null;
        }
        PerTenCm perTenCm = throwPer10Cm(product, wanted);
        HeightResult result = HeightCalculator.assess(new HeightCalculator.Measured(
                crop,
                orZero(read.number(HeightPaths.GROWTH)),
                wanted,
                left,
                right,
                read.number(HeightPaths.FRONT),
                read.number(HeightPaths.REAR),
                orZero(read.number(HeightPaths.CHAIN_POINT)),
                perTenCm == null ? null : Double.valueOf(perTenCm.usualM()),
                perTenCm == null ? null : perTenCm.rangeM()));
        addFindings(result);
        return result;
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    private void missing(boolean missing, String key, Entry<?, ?> entry) {
        if (missing) {
            findings.add(Finding.missing(Step.HEIGHT, key).at(entry.pointer()));
        }
    }

    private void addFindings(HeightResult result) {
        if (result.now().correctionM() != null
                && Math.abs(result.now().correctionM()) > REPORTED_CORRECTION_M + ROUNDING_M) {
            findings.add(Finding.warn(
                            Step.HEIGHT,
                            result.now().correctionM() > 0 ? "height.raise" : "height.lower",
                            cm(Math.abs(result.now().correctionM())),
                            cm(result.overGroundM()))
                    .at(HeightPaths.LEFT.pointer())
                    .from(SOURCE));
        }
        if (result.now().leftRightM() != null
                && Math.abs(result.now().leftRightM()) > REPORTED_LEFT_RIGHT_M + ROUNDING_M) {
            findings.add(Finding.warn(
                            Step.HEIGHT,
                            "height.leftRight",
                            cm(Math.abs(result.now().leftRightM())))
                    .at(HeightPaths.RIGHT.pointer())
                    .from(SOURCE));
        }
        if (result.crop().spreadM() > REPORTED_CROP_SPREAD_M + ROUNDING_M) {
            findings.add(Finding.note(
                            Step.HEIGHT, "height.unevenCrop", cm(result.crop().spreadM()))
                    .at(HeightPaths.CROP_HEIGHTS.pointer())
                    .from(SOURCE));
        }
    }

    private static Arg cm(double metres) {
        return Arg.number(Unit.M.to(Unit.CM, metres), 0, Unit.CM);
    }

    /**
     * What 10 cm of height do to the throw of this product, by the flight model, m.
     *
     * @param usualM under the usual assumptions
     * @param rangeM least and most over the range of the model
     */
    private record PerTenCm(double usualM, Interval rangeM) {}

    private static @Nullable PerTenCm throwPer10Cm(ProductResult product, double wantedM) {
        if (product.particle() == null || product.sizes() == null || product.flight() == null) {
            return null;
        }
        double speed = product.flight().outletSpeedMPerS();
        double d50 = product.sizes().d50Mm();
        double density = product.particle().kgPerM3();
        ToDoubleFunction<ThrowAssumptions> change =
                assumed -> ThrowModel.distanceM(d50, density, speed, wantedM + FIVE_CM_M, assumed)
                        - ThrowModel.distanceM(d50, density, speed, Math.max(FIVE_CM_M, wantedM - FIVE_CM_M), assumed);
        DoubleSummaryStatistics range =
                ThrowAssumptions.RANGE.stream().mapToDouble(change).summaryStatistics();
        return new PerTenCm(change.applyAsDouble(ThrowAssumptions.USUAL), new Interval(range.getMin(), range.getMax()));
    }
}
