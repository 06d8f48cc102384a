package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.BulkDensity;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.BucketWeight;
import org.evenfall.rate.Timing;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.RatePaths;
import org.jspecify.annotations.Nullable;

/** Step 5: the bucket tests that can be used, and what the last of them says. */
final class BucketTestsAssessor {

    private final ReadSetup read;
    private final BucketAssessment.Wanted wanted;
    private final @Nullable BulkDensity density;
    private final List<Finding> findings = new ArrayList<>();
    /** Which of the entered tests can be used, from 0. */
    private final List<Integer> usable = new ArrayList<>();
    /** Why the last test that was caught proves nothing; null where it counts. */
    private @Nullable Finding worthless;

    private BucketTestsAssessor(ReadSetup read, BucketAssessment.Wanted wanted, @Nullable BulkDensity density) {
        this.read = read;
        this.wanted = wanted;
        this.density = density;
    }

    /**
     * The tests that count.
     *
     * @param results oldest first
     * @param indexes which of the entered tests each is, from 0
     */
    record Tests(List<BucketResult> results, List<Integer> indexes) {}

    /** @param planned whether there is a plan against which the last test is reported */
    static Assessed<Tests> assess(
            ReadSetup read, BucketAssessment.Wanted wanted, ProductResult product, boolean planned) {
        BucketTestsAssessor assessor = new BucketTestsAssessor(read, wanted, product.density());
        List<BucketResult> tests = assessor.tests();
        if (assessor.worthless != null) {
            assessor.findings.add(assessor.worthless);
        } else if (tests.isEmpty()) {
            assessor.findings.add(
                    Finding.missing(Step.RATE, "missing.bucketTest").at(RatePaths.BUCKET_TESTS.pointer()));
        } else {
            EntryPath<BucketEntry> last = RatePaths.BUCKET_TESTS.item(assessor.usable.get(tests.size() - 1));
            assessor.findings.addAll(BucketFindings.of(tests.get(tests.size() - 1), wanted, planned, last.pointer()));
            assessor.shortTime(last);
            assessor.heavyBucket(last);
        }
        return new Assessed<>(new Tests(tests, assessor.usable), assessor.findings);
    }

    private List<BucketResult> tests() {
        List<BucketAssessment.Catch> catches = new ArrayList<>();
        for (int i = 0; i < read.get(RatePaths.BUCKET_TESTS).size(); i++) {
            BucketAssessment.Catch test = test(RatePaths.BUCKET_TESTS.item(i));
            if (test != null) {
                worthless = new BucketConditions(read, i).worthless(density).orElse(null);
                if (worthless == null) {
                    catches.add(test);
                    usable.add(i);
                }
            }
        }
        return BucketAssessment.assess(catches, wanted);
    }

    /**
     * Null while an opening, the time or every weight is missing. An opening typed for one side counts for both; a factor is
     * the same on both sides.
     */
    private BucketAssessment.@Nullable Catch test(EntryPath<BucketEntry> at) {
        Double left = read.number(RatePaths.BUCKET_OPENING_LEFT, at);
        Double right = read.number(RatePaths.BUCKET_OPENING_RIGHT, at);
        Double time = read.number(RatePaths.BUCKET_TIME, at);
        List<Double> leftKg = net(RatePaths.BUCKET_LEFT, at);
        List<Double> rightKg = net(RatePaths.BUCKET_RIGHT, at);
        Double either = left == null ? right : left;
        if (time == null || either == null || (leftKg.isEmpty() && rightKg.isEmpty())) {
            return null;
        }
        return new BucketAssessment.Catch(
                either,
                right == null || wanted.byFactor() ? either : right,
                time,
                leftKg,
                rightKg,
                wanted.byFactor() ? read.number(RatePaths.BUCKET_SHOWN, at) : null,
                batch(at));
    }

    /** The product that was caught; what a test does not state is as it is now. */
    private BucketAssessment.Batch batch(EntryPath<BucketEntry> at) {
        String delivery = RatePaths.BUCKET_DELIVERY.at(at).get(read.setup()).strip();
        Double stated = read.number(RatePaths.BUCKET_BULK_DENSITY, at);
        return new BucketAssessment.Batch(
                delivery.isEmpty() ? read.get(ProductPaths.DELIVERY).strip() : delivery,
                stated == null && density != null ? Double.valueOf(density.meanKgPerL()) : stated);
    }

    private double tareKg(EntryPath<BucketEntry> at) {
        Double empty = read.number(RatePaths.BUCKET_BUCKET_EMPTY, at);
        return empty == null ? 0 : empty;
    }

    private List<Double> net(QuantityList<BucketEntry> side, EntryPath<BucketEntry> test) {
        EntryPath<List<EnteredQuantity>> list = side.at(test);
        double tareKg = tareKg(test);
        List<Double> net = new ArrayList<>();
        for (int i = 0; i < list.get(read.setup()).size(); i++) {
            EntryPath<EnteredQuantity> at = QuantityList.item(list, i);
            Double kg = read.number(at);
            if (kg != null && kg <= tareKg) {
                findings.add(Finding.stop(Step.RATE, "rate.lighterThanBucket", read.typed(side, at))
                        .at(at.pointer()));
            } else if (kg != null) {
                net.add(kg - tareKg);
            }
        }
        return net;
    }

    /** A terminal that counts what it lets out counts over the same time: only without it the time matters. */
    private void shortTime(EntryPath<BucketEntry> test) {
        Double time = read.number(RatePaths.BUCKET_TIME, test);
        boolean counted = wanted.byFactor() && read.number(RatePaths.BUCKET_SHOWN, test) != null;
        if (time != null && time < Timing.SHORT_S && !counted) {
            findings.add(Finding.warn(
                            Step.RATE,
                            "rate.shortTime",
                            Arg.number(time, 0, Unit.S),
                            Arg.number(100 * Timing.errorShare(time), 0, Unit.PERCENT))
                    .from("source.timing")
                    .at(RatePaths.BUCKET_TIME.at(test).pointer()));
        }
    }

    /** The heaviest catch, where it is too heavy to be carried: one warning a test, since warnings are printed. */
    private void heavyBucket(EntryPath<BucketEntry> test) {
        EntryPath<EnteredQuantity> heaviest = null;
        double heaviestKg = BucketWeight.HEAVIEST_KG;
        for (EntryPath<List<EnteredQuantity>> list :
                List.of(RatePaths.BUCKET_LEFT.at(test), RatePaths.BUCKET_RIGHT.at(test))) {
            for (int i = 0; i < list.get(read.setup()).size(); i++) {
                Double kg = read.number(QuantityList.item(list, i));
                double net = kg == null ? 0 : kg - tareKg(test);
                if (BucketWeight.tooHeavy(net) && net > heaviestKg) {
                    heaviest = QuantityList.item(list, i);
                    heaviestKg = net;
                }
            }
        }
        if (heaviest != null) {
            findings.add(Finding.warn(
                            Step.RATE,
                            "rate.heavyBucket",
                            Arg.number(heaviestKg, 1, Unit.KG),
                            Arg.number(BucketWeight.HEAVIEST_KG, 0, Unit.KG))
                    .from("source.heavyBucket")
                    .at(heaviest.pointer()));
        }
    }
}
