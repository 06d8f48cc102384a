package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.jspecify.annotations.Nullable;

/** Bucket tests in words: what to set next, and one line for each attempt. */
final class BucketWords {

    private BucketWords() {}

    /** What the last test says of the opening or factor, as one large sentence. */
    static String nextOpening(Sentences words, @Nullable BucketResult last, RateSetting setting) {
        if (last == null) {
            return "";
        }
        boolean factor = setting.byFactor();
        Double left = last.next().left();
        Double right = last.next().right();
        if (left == null || right == null) {
            return last.agreement().deviationPercent() == null
                    ? ""
                    : words.text(factor ? "rate.noFactor" : "rate.noOpening");
        }
        if (last.next().source() == null) {
            return words.text(
                    !last.agreement().withinTolerance()
                            ? "rate.catchAgain"
                            : factor ? "rate.withinFactor" : "rate.within");
        }
        Arg source = Arg.word("choice.OpeningSource." + last.next().source());
        return factor
                ? words.text("rate.nextFactor", value(left, setting), source)
                : words.text("rate.next", value(left, setting), value(right, setting), source);
    }

    /** An opening with at most one decimal, a factor with at most three. */
    private static Arg value(double opening, RateSetting setting) {
        return Arg.number(opening, setting.decimals(opening), Unit.NONE);
    }

    /** One test in one line. */
    static String attempt(Sentences words, int number, BucketResult test, RateSetting setting) {
        List<String> parts = new ArrayList<>();
        Arg flow = Arg.number(test.flow().totalKgPerMin(), 1, Unit.KG_PER_MIN);
        parts.add(
                setting.byFactor()
                        ? words.text("rate.attempt.factor", Arg.count(number), value(test.openingLeft(), setting), flow)
                        : words.text("rate.attempt.flow", Arg.count(number), flow));
        if (test.kgPerHa() != null) {
            parts.add(words.number(test.kgPerHa(), 0, Unit.KG_PER_HA));
        }
        if (test.agreement().deviationPercent() != null) {
            double off = test.agreement().deviationPercent();
            parts.add(
                    Math.abs(off) < 0.5
                            ? words.text("rate.attempt.right")
                            : words.text(
                                    off > 0 ? "rate.attempt.much" : "rate.attempt.little",
                                    Arg.number(Math.abs(off), 0, Unit.PERCENT)));
        }
        if (test.agreement().leftRightPercent() != null) {
            double left = test.agreement().leftRightPercent();
            parts.add(
                    Math.abs(left) < 0.5
                            ? words.text("rate.attempt.alike")
                            : words.text(
                                    left < 0 ? "rate.attempt.leftLess" : "rate.attempt.leftMore",
                                    Arg.number(Math.abs(left), 0, Unit.PERCENT)));
        }
        if (test.agreement().repeatSpreadPercent() != null) {
            parts.add(words.text(
                    "rate.attempt.repeats", Arg.number(test.agreement().repeatSpreadPercent(), 1, Unit.PERCENT)));
        }
        return String.join(" · ", parts);
    }
}
