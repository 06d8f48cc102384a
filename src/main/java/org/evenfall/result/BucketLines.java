package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.Timing;
import org.evenfall.setup.BucketFacts;
import org.evenfall.setup.ReadSetup;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.RatePaths;
import org.jspecify.annotations.Nullable;

/** One bucket test in sentences: what to expect, what came of it, how the next one is set. */
public final class BucketLines {

    /** Less is as planned, %: it rounds to nothing. */
    private static final double NOTHING_PERCENT = 0.5;

    private BucketLines() {}

    /** Before the test counts what to expect, afterwards what came of it; empty while neither is known. */
    public static String outcome(Sentences words, BucketFacts facts, RateSetting setting) {
        BucketResult result = facts.result();
        if (result != null) {
            return result(words, result, setting);
        }
        BucketFacts.Expected expected = facts.expected();
        if (expected == null) {
            return "";
        }
        return facts.timed()
                ? words.text(
                        "rate.throughIn",
                        Arg.number(expected.kg(), 0, Unit.KG),
                        Arg.number(expected.seconds(), 0, Unit.S),
                        Arg.number(expected.goodS().low(), 0, Unit.NONE),
                        Arg.number(expected.goodS().high(), 0, Unit.S))
                : inBucket(words, expected.seconds(), expected.kg(), expected.goodKg(), expected.scalesKg());
    }

    /** Net weight to expect and its band, with the empty bucket once that is known. */
    static String inBucket(Sentences words, double seconds, double kg, Interval goodKg, @Nullable Interval scalesKg) {
        String net = words.text(
                "rate.inBucket",
                Arg.number(seconds, 0, Unit.S),
                Arg.number(kg, 1, Unit.KG),
                Arg.number(goodKg.low(), 1, Unit.NONE),
                Arg.number(goodKg.high(), 1, Unit.KG));
        return scalesKg == null
                ? net
                : net + " "
                        + words.text(
                                "rate.onScales",
                                Arg.number(scalesKg.low(), 1, Unit.NONE),
                                Arg.number(scalesKg.high(), 1, Unit.KG));
    }

    private static String result(Sentences words, BucketResult result, RateSetting setting) {
        List<String> parts = new ArrayList<>();
        BucketResult.Agreement agreement = result.agreement();
        Arg rate = result.kgPerHa() == null
                ? Arg.number(result.flow().totalKgPerMin(), 1, Unit.KG_PER_MIN)
                : Arg.number(result.kgPerHa(), 0, Unit.KG_PER_HA);
        Double off = agreement.deviationPercent();
        Double error = result.deviationErrorPercent();
        if (off == null) {
            parts.add(words.text("rate.result.flow", rate));
        } else {
            Arg giveOrTake = Arg.number(error == null ? 0 : error, 1, Unit.PERCENT);
            parts.add(
                    Math.abs(off) < NOTHING_PERCENT
                            ? words.text("rate.result.asPlanned", rate, giveOrTake)
                            : words.text(
                                    off > 0 ? "rate.result.much" : "rate.result.little", rate, size(off), giveOrTake));
        }
        Double left = agreement.leftDeviationPercent();
        Double right = agreement.rightDeviationPercent();
        if (left != null && right != null) {
            parts.add(words.text("rate.result.sides", Arg.text(signed(words, left)), Arg.text(signed(words, right))));
        }
        parts.add(advice(words, result, setting));
        return String.join(" ", parts).strip();
    }

    /** What to do next, where the button of the next test does not say it. */
    private static String advice(Sentences words, BucketResult result, RateSetting setting) {
        BucketResult.Next next = result.next();
        if (result.agreement().deviationPercent() == null || (next.left() != null && next.source() != null)) {
            return "";
        }
        return RateCheckLines.nextOpening(words, result, setting);
    }

    private static String signed(Sentences words, double percent) {
        String size = words.number(Math.abs(percent), 0, Unit.PERCENT);
        return Math.abs(percent) < NOTHING_PERCENT ? size : (percent > 0 ? "+" : "\u2212") + size;
    }

    private static Arg size(double percent) {
        return Arg.number(Math.abs(percent), 0, Unit.PERCENT);
    }

    /** How far timing by hand is off. */
    public static String timing(Sentences words, BucketFacts facts) {
        BucketFacts.Expected expected = facts.expected();
        return expected == null
                ? ""
                : words.text(
                        "rate.timing",
                        Arg.number(Timing.ERROR_S, 1, Unit.S),
                        Arg.number(100 * expected.timingShare(), 1, Unit.PERCENT),
                        Arg.number(expected.seconds(), 0, Unit.S));
    }

    /** The words of the button that begins the next test. */
    public static String nextTest(Sentences words, @Nullable BucketResult last, RateSetting setting) {
        BucketResult.Next next = last == null ? new BucketResult.Next(null, null, null) : last.next();
        if (next.left() == null || next.right() == null) {
            return words.text("rate.anotherTest");
        }
        Arg left = RateCheckLines.value(next.left(), setting);
        Arg right = RateCheckLines.value(next.right(), setting);
        if (setting.byFactor()) {
            return words.text("rate.nextTestFactor", left);
        }
        return left.equals(right)
                ? words.text("rate.nextTestOpening", left)
                : words.text("rate.nextTestOpenings", left, right);
    }

    /** What a test was done with, in one sentence; the delivery only where it is another. */
    public static String conditions(Sentences words, ReadSetup read, EntryPath<BucketEntry> at) {
        BucketEntry test = at.get(read.setup());
        List<String> parts = new ArrayList<>();
        boolean same =
                test.delivery().strip().equals(read.setup().product().delivery().strip());
        if (!test.delivery().isBlank() && !same) {
            parts.add(words.text("rate.with.delivery", Arg.text(test.delivery().strip())));
        }
        Double density = read.numbers().get(RatePaths.BUCKET_BULK_DENSITY.at(at).pointer());
        if (density != null) {
            parts.add(words.number(density, 2, Unit.KG_PER_L));
        }
        test.settings().levers().forEach((label, value) -> {
            if (!value.isBlank()) {
                parts.add(label + " " + words.typed(value));
            }
        });
        if (!test.settings().ptoSpeed().isBlank()) {
            parts.add(words.typed(test.settings().ptoSpeed()));
        }
        return parts.isEmpty()
                ? words.text("rate.with.nothing")
                : words.text("rate.with", Arg.text(String.join(" · ", parts)));
    }
}
