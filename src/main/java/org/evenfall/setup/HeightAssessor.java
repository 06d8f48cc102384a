package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.ThrowModel;
import org.evenfall.machine.HeightCalculator;
import org.evenfall.machine.HeightResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.HeightEntries;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** Step 4: height over the crop. */
final class HeightAssessor {

    /** Left and right, front and rear may differ by this before it is told, m. Ours. */
    private static final double TOLD_DIFFERENCE_M = 0.02;

    /** The height may be off by this before it is told, m. Ours. */
    private static final double TOLD_CORRECTION_M = 0.05;

    private HeightAssessor() {}

    static @Nullable HeightResult assess(
            Setup setup,
            MachineProfile machine,
            ProductResult product,
            @Nullable Double settingHeightM,
            EntryReader reader) {
        HeightEntries entries = setup.height();
        List<Double> crop = reader.readAll(entries.cropHeights(), Fields.CROP_HEIGHT, "/height/cropHeights").stream()
                .map(cm -> cm / 100)
                .toList();
        Double growth = metres(reader.read(entries.growth(), Fields.GROWTH, "/height/growth"));
        Double wanted = metres(reader.read(entries.wanted(), Fields.HEIGHT_OVER_CROP, "/height/wanted"));
        Double left = hitch(entries.left(), "/height/left", reader);
        Double right = hitch(entries.right(), "/height/right", reader);
        Double front = hitch(entries.front(), "/height/front", reader);
        Double rear = hitch(entries.rear(), "/height/rear", reader);
        Double chain = metres(reader.read(entries.chainPoint(), Fields.CHAIN_POINT, "/height/chainPoint"));
        reader.need(!crop.isEmpty(), Step.HEIGHT, "missing.cropHeight", "/height/cropHeights");
        reader.need(left != null && right != null, Step.HEIGHT, "missing.hitchHeight", "/height/left");
        if (wanted == null && entries.wanted().isBlank()) {
            wanted = settingHeightM == null ? machine.wantedHeightM() : settingHeightM;
        }
        reader.need(wanted != null, Step.HEIGHT, "missing.wantedHeight", "/height/wanted");
        if (crop.isEmpty() || wanted == null) {
            return null;
        }
        HeightResult result = HeightCalculator.assess(new HeightCalculator.Measured(
                crop,
                growth == null ? 0 : growth,
                wanted,
                left,
                right,
                front,
                rear,
                chain == null ? 0 : chain,
                throwPer10Cm(product, wanted)));
        tell(result, reader);
        return result;
    }

    private static void tell(HeightResult result, EntryReader reader) {
        if (result.now().correctionM() != null && Math.abs(result.now().correctionM()) > TOLD_CORRECTION_M) {
            reader.add(Finding.warn(
                            Step.HEIGHT,
                            result.now().correctionM() > 0 ? "height.raise" : "height.lower",
                            Arg.number(100 * Math.abs(result.now().correctionM()), 0, Unit.CM),
                            Arg.number(100 * result.overGroundM(), 0, Unit.CM))
                    .at("/height/left"));
        }
        if (result.now().leftRightM() != null && Math.abs(result.now().leftRightM()) > TOLD_DIFFERENCE_M + 1e-9) {
            reader.add(Finding.warn(
                            Step.HEIGHT,
                            "height.leftRight",
                            Arg.number(100 * Math.abs(result.now().leftRightM()), 0, Unit.CM))
                    .at("/height/right"));
        }
        if (result.crop().spreadM() > 0.15) {
            reader.add(Finding.note(
                            Step.HEIGHT,
                            "height.unevenCrop",
                            Arg.number(100 * result.crop().spreadM(), 0, Unit.CM))
                    .at("/height/cropHeights"));
        }
    }

    /** What 10 cm of height do to the throw of this product, by the flight model. */
    private static @Nullable Double throwPer10Cm(ProductResult product, double wantedM) {
        if (product.particle() == null || product.sieve() == null || product.flight() == null) {
            return null;
        }
        double speed = product.flight().outletSpeedMPerS();
        double d50 = product.sieve().d50Mm();
        double density = product.particle().kgPerM3();
        return (ThrowModel.distanceM(d50, density, speed, wantedM + 0.05)
                - ThrowModel.distanceM(d50, density, speed, Math.max(0.05, wantedM - 0.05)));
    }

    private static @Nullable Double hitch(EnteredQuantity typed, String pointer, EntryReader reader) {
        return metres(reader.read(typed, Fields.HITCH_HEIGHT, pointer));
    }

    private static @Nullable Double metres(@Nullable Double cm) {
        return cm == null ? null : Double.valueOf(cm / 100);
    }
}
