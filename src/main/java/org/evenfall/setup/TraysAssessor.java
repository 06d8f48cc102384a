package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.MachineCheck;
import org.evenfall.machine.MachineCheckResult;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.reference.RankContext;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.Advisor;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.CatchPlans;
import org.evenfall.trays.CropLoss;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.LeverRules;
import org.evenfall.trays.MachineOrder;
import org.evenfall.trays.ShapeCurve;
import org.evenfall.trays.ShapeCurves;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/** Step 6: the tray test. */
final class TraysAssessor {

    /** Granule where the product is not measured: 3.2 mm, 1 340 kg/m³. Ours. */
    private static final double USUAL_GRANULE_G =
            CatchPlans.meanGranuleG(new SizeDistribution(3.2, 1.2, 0, 0, false), 1340);

    private final Setup setup;
    private final MachineProfile machine;
    private final EntryReader reader;
    private final TrayEntries entries;

    private TraysAssessor(Setup setup, MachineProfile machine, EntryReader reader) {
        this.setup = setup;
        this.machine = machine;
        this.reader = reader;
        this.entries = setup.trays();
    }

    static TraysResult assess(
            Setup setup,
            MachineProfile machine,
            @Nullable Double tramlineWidthM,
            ProductResult product,
            RateResult rate,
            MachineCheckResult machineCheck,
            EntryReader reader) {
        return new TraysAssessor(setup, machine, reader).assess(tramlineWidthM, product, rate, machineCheck);
    }

    private TraysResult assess(
            @Nullable Double widthM, ProductResult product, RateResult rate, MachineCheckResult machineCheck) {
        TestGround ground = TestGround.read(setup, machineCheck, reader);
        Double boreMm = reader.read(entries.tubeBore(), Fields.TUBE_BORE, "/trays/tubeBore");
        reader.read(entries.switchOn(), Fields.SWITCH_DISTANCE, "/trays/switchOn");
        reader.read(entries.switchOff(), Fields.SWITCH_DISTANCE, "/trays/switchOff");
        if (widthM == null) {
            reader.need(false, Step.TRAYS, "missing.widthFirst", "");
            return new TraysResult(null, null, List.of(), List.of(), null, null, null);
        }
        TrayLayout layout = ground.layout(widthM, driving(), reader);
        double granuleG = product.sieve() == null || product.particle() == null
                ? USUAL_GRANULE_G
                : CatchPlans.meanGranuleG(
                        product.sieve().distribution(), product.particle().kgPerM3());
        Double density = product.density() == null ? null : product.density().meanKgPerL();
        double stepG = TestReader.readingStepG(entries.readingStep(), boreMm, density, reader);
        CatchPlan plan = rate.plan() == null
                ? null
                : CatchPlans.of(rate.plan().productKgPerHa(), ground.areaM2(), granuleG, stepG);
        TestReader tests =
                new TestReader(entries.catchKind(), boreMm, density, granuleG, stepG, driving(), layout, plan, reader);
        List<TrayTestResult> results = new ArrayList<>();
        List<AdviceInput.DoneTest> done = new ArrayList<>();
        for (int i = 0; i < entries.tests().size(); i++) {
            TrayTestEntry test = entries.tests().get(i);
            String at = "/trays/tests/" + i;
            ReadSettings settings =
                    MatchAssessor.settings(test.settings(), machine, at + "/settings", reader, Step.TRAYS);
            Double wind = reader.read(test.wind(), Fields.WIND, at + "/wind");
            windy(wind, ground.gate(), at);
            Uniformity evenness = tests.evenness(test, at);
            if (evenness != null) {
                results.add(new TrayTestResult(i, test.date(), evenness));
                done.add(new AdviceInput.DoneTest(evenness, settings.levers(), wind));
            }
        }
        verdict(results);
        List<TestComparison> comparisons = TestComparisons.of(results, done, machine.levers(), reader);
        return new TraysResult(
                layout,
                plan,
                results,
                comparisons,
                results.isEmpty() ? null : CropLoss.of(last(results).cvPercent()),
                Advisor.advise(
                        new AdviceInput(
                                done,
                                new LeverRules(machine.levers(), entries.twoLevers() == YesNo.YES),
                                new MachineOrder(
                                        levelInOrder(machineCheck),
                                        ptoInOrder(machineCheck),
                                        outletsInOrder(rate, machineCheck)),
                                new Tramlines(widthM, driving()),
                                ground.gate()),
                        () -> curves(product, widthM)),
                SinglePassAssessor.assess(entries, widthM, driving(), boreMm, density, reader));
    }

    /** A test that was driven in too strong a wind proves little. */
    private void windy(@Nullable Double wind, WindLimits gate, String at) {
        if (wind != null && gate.classify(wind) == WindLimits.Strength.STOP) {
            reader.add(Finding.warn(Step.TRAYS, "trays.drivenInWind", Arg.number(wind, 1, Unit.M_PER_S))
                    .at(at + "/wind")
                    .from("source.wind"));
        }
    }

    private DrivingPattern driving() {
        return setup.start().drivingPattern() == DrivingPattern.ROUND_AND_ROUND
                ? DrivingPattern.ROUND_AND_ROUND
                : DrivingPattern.BACK_AND_FORTH;
    }

    /** How the landing model expects the machine to answer; the broad default while the product is not measured. */
    private List<ShapeCurve> curves(ProductResult product, double widthM) {
        if (product.sieve() == null || product.density() == null) {
            return ShapeCurves.broad();
        }
        double radiusM = machine.discRadiusM() == null ? ThrowModel.USUAL_DISC_RADIUS_M : machine.discRadiusM();
        double rpm = machine.discSpeedAt540Rpm() == null ? ThrowModel.USUAL_DISC_RPM : machine.discSpeedAt540Rpm();
        return ShapeCurves.of(
                product.sieve().distribution(),
                1000 * product.density().meanKgPerL() / ParticleDensities.USUAL_PACKING,
                ThrowModel.outletSpeedMPerS(radiusM, rpm),
                machine.wantedHeightM() == null ? RankContext.USUAL_HEIGHT_M : machine.wantedHeightM(),
                widthM);
    }

    private void verdict(List<TrayTestResult> results) {
        if (results.isEmpty()) {
            reader.need(false, Step.TRAYS, "missing.trayTest", "/trays/tests");
            return;
        }
        TrayTestResult last = results.get(results.size() - 1);
        String at = "/trays/tests/" + last.index();
        Arg cv = Arg.number(last.evenness().cvPercent(), 0, Unit.PERCENT);
        Arg low = Arg.number(last.evenness().cv().lowPercent(), 0, Unit.PERCENT);
        Arg high = Arg.number(last.evenness().cv().highPercent(), 0, Unit.PERCENT);
        EvennessVerdict verdict = last.evenness().verdict();
        Finding finding = switch (verdict) {
            case GOOD -> Finding.note(Step.TRAYS, "trays.good", cv, low, high);
            case ACCEPTABLE -> Finding.note(Step.TRAYS, "trays.acceptable", cv, low, high);
            case ADJUST -> Finding.warn(Step.TRAYS, "trays.adjust", cv, low, high);
            case DO_NOT_SPREAD -> Finding.stop(Step.TRAYS, "trays.doNotSpread", cv, low, high);
        };
        reader.add(finding.at(at).from("source.cvLimits"));
    }

    private static Uniformity last(List<TrayTestResult> results) {
        return results.get(results.size() - 1).evenness();
    }

    private static boolean levelInOrder(MachineCheckResult machineCheck) {
        return machineCheck.levelDifferenceM() != null
                && Math.abs(machineCheck.levelDifferenceM()) <= MachineCheck.WORST_LEVEL_M + 1e-9
                && (machineCheck.tyreDifferenceBar() == null
                        || Math.abs(machineCheck.tyreDifferenceBar()) <= MachineCheck.WORST_TYRE_BAR + 1e-9);
    }

    private static boolean ptoInOrder(MachineCheckResult machineCheck) {
        return machineCheck.ptoRpm() != null;
    }

    private static boolean outletsInOrder(RateResult rate, MachineCheckResult machineCheck) {
        if (rate.bucketTests().isEmpty()) {
            return false;
        }
        BucketResult last = rate.bucketTests().get(rate.bucketTests().size() - 1);
        return last.leftRightPercent() != null
                && Math.abs(last.leftRightPercent()) <= BucketAssessment.WORST_LEFT_RIGHT_PERCENT
                && machineCheck.vanes().stream().noneMatch(vane -> vane.failed());
    }

    /** Kinds in which a tray can be read. */
    static AmountKind kindOrMass(AmountKind kind) {
        return kind == AmountKind.VOLUME || kind == AmountKind.HEIGHT ? kind : AmountKind.MASS;
    }
}
