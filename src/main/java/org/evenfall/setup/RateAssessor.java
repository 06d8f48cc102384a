package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.OpeningTable;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.Flows;
import org.evenfall.rate.HopperCheck;
import org.evenfall.rate.Nutrients;
import org.evenfall.rate.PlanInput;
import org.evenfall.rate.Plans;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.evenfall.rate.SpeedRuns;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.RateEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SpeedRunEntry;
import org.jspecify.annotations.Nullable;

/** Step 5: the plan and the checks of it. */
final class RateAssessor {

    /** Allowed deviation of the rate where none was typed, %. UMass Extension, rotary spreader calibration. */
    static final double USUAL_TOLERANCE_PERCENT = 5;

    private RateAssessor() {}

    static RateResult assess(
            Setup setup,
            MachineProfile machine,
            @Nullable Double tramlineWidthM,
            ProductResult product,
            EntryReader reader) {
        RateEntries entries = setup.rate();
        Double tolerance = reader.read(entries.plan().tolerance(), Fields.TOLERANCE, "/rate/plan/tolerance");
        double tolerancePercent = tolerance == null ? USUAL_TOLERANCE_PERCENT : tolerance;
        OpeningTable table = table(machine, product);
        RatePlan plan = plan(entries.plan(), machine, tramlineWidthM, product, tolerancePercent, table, reader);
        SpeedCheck speed = speed(entries.speedRuns(), plan, reader);
        Double speedKmPerH = speed != null
                ? Double.valueOf(speed.meanKmPerH())
                : plan == null ? null : plan.flow().speedKmPerH();
        List<BucketResult> tests = buckets(
                entries.bucketTests(),
                new BucketAssessment.Wanted(
                        plan == null || tramlineWidthM == null || speedKmPerH == null
                                ? null
                                : Double.valueOf(
                                        Flows.kgPerMin(plan.amounts().productKgPerHa(), tramlineWidthM, speedKmPerH)),
                        tramlineWidthM,
                        speedKmPerH,
                        machine.outlets(),
                        tolerancePercent,
                        table),
                reader);
        tell(plan, tests, tolerancePercent, reader);
        return new RateResult(plan, speed, tests, hopper(entries, plan, tolerancePercent, reader));
    }

    /** The handbook's table for this product: flow in proportion to bulk density, a first guess. */
    private static @Nullable OpeningTable table(MachineProfile machine, ProductResult product) {
        if (!OpeningTable.usable(machine.openings())) {
            return null;
        }
        OpeningTable table = new OpeningTable(machine.openings());
        return machine.tableDensityKgPerL() == null || product.density() == null
                ? table
                : table.scaled(product.density().meanKgPerL() / machine.tableDensityKgPerL());
    }

    private static @Nullable RatePlan plan(
            PlanEntries entries,
            MachineProfile machine,
            @Nullable Double widthM,
            ProductResult product,
            double tolerancePercent,
            @Nullable OpeningTable table,
            EntryReader reader) {
        String at = "/rate/plan/";
        Double speed = reader.read(entries.speed(), Fields.SPEED, at + "speed");
        Double area = reader.read(entries.area(), Fields.AREA, at + "area");
        Double bag = reader.read(entries.bagMass(), Fields.BAG_MASS, at + "bagMass");
        Double hopper = reader.read(entries.hopperVolume(), Fields.HOPPER_VOLUME, at + "hopperVolume");
        Double bucket = reader.read(entries.bucketVolume(), Fields.BUCKET_VOLUME, at + "bucketVolume");
        Double price = reader.read(entries.price(), Fields.PRICE, at + "price");
        Double otherPrice = reader.read(entries.otherPrice(), Fields.PRICE, at + "otherPrice");
        Double otherNitrogen =
                reader.read(entries.otherNitrogen(), Fields.NITROGEN_SHARE, at + "otherNitrogen", Step.RATE);
        Double effectiveness = reader.read(entries.effectiveness(), Fields.EFFECTIVENESS, at + "effectiveness");
        reader.need(speed != null || !entries.speed().isBlank(), Step.RATE, "missing.speed", at + "speed");
        Double nitrogenPercent = product.nitrogenPercent();
        Double nitrogen = nitrogenKgPerHa(entries, reader);
        Double rate = reader.read(entries.productRate(), Fields.PRODUCT_RATE, at + "productRate");
        boolean byProduct = entries.basis() == RateBasis.PRODUCT;
        reader.need(
                byProduct ? rate != null : nitrogen != null,
                Step.RATE,
                "missing.rate",
                at + (byProduct ? "productRate" : "nitrogenRate"));
        if (nitrogenPercent == null || (byProduct ? rate == null : nitrogen == null)) {
            return null;
        }
        double productRate = byProduct && rate != null
                ? rate
                : Nutrients.productKgPerHa(nitrogen == null ? 0 : nitrogen, nitrogenPercent);
        if (!byProduct) {
            reader.read(
                    new EnteredQuantity(Double.toString(Math.rint(productRate * 10) / 10), Unit.KG_PER_HA),
                    Fields.PRODUCT_RATE,
                    at + "nitrogenRate");
        }
        RatePlan plan = Plans.of(new PlanInput(
                new PlanInput.Rate(productRate, nitrogenPercent),
                new PlanInput.Field(widthM, speed, area),
                new PlanInput.Containers(bag, hopper, bucket),
                product.density() == null ? null : product.density().meanKgPerL(),
                new PlanInput.Outlets(machine.outlets(), table),
                tolerancePercent,
                new PlanInput.Prices(price, otherPrice, otherNitrogen, effectiveness == null ? 100 : effectiveness)));
        if (plan.flow().outletKgPerMin() != null && plan.bucket().seconds() == null) {
            reader.add(Finding.note(
                            Step.RATE,
                            "rate.noBucket",
                            Arg.number(
                                    plan.bucket().halfMinuteLitres() == null
                                            ? 0
                                            : plan.bucket().halfMinuteLitres(),
                                    0,
                                    Unit.L))
                    .at(at + "bucketVolume"));
        }
        if (table != null && plan.flow().kgPerMin() != null && plan.flow().firstOpening() == null) {
            reader.add(Finding.warn(
                            Step.RATE,
                            "rate.beyondTable",
                            Arg.number(plan.flow().kgPerMin(), 0, Unit.KG_PER_MIN))
                    .at("/machine/openings"));
        }
        return plan;
    }

    private static @Nullable Double nitrogenKgPerHa(PlanEntries entries, EntryReader reader) {
        String at = "/rate/plan/nitrogenRate";
        EnteredQuantity typed = entries.nitrogenRate();
        if (typed.unit() != Unit.UNITS) {
            return reader.read(typed, Fields.NITROGEN_RATE, at);
        }
        if (entries.unitsBasis() == UnitsBasis.UNANSWERED) {
            if (!typed.isBlank()) {
                reader.add(Finding.stop(Step.RATE, "rate.unitsBasis").at("/rate/plan/unitsBasis"));
            }
            return null;
        }
        Double units = reader.read(typed.withUnit(Unit.KG_PER_HA), Fields.NITROGEN_RATE, at);
        return units == null ? null : Double.valueOf(units * Nutrients.unitKgPerHa(entries.unitsBasis()));
    }

    private static @Nullable SpeedCheck speed(List<SpeedRunEntry> runs, @Nullable RatePlan plan, EntryReader reader) {
        List<Double> kmPerH = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Double distance =
                    reader.read(runs.get(i).distance(), Fields.DISTANCE, "/rate/speedRuns/" + i + "/distance");
            Double time = reader.read(runs.get(i).time(), Fields.RUN_TIME, "/rate/speedRuns/" + i + "/time");
            if (distance != null && time != null) {
                kmPerH.add(Flows.kmPerH(distance, time));
            }
        }
        if (kmPerH.isEmpty()) {
            return null;
        }
        SpeedCheck check =
                SpeedRuns.of(kmPerH, plan == null ? null : plan.flow().speedKmPerH());
        if (check.deviationPercent() != null && Math.abs(check.deviationPercent()) > 3) {
            reader.add(Finding.warn(
                            Step.RATE,
                            "rate.speedOff",
                            Arg.number(check.meanKmPerH(), 1, Unit.KM_PER_H),
                            Arg.number(Math.abs(check.deviationPercent()), 0, Unit.PERCENT))
                    .at("/rate/speedRuns"));
        }
        return check;
    }

    private static List<BucketResult> buckets(
            List<BucketEntry> entries, BucketAssessment.Wanted wanted, EntryReader reader) {
        List<BucketAssessment.Catch> catches = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            BucketEntry entry = entries.get(i);
            String at = "/rate/bucketTests/" + i + "/";
            Double left = reader.read(entry.openingLeft(), Fields.OPENING, at + "openingLeft", Step.RATE);
            Double right = reader.read(entry.openingRight(), Fields.OPENING, at + "openingRight", Step.RATE);
            Double time = reader.read(entry.time(), Fields.BUCKET_TIME, at + "time");
            Double empty = reader.read(entry.bucketEmpty(), Fields.BUCKET_EMPTY, at + "bucketEmpty");
            double tare = empty == null ? 0 : empty;
            List<Double> leftKg =
                    net(reader.readAll(entry.left(), Fields.BUCKET_MASS, at + "left"), tare, at + "left", reader);
            List<Double> rightKg =
                    net(reader.readAll(entry.right(), Fields.BUCKET_MASS, at + "right"), tare, at + "right", reader);
            if (time != null && (left != null || right != null) && !(leftKg.isEmpty() && rightKg.isEmpty())) {
                double openingLeft = left == null ? right == null ? 0 : right : left;
                catches.add(new BucketAssessment.Catch(
                        openingLeft, right == null ? openingLeft : right, time, leftKg, rightKg));
            }
        }
        return BucketAssessment.assess(catches, wanted);
    }

    private static List<Double> net(List<Double> gross, double tareKg, String pointer, EntryReader reader) {
        List<Double> net = new ArrayList<>();
        for (double kg : gross) {
            if (kg <= tareKg) {
                reader.add(Finding.stop(Step.RATE, "rate.lighterThanBucket", Arg.number(kg, 1, Unit.KG))
                        .at(pointer));
            } else {
                net.add(kg - tareKg);
            }
        }
        return net;
    }

    private static void tell(
            @Nullable RatePlan plan, List<BucketResult> tests, double tolerancePercent, EntryReader reader) {
        if (tests.isEmpty()) {
            reader.need(false, Step.RATE, "missing.bucketTest", "/rate/bucketTests");
            return;
        }
        BucketResult last = tests.get(tests.size() - 1);
        String at = "/rate/bucketTests/" + (tests.size() - 1);
        if (plan == null || last.agreement().deviationPercent() == null) {
            return;
        }
        if (Math.abs(last.agreement().deviationPercent()) > tolerancePercent + 1e-9) {
            reader.add(Finding.warn(
                            Step.RATE,
                            last.agreement().deviationPercent() > 0 ? "rate.tooMuch" : "rate.tooLittle",
                            Arg.number(Math.abs(last.agreement().deviationPercent()), 0, Unit.PERCENT),
                            Arg.number(tolerancePercent, 0, Unit.PERCENT))
                    .at(at));
        }
        if (last.agreement().leftRightPercent() != null
                && Math.abs(last.agreement().leftRightPercent()) > BucketAssessment.WORST_LEFT_RIGHT_PERCENT + 1e-9) {
            reader.add(Finding.warn(
                            Step.RATE,
                            "rate.leftRight",
                            Arg.number(Math.abs(last.agreement().leftRightPercent()), 0, Unit.PERCENT))
                    .at(at));
        }
        if (last.agreement().repeatSpreadPercent() != null
                && last.agreement().repeatSpreadPercent() > BucketAssessment.WORST_REPEAT_PERCENT + 1e-9) {
            reader.add(Finding.warn(
                            Step.RATE,
                            "rate.repeats",
                            Arg.number(last.agreement().repeatSpreadPercent(), 1, Unit.PERCENT))
                    .at(at));
        }
    }

    private static @Nullable HopperCheck hopper(
            RateEntries entries, @Nullable RatePlan plan, double tolerancePercent, EntryReader reader) {
        Double used = reader.read(entries.hopperUsed(), Fields.HOPPER_USED, "/rate/hopperUsed");
        Double area = reader.read(entries.areaDone(), Fields.AREA, "/rate/areaDone");
        if (used == null || area == null || plan == null) {
            return null;
        }
        HopperCheck check = HopperCheck.of(used, area, plan.amounts().productKgPerHa());
        if (Math.abs(check.deviationPercent()) > tolerancePercent) {
            reader.add(Finding.warn(
                            Step.RATE,
                            "rate.hopper",
                            Arg.number(check.kgPerHa(), 0, Unit.KG_PER_HA),
                            Arg.number(check.deviationPercent(), 0, Unit.PERCENT))
                    .at("/rate/hopperUsed"));
        }
        return check;
    }
}
