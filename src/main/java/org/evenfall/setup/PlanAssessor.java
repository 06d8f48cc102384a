package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.OpeningTable;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.NitrogenEfficiency;
import org.evenfall.rate.Nutrients;
import org.evenfall.rate.PlanInput;
import org.evenfall.rate.Plans;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.setup.path.StartPaths;
import org.jspecify.annotations.Nullable;

/** Step 5: how much product, how fast, on what, and what it costs. */
final class PlanAssessor {

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private PlanAssessor(ReadSetup read) {
        this.read = read;
    }

    /**
     * @param tolerancePercent allowed deviation of the rate, %
     * @param table opening table for this product; null while there is none
     */
    static Assessed<RatePlan> assess(
            ReadSetup read,
            MachineProfile machine,
            ProductResult product,
            double tolerancePercent,
            @Nullable OpeningTable table) {
        PlanAssessor assessor = new PlanAssessor(read);
        RatePlan plan = assessor.plan(machine, product, tolerancePercent, table);
        return new Assessed<>(plan, assessor.findings);
    }

    private @Nullable RatePlan plan(
            MachineProfile machine, ProductResult product, double tolerancePercent, @Nullable OpeningTable table) {
        Double nitrogenPercent = product.nitrogenPercent();
        Double productRate = productRateKgPerHa(nitrogenPercent);
        if (nitrogenPercent == null || productRate == null) {
            return null;
        }
        RatePlan plan = Plans.of(new PlanInput(
                new PlanInput.Rate(productRate, nitrogenPercent),
                new PlanInput.Field(
                        read.number(StartPaths.TRAMLINE_WIDTH),
                        read.number(RatePaths.SPEED),
                        read.number(RatePaths.AREA)),
                new PlanInput.Containers(
                        read.number(RatePaths.BAG_MASS),
                        read.number(RatePaths.HOPPER_VOLUME),
                        read.number(RatePaths.BUCKET_VOLUME)),
                product.density() == null ? null : product.density().meanKgPerL(),
                new PlanInput.Outlets(machine.outlets(), table),
                tolerancePercent,
                new PlanInput.Prices(
                        read.number(RatePaths.PRICE),
                        read.number(RatePaths.OTHER_PRICE),
                        read.number(RatePaths.OTHER_NITROGEN),
                        effectivenessPercent())));
        addFindings(plan, table);
        return plan;
    }

    /** The share of the nitrogen counted on as typed, else as chosen, %; for the money only. */
    private double effectivenessPercent() {
        NitrogenEfficiency chosen = read.get(RatePaths.NITROGEN_EFFICIENCY);
        boolean deducts = chosen.percent() < NitrogenEfficiency.COUNT_ALL.percent();
        if (deducts && (read.get(ProductPaths.TREATED) == YesNo.YES || !IdentityAssessor.isUrea(read))) {
            findings.add(Finding.note(Step.RATE, "rate.efficiencyOfUntreated")
                    .at(RatePaths.NITROGEN_EFFICIENCY.pointer())
                    .from("source.efficiency"));
        }
        Double typed = read.number(RatePaths.EFFECTIVENESS);
        return typed == null ? chosen.percent() : typed;
    }

    /** The product rate as typed, or from the nitrogen wanted; null while it cannot be known. */
    private @Nullable Double productRateKgPerHa(@Nullable Double nitrogenPercent) {
        boolean byProduct = read.get(RatePaths.BASIS) == RateBasis.PRODUCT;
        Quantity<?> entry = byProduct ? RatePaths.PRODUCT_RATE : RatePaths.NITROGEN_RATE;
        Double rate = byProduct ? read.number(RatePaths.PRODUCT_RATE) : nitrogenKgPerHa();
        if (rate == null) {
            findings.add(Finding.missing(Step.RATE, "missing.rate").at(entry.pointer()));
            return null;
        }
        if (byProduct || nitrogenPercent == null) {
            return rate;
        }
        double product = Nutrients.productKgPerHa(rate, nitrogenPercent);
        Finding outside = LimitCheck.computed(
                product, RatePaths.PRODUCT_RATE.range(read.setup()), RatePaths.NITROGEN_RATE.path());
        if (outside != null) {
            findings.add(outside);
        }
        return product;
    }

    /** Nitrogen wanted; fertiliser units by the basis that was chosen for them. */
    private @Nullable Double nitrogenKgPerHa() {
        Double typed = read.number(RatePaths.NITROGEN_RATE);
        if (typed == null || !read.isInFertiliserUnits()) {
            return typed;
        }
        UnitsBasis basis = read.get(RatePaths.UNITS_BASIS);
        if (basis == UnitsBasis.UNANSWERED) {
            findings.add(Finding.stop(Step.RATE, "rate.unitsBasis").at(RatePaths.UNITS_BASIS.pointer()));
            return null;
        }
        return typed * Nutrients.unitKgPerHa(basis);
    }

    private void addFindings(RatePlan plan, @Nullable OpeningTable table) {
        if (plan.flow().outletKgPerMin() != null && plan.bucket().seconds() == null) {
            findings.add(Finding.note(Step.RATE, "rate.noBucket", halfMinute(plan.bucket()))
                    .at(RatePaths.BUCKET_VOLUME.pointer())
                    .from("source.bucket"));
        }
        if (table != null && plan.flow().kgPerMin() != null && plan.flow().firstOpening() == null) {
            findings.add(Finding.warn(
                            Step.RATE,
                            "rate.beyondTable",
                            Arg.number(plan.flow().kgPerMin(), 0, Unit.KG_PER_MIN))
                    .at(MachinePaths.OPENINGS.pointer()));
        }
    }

    /** What one outlet gives in 30 s, L, or kg while the density is not known. */
    private static Arg halfMinute(RatePlan.Bucket bucket) {
        if (bucket.halfMinuteLitres() != null) {
            return Arg.number(bucket.halfMinuteLitres(), 0, Unit.L);
        }
        return Arg.number(bucket.halfMinuteKg() == null ? 0 : bucket.halfMinuteKg(), 0, Unit.KG);
    }
}
