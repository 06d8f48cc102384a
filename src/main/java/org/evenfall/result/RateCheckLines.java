package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.HopperCheck;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.evenfall.setup.RateResult;
import org.jspecify.annotations.Nullable;

/** Step 5 in words, the check: speed, what to expect in the bucket, bucket tests, hopper. */
public final class RateCheckLines {

    /** The time for which an expected weight is given where no offered time fits the bucket, s. */
    private static final double HALF_MINUTE_S = 30;

    /** Less is right or alike, %: it rounds to nothing. */
    private static final double NOTHING_PERCENT = 0.5;

    private RateCheckLines() {}

    /** Measured speed and how far the runs differ; none without a run. */
    public static List<ResultLine> speed(Sentences words, @Nullable SpeedCheck speed) {
        List<ResultLine> lines = new ArrayList<>();
        if (speed == null) {
            return lines;
        }
        ResultLine.add(lines, words, "rate.figure.speed", speed.meanKmPerH(), 1, Unit.KM_PER_H);
        if (speed.runs() > 1) {
            ResultLine.add(lines, words, "rate.figure.speedSpread", speed.spreadPercent(), 0, Unit.PERCENT);
        }
        return lines;
    }

    /** The opening to start from until there is a test, and what to expect in the bucket. */
    public static List<ResultLine> expected(Sentences words, RateResult rate) {
        List<ResultLine> lines = new ArrayList<>();
        RatePlan plan = rate.plan();
        if (plan == null) {
            return lines;
        }
        if (rate.lastBucket() == null) {
            ResultLine.add(lines, words, "rate.figure.firstOpening", plan.flow().firstOpening(), 1, Unit.NONE);
        }
        RatePlan.Bucket bucket = plan.bucket();
        if (bucket.kg() != null && bucket.seconds() != null) {
            lines.add(inBucket(words, bucket.seconds(), bucket.kg()));
        } else if (bucket.halfMinuteKg() != null) {
            lines.add(inBucket(words, HALF_MINUTE_S, bucket.halfMinuteKg()));
        }
        if (bucket.toleranceKg() != null) {
            lines.add(new ResultLine(
                    words.text("rate.figure.band"),
                    words.text(
                            "rate.figure.bandValue",
                            Arg.number(bucket.toleranceKg().low(), 1, Unit.NONE),
                            Arg.number(bucket.toleranceKg().high(), 1, Unit.KG))));
        }
        return lines;
    }

    private static ResultLine inBucket(Sentences words, double seconds, double kg) {
        return new ResultLine(
                words.text("rate.figure.bucket", Arg.number(seconds, 0, Unit.S)), words.number(kg, 1, Unit.KG));
    }

    /** One bucket test in one line: flow, rate, deviations. */
    public static String attempt(Sentences words, int number, BucketResult test, RateSetting setting) {
        List<String> parts = new ArrayList<>();
        Arg flow = Arg.number(test.flow().totalKgPerMin(), 1, Unit.KG_PER_MIN);
        parts.add(
                setting.byFactor()
                        ? words.text("rate.attempt.factor", Arg.count(number), value(test.openingLeft(), setting), flow)
                        : words.text("rate.attempt.flow", Arg.count(number), flow));
        if (test.kgPerHa() != null) {
            parts.add(words.number(test.kgPerHa(), 0, Unit.KG_PER_HA));
        }
        BucketResult.Agreement agreement = test.agreement();
        if (agreement.deviationPercent() != null) {
            parts.add(signed(
                    words,
                    agreement.deviationPercent(),
                    "rate.attempt.right",
                    "rate.attempt.much",
                    "rate.attempt.little"));
        }
        if (agreement.leftRightPercent() != null) {
            parts.add(signed(
                    words,
                    agreement.leftRightPercent(),
                    "rate.attempt.alike",
                    "rate.attempt.leftMore",
                    "rate.attempt.leftLess"));
        }
        if (agreement.repeatSpreadPercent() != null) {
            parts.add(words.text("rate.attempt.repeats", Arg.number(agreement.repeatSpreadPercent(), 1, Unit.PERCENT)));
        }
        return String.join(" · ", parts);
    }

    private static String signed(Sentences words, double percent, String nothing, String more, String less) {
        return Math.abs(percent) < NOTHING_PERCENT
                ? words.text(nothing)
                : words.text(percent > 0 ? more : less, Arg.number(Math.abs(percent), 0, Unit.PERCENT));
    }

    /** What the last bucket test means for the opening or factor, in one sentence; empty without a test. */
    public static String nextOpening(Sentences words, @Nullable BucketResult last, RateSetting setting) {
        if (last == null) {
            return "";
        }
        boolean factor = setting.byFactor();
        BucketResult.Next next = last.next();
        if (next.left() == null || next.right() == null) {
            return last.agreement().deviationPercent() == null
                    ? ""
                    : words.text(factor ? "rate.noFactor" : "rate.noOpening");
        }
        if (next.source() == null) {
            return words.text(
                    !last.agreement().withinTolerance()
                            ? "rate.catchAgain"
                            : factor ? "rate.withinFactor" : "rate.within");
        }
        Arg source = Arg.word("choice.OpeningSource." + next.source());
        return factor
                ? words.text("rate.nextFactor", value(next.left(), setting), source)
                : words.text("rate.next", value(next.left(), setting), value(next.right(), setting), source);
    }

    /** An opening with at most one decimal, a factor with at most three. */
    static Arg value(double opening, RateSetting setting) {
        return Arg.number(opening, setting.decimals(opening), Unit.NONE);
    }

    /** The rate by the hopper; none without. */
    public static List<ResultLine> hopper(Sentences words, @Nullable HopperCheck hopper) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.add(lines, words, "rate.figure.hopper", hopper == null ? null : hopper.kgPerHa(), 0, Unit.KG_PER_HA);
        return lines;
    }
}
