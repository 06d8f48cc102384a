package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.OpeningTable;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.AgainstOther;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.Flows;
import org.evenfall.rate.HopperCheck;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.evenfall.rate.SpeedRuns;
import org.evenfall.setup.entry.SpeedRunEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.jspecify.annotations.Nullable;

/** Step 5: the plan and the checks of it. */
final class RateAssessor {

    /** Source: UMass Extension, rotary spreader calibration. Allowed deviation of the rate where none is typed, %. */
    static final double USUAL_TOLERANCE_PERCENT = 5;

    /** Assumption: a measured speed that differs by more is reported, %; the rate differs by as much. */
    static final double REPORTED_SPEED_PERCENT = 3;

    /** Rounding room in which a deviation still counts as within its limit, points. */
    private static final double ROUNDING = 1e-9;

    private final ReadSetup read;
    private final double tolerancePercent;
    private final List<Finding> findings = new ArrayList<>();

    private RateAssessor(ReadSetup read) {
        this.read = read;
        this.tolerancePercent = tolerancePercent(read);
    }

    /** Allowed deviation of the rate as typed, else the usual one, %. */
    static double tolerancePercent(ReadSetup read) {
        Double tolerance = read.number(RatePaths.TOLERANCE);
        return tolerance == null ? USUAL_TOLERANCE_PERCENT : tolerance;
    }

    static Assessed<RateResult> assess(ReadSetup read, MachineProfile machine, ProductResult product) {
        RateAssessor assessor = new RateAssessor(read);
        return new Assessed<>(assessor.rate(machine, product), assessor.findings);
    }

    private RateResult rate(MachineProfile machine, ProductResult product) {
        OpeningTable table = table(machine, product);
        Assessed<RatePlan> planned = PlanAssessor.assess(read, machine, product, tolerancePercent, table);
        findings.addAll(planned.findings());
        RatePlan plan = planned.result();
        Assessed<NitrogenSplits> splits = NitrogenSplitsAssessor.assess(read, plan);
        findings.addAll(splits.findings());
        SpeedCheck speed = speed(plan);
        Assessed<BucketTestsAssessor.Tests> buckets =
                BucketTestsAssessor.assess(read, wanted(plan, speed, machine, table), product, plan != null);
        findings.addAll(buckets.findings());
        if (machine.rateSetting() == RateSetting.WEIGHING) {
            findings.add(Finding.note(Step.RATE, "rate.weighing").at(RatePaths.BUCKET_TESTS.pointer()));
        }
        return new RateResult(
                plan,
                againstOther(product),
                splits.result(),
                speed,
                buckets.present().results(),
                buckets.present().indexes(),
                hopper(plan));
    }

    private @Nullable AgainstOther againstOther(ProductResult product) {
        Double nitrogen = product.nitrogenPercent();
        Double other = read.number(RatePaths.OTHER_NITROGEN);
        return nitrogen == null || other == null
                ? null
                : AgainstOther.of(
                        nitrogen,
                        product.density() == null ? null : product.density().meanKgPerL(),
                        other,
                        read.number(RatePaths.OTHER_DENSITY));
    }

    /** The handbook's table for this product: flow in proportion to bulk density, a first guess; a factor has none. */
    private static @Nullable OpeningTable table(MachineProfile machine, ProductResult product) {
        if (machine.rateSetting().byFactor() || !OpeningTable.usable(machine.openings())) {
            return null;
        }
        OpeningTable table = new OpeningTable(machine.openings());
        return machine.tableDensityKgPerL() == null || product.density() == null
                ? table
                : table.scaled(product.density().meanKgPerL() / machine.tableDensityKgPerL());
    }

    private BucketAssessment.Wanted wanted(
            @Nullable RatePlan plan, @Nullable SpeedCheck speed, MachineProfile machine, @Nullable OpeningTable table) {
        Double widthM = read.number(StartPaths.TRAMLINE_WIDTH);
        // a terminal gives what its own speed asks for: in the test the planned one
        Double kmPerH = speed != null && !machine.rateSetting().byFactor()
                ? Double.valueOf(speed.meanKmPerH())
                : plan == null ? null : plan.flow().speedKmPerH();
        Double flow = plan == null || widthM == null || kmPerH == null
                ? null
                : Double.valueOf(Flows.kgPerMin(plan.amounts().productKgPerHa(), widthM, kmPerH));
        return new BucketAssessment.Wanted(
                flow,
                widthM,
                kmPerH,
                machine.outlets(),
                tolerancePercent,
                table,
                speed == null ? 0 : speed.standardErrorKmPerH(),
                machine.rateSetting().byFactor() ? machine.factorRule() : null);
    }

    private @Nullable SpeedCheck speed(@Nullable RatePlan plan) {
        List<SpeedRuns.Run> runs = new ArrayList<>();
        for (int i = 0; i < read.get(RatePaths.SPEED_RUNS).size(); i++) {
            EntryPath<SpeedRunEntry> at = RatePaths.SPEED_RUNS.item(i);
            Double distance = read.number(RatePaths.RUN_DISTANCE, at);
            Double time = read.number(RatePaths.RUN_TIME, at);
            if (distance != null && time != null) {
                runs.add(new SpeedRuns.Run(distance, time));
            }
        }
        if (runs.isEmpty()) {
            return null;
        }
        SpeedCheck check = SpeedRuns.of(runs, plan == null ? null : plan.flow().speedKmPerH());
        if (check.deviationPercent() != null
                && Math.abs(check.deviationPercent()) > REPORTED_SPEED_PERCENT + ROUNDING) {
            findings.add(Finding.warn(
                            Step.RATE,
                            "rate.speedOff",
                            Arg.number(check.meanKmPerH(), 1, Unit.KM_PER_H),
                            Arg.number(Math.abs(check.deviationPercent()), 0, Unit.PERCENT))
                    .at(RatePaths.SPEED_RUNS.pointer())
                    .from("source.speed"));
        }
        return check;
    }

    private @Nullable HopperCheck hopper(@Nullable RatePlan plan) {
        Double used = read.number(RatePaths.HOPPER_USED);
        Double area = read.number(RatePaths.AREA_DONE);
        if (used == null || area == null || plan == null) {
            return null;
        }
        HopperCheck check = HopperCheck.of(used, area, plan.amounts().productKgPerHa());
        if (Math.abs(check.deviationPercent()) > tolerancePercent + ROUNDING) {
            findings.add(Finding.warn(
                            Step.RATE,
                            "rate.hopper",
                            Arg.number(check.kgPerHa(), 0, Unit.KG_PER_HA),
                            Arg.number(check.deviationPercent(), 0, Unit.PERCENT))
                    .at(RatePaths.HOPPER_USED.pointer())
                    .from("source.rateTolerance"));
        }
        return check;
    }
}
