package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.machine.Side;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketAssessment;
import org.evenfall.rate.BucketResult;
import org.jspecify.annotations.Nullable;

/**
 * What the last bucket test says of the rate. Outside the tolerance no opening or factor is known, so that no card is made.
 */
final class BucketFindings {

    /** Rounding room in which a deviation still counts as within its limit, points. */
    private static final double ROUNDING = 1e-9;

    private final BucketResult last;
    private final String at;
    private final List<Finding> findings = new ArrayList<>();

    private BucketFindings(BucketResult last, String at) {
        this.last = last;
        this.at = at;
    }

    /**
     * @param at pointer of the test
     * @param planned whether there is a plan against which the rate is held
     */
    static List<Finding> of(BucketResult last, BucketAssessment.Wanted wanted, boolean planned, String at) {
        BucketFindings of = new BucketFindings(last, at);
        if (planned && last.agreement().deviationPercent() != null) {
            of.rate(wanted.tolerancePercent());
            of.repeats();
        }
        if (wanted.outlets() > 1) {
            of.notCaught(last.leftCaught(), Side.LEFT);
            of.notCaught(last.rightCaught(), Side.RIGHT);
        }
        return of.findings;
    }

    private void rate(double tolerancePercent) {
        BucketResult.Agreement agreement = last.agreement();
        Arg allowed = Arg.number(tolerancePercent, 0, Unit.PERCENT);
        boolean total = beyond(agreement.deviationPercent(), tolerancePercent);
        boolean sides = beyond(agreement.leftRightPercent(), BucketAssessment.WORST_LEFT_RIGHT_PERCENT);
        if (total) {
            findings.add(Finding.stop(
                            Step.RATE,
                            above(agreement.deviationPercent()) ? "rate.tooMuch" : "rate.tooLittle",
                            size(agreement.deviationPercent(), 0),
                            allowed)
                    .from("source.rateTolerance")
                    .at(at));
        }
        if (sides) {
            findings.add(Finding.stop(Step.RATE, "rate.leftRight", size(agreement.leftRightPercent(), 0))
                    .from("source.leftRight")
                    .at(at));
        }
        if (!total && !sides) {
            outlet(Side.LEFT, agreement.leftDeviationPercent(), tolerancePercent);
            outlet(Side.RIGHT, agreement.rightDeviationPercent(), tolerancePercent);
        }
    }

    /** One outlet beyond the tolerance although all together are within. */
    private void outlet(Side side, @Nullable Double percent, double tolerancePercent) {
        if (beyond(percent, tolerancePercent)) {
            findings.add(Finding.stop(
                            Step.RATE,
                            above(percent) ? "rate.outletTooMuch" : "rate.outletTooLittle",
                            Arg.word("choice.Side." + side),
                            size(percent, 1),
                            Arg.number(tolerancePercent, 0, Unit.PERCENT))
                    .from("source.rateTolerance")
                    .at(at));
        }
    }

    private void repeats() {
        Double spread = last.agreement().repeatSpreadPercent();
        if (beyond(spread, BucketAssessment.WORST_REPEAT_PERCENT)) {
            findings.add(Finding.warn(Step.RATE, "rate.repeats", size(spread, 1))
                    .from("source.repeats")
                    .at(at));
        }
    }

    private void notCaught(boolean caught, Side side) {
        if (!caught) {
            findings.add(Finding.missing(Step.RATE, "rate.outletNotCaught", Arg.word("choice.Side." + side))
                    .at(at));
        }
    }

    private static boolean above(@Nullable Double percent) {
        return percent != null && percent > 0;
    }

    private static boolean beyond(@Nullable Double percent, double limit) {
        return percent != null && Math.abs(percent) > limit + ROUNDING;
    }

    private static Arg size(@Nullable Double percent, int decimals) {
        return Arg.number(percent == null ? 0 : Math.abs(percent), decimals, Unit.PERCENT);
    }
}
