package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.RatePaths;
import org.jspecify.annotations.Nullable;

/** Step 5: the bucket tests that can be used, and what the last of them says. */
final class BucketTestsAssessor {

    /** Rounding room in which a deviation still counts as within its limit, points. */
    private static final double ROUNDING = 1e-9;

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();
    /** Which of the entered tests can be used, from 0. */
    private final List<Integer> usable = new ArrayList<>();

    private BucketTestsAssessor(ReadSetup read) {
        this.read = read;
    }

    /** @param planned whether there is a plan against which the last test is reported */
    static Assessed<List<BucketResult>> assess(ReadSetup read, BucketAssessment.Wanted wanted, boolean planned) {
        BucketTestsAssessor assessor = new BucketTestsAssessor(read);
        List<BucketResult> tests = assessor.tests(wanted);
        if (tests.isEmpty()) {
            assessor.findings.add(
                    Finding.missing(Step.RATE, "missing.bucketTest").at(RatePaths.BUCKET_TESTS.pointer()));
        } else if (planned) {
            assessor.addFindings(
                    tests.get(tests.size() - 1),
                    wanted.tolerancePercent(),
                    RatePaths.BUCKET_TESTS
                            .item(assessor.usable.get(tests.size() - 1))
                            .pointer());
        }
        return new Assessed<>(tests, assessor.findings);
    }

    private List<BucketResult> tests(BucketAssessment.Wanted wanted) {
        List<BucketAssessment.Catch> catches = new ArrayList<>();
        for (int i = 0; i < read.get(RatePaths.BUCKET_TESTS).size(); i++) {
            BucketAssessment.Catch test = test(RatePaths.BUCKET_TESTS.item(i));
            if (test != null) {
                catches.add(test);
                usable.add(i);
            }
        }
        return BucketAssessment.assess(catches, wanted);
    }

    /** Null while an opening, the time or every weight is missing; an opening typed for one side counts for both. */
    private BucketAssessment.@Nullable Catch test(EntryPath<BucketEntry> at) {
        Double left = read.number(RatePaths.BUCKET_OPENING_LEFT, at);
        Double right = read.number(RatePaths.BUCKET_OPENING_RIGHT, at);
        Double time = read.number(RatePaths.BUCKET_TIME, at);
        Double empty = read.number(RatePaths.BUCKET_BUCKET_EMPTY, at);
        double tareKg = empty == null ? 0 : empty;
        List<Double> leftKg = net(RatePaths.BUCKET_LEFT.at(at), tareKg);
        List<Double> rightKg = net(RatePaths.BUCKET_RIGHT.at(at), tareKg);
        Double either = left == null ? right : left;
        if (time == null || either == null || (leftKg.isEmpty() && rightKg.isEmpty())) {
            return null;
        }
        return new BucketAssessment.Catch(either, right == null ? either : right, time, leftKg, rightKg);
    }

    private List<Double> net(EntryPath<List<EnteredQuantity>> list, double tareKg) {
        List<Double> net = new ArrayList<>();
        for (int i = 0; i < list.get(read.setup()).size(); i++) {
            EntryPath<EnteredQuantity> at = QuantityList.item(list, i);
            Double kg = read.number(at);
            if (kg != null && kg <= tareKg) {
                findings.add(Finding.stop(Step.RATE, "rate.lighterThanBucket", Arg.number(kg, 1, Unit.KG))
                        .at(at.pointer()));
            } else if (kg != null) {
                net.add(kg - tareKg);
            }
        }
        return net;
    }

    private void addFindings(BucketResult last, double tolerancePercent, String at) {
        if (last.agreement().deviationPercent() == null) {
            return;
        }
        if (beyond(last.agreement().deviationPercent(), tolerancePercent)) {
            findings.add(Finding.warn(
                            Step.RATE,
                            last.agreement().deviationPercent() > 0 ? "rate.tooMuch" : "rate.tooLittle",
                            Arg.number(Math.abs(last.agreement().deviationPercent()), 0, Unit.PERCENT),
                            Arg.number(tolerancePercent, 0, Unit.PERCENT))
                    .at(at));
        }
        if (beyond(last.agreement().leftRightPercent(), BucketAssessment.WORST_LEFT_RIGHT_PERCENT)) {
            findings.add(Finding.warn(
                            Step.RATE, "rate.leftRight", size(last.agreement().leftRightPercent(), 0))
                    .at(at));
        }
        if (beyond(last.agreement().repeatSpreadPercent(), BucketAssessment.WORST_REPEAT_PERCENT)) {
            findings.add(Finding.warn(
                            Step.RATE, "rate.repeats", size(last.agreement().repeatSpreadPercent(), 1))
                    .at(at));
        }
    }

    private static boolean beyond(@Nullable Double percent, double limit) {
        return percent != null && Math.abs(percent) > limit + ROUNDING;
    }

    private static Arg size(@Nullable Double percent, int decimals) {
        return Arg.number(percent == null ? 0 : Math.abs(percent), decimals, Unit.PERCENT);
    }
}
