package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MachineCheckPaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.Advisor;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.CatchPlans;
import org.evenfall.trays.CropLoss;
import org.evenfall.trays.FieldCv;
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

    private final ReadSetup read;
    private final MachineProfile machine;
    private final ProductResult product;
    private final List<Finding> findings = new ArrayList<>();

    private TraysAssessor(ReadSetup read, MachineProfile machine, ProductResult product) {
        this.read = read;
        this.machine = machine;
        this.product = product;
    }

    /**
     * @param order what is in order before a lever is moved
     * @param machineBlocks whether the machine check stops the field test
     */
    static Assessed<TraysResult> assess(
            ReadSetup read,
            MachineProfile machine,
            ProductResult product,
            RateResult rate,
            MachineOrder order,
            boolean machineBlocks) {
        TraysAssessor assessor = new TraysAssessor(read, machine, product);
        return new Assessed<>(assessor.trays(rate, order, machineBlocks), assessor.findings);
    }

    private TraysResult trays(RateResult rate, MachineOrder order, boolean machineBlocks) {
        TestGround ground = TestGround.of(read);
        Assessed<WindLimits> weather = TestWeather.assess(read);
        findings.addAll(weather.findings());
        if (machineBlocks) {
            findings.add(Finding.stop(Step.TRAYS, "trays.yardFirst")
                    .at(MachineCheckPaths.MACHINE_CHECK.only().pointer()));
        }
        Double widthM = read.number(StartPaths.TRAMLINE_WIDTH);
        if (widthM == null) {
            findings.add(Finding.missing(Step.TRAYS, "missing.widthFirst"));
            return new TraysResult(null, null, List.of(), List.of(), null, null, null);
        }
        TrayLayout layout = ground.layout(widthM);
        findings.addAll(TestGround.findings(layout));
        TrayNoise noise = TrayNoise.of(read, product);
        CatchPlan plan = rate.plan() == null
                ? null
                : CatchPlans.of(
                        rate.plan().amounts().productKgPerHa(), ground.areaM2(), noise.granuleG(), noise.stepG());
        List<TrayTestResult> tests =
                tests(new TrayTestAssessor(read, product, ground, layout, plan, noise, findings), weather.present());
        verdict(tests);
        Assessed<List<TestComparison>> comparisons = TestComparisons.of(tests, machine.levers());
        findings.addAll(comparisons.findings());
        Assessed<SinglePassTest> singlePass = SinglePassAssessor.assess(read, product, widthM, ground);
        findings.addAll(singlePass.findings());
        return new TraysResult(
                layout,
                plan,
                tests,
                comparisons.present(),
                tests.isEmpty()
                        ? null
                        : CropLoss.of(last(tests).evenness().field().medianPercent()),
                advice(tests, widthM, order, ground, weather.present()),
                singlePass.result());
    }

    private List<TrayTestResult> tests(TrayTestAssessor assessor, WindLimits limits) {
        List<TrayTestResult> results = new ArrayList<>();
        for (int i = 0; i < read.get(TrayPaths.TESTS).size(); i++) {
            EntryPath<TrayTestEntry> at = TrayPaths.TESTS.item(i);
            Assessed<ReadSettings> settings = SettingsAssessor.assess(read, TrayPaths.TEST_SETTINGS.at(at), machine);
            findings.addAll(settings.findings());
            Double wind = read.number(TrayPaths.TEST_WIND, at);
            Finding windy = TestWeather.duringTest(
                    limits, wind, TrayPaths.TEST_WIND.at(at).pointer());
            if (windy != null) {
                findings.add(windy);
            }
            Uniformity evenness = assessor.evenness(at);
            if (evenness != null) {
                results.add(new TrayTestResult(
                        i,
                        at.get(read.setup()).date(),
                        evenness,
                        settings.present(),
                        read.number(TrayPaths.TEST_OPENING_LEFT, at),
                        read.number(TrayPaths.TEST_OPENING_RIGHT, at),
                        wind));
            }
        }
        return results;
    }

    private @Nullable Advice advice(
            List<TrayTestResult> tests, double widthM, MachineOrder order, TestGround ground, WindLimits limits) {
        return Advisor.advise(
                new AdviceInput(
                        tests.stream()
                                .map(test -> new AdviceInput.DoneTest(
                                        test.evenness(), test.settings().levers(), test.windMPerS()))
                                .toList(),
                        new LeverRules(machine.levers(), read.get(TrayPaths.TWO_LEVERS) == YesNo.YES),
                        order,
                        new Tramlines(widthM, ground.driving()),
                        limits),
                () -> curves(widthM));
    }

    /** How the landing model expects the machine to answer; the broad default while the product is not measured. */
    private List<ShapeCurve> curves(double widthM) {
        if (product.sieve() == null || product.density() == null) {
            return ShapeCurves.broad();
        }
        double particleKgPerM3 =
                Unit.KG_PER_L.to(Unit.KG_PER_M3, product.density().meanKgPerL()) / ParticleDensities.USUAL_PACKING;
        return ShapeCurves.of(
                MachineDefaults.of(machine).throwOf(product.sieve().distribution(), particleKgPerM3), widthM);
    }

    private void verdict(List<TrayTestResult> tests) {
        if (tests.isEmpty()) {
            findings.add(Finding.missing(Step.TRAYS, "missing.trayTest").at(TrayPaths.TESTS.pointer()));
            return;
        }
        TrayTestResult last = last(tests);
        FieldCv field = last.evenness().field();
        Arg[] figures = {
            Arg.number(field.medianPercent(), 0, Unit.PERCENT),
            Arg.number(field.lowPercent(), 0, Unit.PERCENT),
            Arg.number(field.highPercent(), 0, Unit.PERCENT),
            Arg.number(field.statedChancePercent(), 0, Unit.PERCENT)
        };
        Finding finding = switch (field.verdict()) {
            case EVEN -> Finding.note(Step.TRAYS, field.good() ? "trays.evenGood" : "trays.even", figures);
            case PROBABLY_EVEN -> Finding.note(Step.TRAYS, "trays.probablyEven", figures);
            case NOT_EVEN_ENOUGH -> Finding.warn(Step.TRAYS, "trays.notEvenEnough", figures);
            case DO_NOT_SPREAD -> Finding.stop(Step.TRAYS, "trays.doNotSpread", figures);
        };
        findings.add(finding.at(TrayPaths.TESTS.item(last.index()).pointer()).from("source.cvLimits"));
    }

    private static TrayTestResult last(List<TrayTestResult> tests) {
        return tests.get(tests.size() - 1);
    }
}
