package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.entry.YesNo;
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
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.TrayLayout;
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
     * @param now what is set now; null without a tramline width
     * @param order what is known of machine and product before a lever is moved
     * @param machineBlocks whether the machine check stops the tray test
     */
    static Assessed<TraysResult> assess(
            ReadSetup read,
            MachineProfile machine,
            ProductResult product,
            RateResult rate,
            @Nullable MachineSet now,
            MachineOrder order,
            boolean machineBlocks) {
        TraysAssessor assessor = new TraysAssessor(read, machine, product);
        return new Assessed<>(assessor.trays(rate, now, order, machineBlocks), assessor.findings);
    }

    private TraysResult trays(RateResult rate, @Nullable MachineSet now, MachineOrder order, boolean machineBlocks) {
        TestGround ground = TestGround.of(read);
        Assessed<WindLimits> weather = TestWeather.assess(read);
        findings.addAll(weather.findings());
        if (machineBlocks) {
            findings.add(Finding.stop(Step.TRAYS, "trays.yardFirst")
                    .at(MachineCheckPaths.MACHINE_CHECK.only().pointer()));
        }
        findings.addAll(SwitchFindings.of(read));
        Double widthM = read.number(StartPaths.TRAMLINE_WIDTH);
        if (widthM == null || now == null) {
            findings.add(Finding.missing(Step.TRAYS, "missing.widthFirst"));
            return new TraysResult(
                    null, null, null, List.of(), List.of(), List.of(), null, null, null, weather.present());
        }
        TrayLayout layout = ground.layout(widthM);
        findings.addAll(TestGround.findings(layout));
        TrayNoise noise = TrayNoise.of(read, product);
        RatePlan ratePlan = rate.plan();
        CatchPlan plan = ratePlan == null
                ? null
                : CatchPlans.of(ratePlan.amounts().productKgPerHa(), ground.areaM2(), noise.granuleG(), noise.stepG());
        StripLoad strip = ratePlan == null || plan == null ? null : strip(ratePlan.amounts(), plan, widthM);
        Tramlines tramlines = now.conditions().tramlines();
        TrayTestAssessor assessor = new TrayTestAssessor(read, product, ground, tramlines, plan, noise, findings);
        List<TrayTestResult> all = new DrivenTests(read, machine, weather.present(), assessor, findings)
                .all(
                        now,
                        new TestDifferences(
                                machine.levers(), product, new FlowChange(machine, rate), weather.present()));
        List<TrayTestResult> tests =
                all.stream().filter(test -> test.proof().comparable()).toList();
        // a test from before a part was changed is there to compare, and tells nothing of the machine as it is
        List<TrayTestResult> ofThisMachine =
                tests.stream().filter(test -> !test.conditions().partChanged()).toList();
        verdict(ofThisMachine, all.isEmpty());
        Assessed<List<TestComparison>> comparisons = TestComparisons.of(tests, machine.levers());
        findings.addAll(comparisons.findings());
        Assessed<SinglePassTest> singlePass = SinglePassAssessor.assess(read, product, widthM, ground);
        findings.addAll(singlePass.findings());
        // after the results of the tests, which are read first
        findings.addAll(TrayPlanFindings.of(layout, plan, strip));
        return new TraysResult(
                layout,
                plan,
                strip,
                IntStream.range(0, read.get(TrayPaths.TESTS).size())
                        .mapToObj(i -> assessor.places(TrayPaths.TESTS.item(i)))
                        .toList(),
                all,
                comparisons.present(),
                ofThisMachine.isEmpty()
                        ? null
                        : CropLoss.of(last(ofThisMachine).evenness().field().medianPercent()),
                advice(ofThisMachine, widthM, order, ground, weather.present()),
                singlePass.result(),
                weather.present());
    }

    private static StripLoad strip(RatePlan.Amounts amounts, CatchPlan plan, double widthM) {
        return StripLoad.of(amounts.productKgPerHa(), amounts.nitrogenKgPerHa(), plan.runsNeeded(), widthM);
    }

    private @Nullable Advice advice(
            List<TrayTestResult> tests, double widthM, MachineOrder order, TestGround ground, WindLimits limits) {
        return Advisor.advise(new AdviceInput(
                DoneTests.of(read, tests),
                new LeverRules(machine.levers(), read.get(TrayPaths.TWO_LEVERS) == YesNo.YES),
                order,
                new Tramlines(widthM, ground.driving()),
                limits));
    }

    /** @param none whether there is no test at all; where there are others, they are reported */
    private void verdict(List<TrayTestResult> tests, boolean none) {
        if (none) {
            findings.add(Finding.missing(Step.TRAYS, "missing.trayTest").at(TrayPaths.TESTS.pointer()));
        }
        if (tests.isEmpty()) {
            return;
        }
        TrayTestResult counts = tests.stream()
                .filter(test -> test.proof().proves())
                .reduce((before, after) -> after)
                .orElse(last(tests));
        FieldCv field = counts.evenness().field();
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
        findings.add(finding.at(TrayPaths.TESTS.item(counts.index()).pointer()).from("source.cvLimits"));
    }

    private static TrayTestResult last(List<TrayTestResult> tests) {
        return tests.get(tests.size() - 1);
    }
}
