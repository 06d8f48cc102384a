package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.HopperCheck;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SpeedCheck;
import org.jspecify.annotations.Nullable;

/** Step 5 in sentences, one for each thing that follows from what was typed; empty while it does not follow. */
public final class RateSentences {

    /** Less is no difference, %: it rounds to nothing. */
    private static final double NOTHING_PERCENT = 0.5;

    private RateSentences() {}

    /** How much product carries the nitrogen. */
    public static String amount(Sentences words, @Nullable RatePlan plan) {
        return plan == null
                ? ""
                : words.text(
                        "rate.amount",
                        Arg.number(plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA),
                        Arg.number(plan.amounts().nitrogenKgPerHa(), 0, Unit.KG_PER_HA));
    }

    /** The season's sum, and which pass this one is. */
    public static String season(Sentences words, @Nullable NitrogenSplits splits) {
        if (splits == null) {
            return "";
        }
        String sum = words.text(
                "rate.seasonSum",
                Arg.count(splits.passesKgPerHa().size()),
                Arg.number(splits.totalKgPerHa(), 0, Unit.KG_PER_HA));
        return splits.thisPassNumbers().isEmpty()
                ? sum
                : sum + " "
                        + words.text(
                                "rate.seasonThis",
                                Arg.text(splits.thisPassNumbers().stream()
                                        .map(String::valueOf)
                                        .collect(Collectors.joining(", "))));
    }

    /** The flow of all outlets and of one. */
    public static String flow(Sentences words, @Nullable RatePlan plan) {
        return plan == null || plan.flow().kgPerMin() == null || plan.flow().outletKgPerMin() == null
                ? ""
                : words.text(
                        "rate.flow",
                        Arg.number(plan.flow().kgPerMin(), 0, Unit.KG_PER_MIN),
                        Arg.number(plan.flow().outletKgPerMin(), 1, Unit.KG_PER_MIN));
    }

    /** Tonnes, bags to order and hopper loads, as far as they are known. */
    public static String goods(Sentences words, @Nullable RatePlan plan) {
        List<String> parts = new ArrayList<>();
        if (plan == null) {
            return "";
        }
        RatePlan.Logistics goods = plan.logistics();
        if (goods.productTonnes() != null) {
            parts.add(words.text("rate.goodsTonnes", Arg.number(goods.productTonnes(), 1, Unit.T)));
        }
        if (goods.bags() != null && goods.bagsToOrder() != null) {
            parts.add(words.text(
                    "rate.goodsBags",
                    Arg.number(goods.bagsToOrder(), 0, Unit.NONE),
                    Arg.number(goods.bags(), 1, Unit.NONE)));
        }
        if (goods.hopperLoads() != null) {
            parts.add(words.text("rate.goodsLoads", Arg.number(goods.hopperLoads(), 1, Unit.NONE)));
        }
        return String.join(" ", parts);
    }

    /** Net weight to expect in the bucket, and what the scales read with it. */
    public static String bucket(Sentences words, @Nullable RatePlan plan, @Nullable Interval scalesKg) {
        if (plan == null) {
            return "";
        }
        Double kg = plan.bucket().kg();
        Double seconds = plan.bucket().seconds();
        Interval tolerance = plan.bucket().toleranceKg();
        return kg == null || seconds == null || tolerance == null
                ? ""
                : BucketLines.inBucket(words, seconds, kg, tolerance, scalesKg);
    }

    /** What one kg of nitrogen costs, the break-even price, and what is saved or spent more on the area. */
    public static String money(Sentences words, @Nullable RatePlan plan) {
        return (cost(words, plan) + " " + saving(words, plan)).strip();
    }

    private static String cost(Sentences words, @Nullable RatePlan plan) {
        if (plan == null || plan.money().costPerKgN() == null) {
            return "";
        }
        Arg cost = Arg.number(plan.money().costPerKgN(), 2, Unit.NONE);
        return plan.money().otherCostPerKgN() == null
                ? words.text("rate.cost", cost)
                : words.text("rate.costBoth", cost, Arg.number(plan.money().otherCostPerKgN(), 2, Unit.NONE));
    }

    private static String saving(Sentences words, @Nullable RatePlan plan) {
        List<String> parts = new ArrayList<>();
        if (plan == null) {
            return "";
        }
        RatePlan.Money money = plan.money();
        if (money.parityPricePerT() != null) {
            parts.add(words.text("rate.breakEven", Arg.number(money.parityPricePerT(), 0, Unit.NONE)));
        }
        if (money.saving() != null) {
            parts.add(words.text(
                    money.saving() < 0 ? "rate.costsMore" : "rate.saves",
                    Arg.number(Math.abs(money.saving()), 0, Unit.NONE)));
        }
        return String.join(" ", parts);
    }

    /** The rate by what left the hopper; empty without. */
    public static String hopper(Sentences words, @Nullable HopperCheck hopper) {
        if (hopper == null) {
            return "";
        }
        Arg rate = Arg.number(hopper.kgPerHa(), 0, Unit.KG_PER_HA);
        double off = hopper.deviationPercent();
        return Math.abs(off) < NOTHING_PERCENT
                ? words.text("rate.hopperAsPlanned", rate)
                : words.text(
                        off > 0 ? "rate.hopperMuch" : "rate.hopperLittle",
                        rate,
                        Arg.number(Math.abs(off), 0, Unit.PERCENT));
    }

    /** The measured speed against the planned one, and how far the runs differ. */
    public static String speed(Sentences words, @Nullable SpeedCheck speed) {
        if (speed == null) {
            return "";
        }
        Arg mean = Arg.number(speed.meanKmPerH(), 1, Unit.KM_PER_H);
        Double off = speed.deviationPercent();
        String drove = off == null
                ? words.text("rate.drove", mean)
                : Math.abs(off) < NOTHING_PERCENT
                        ? words.text("rate.droveAsPlanned", mean)
                        : words.text(
                                off > 0 ? "rate.droveFaster" : "rate.droveSlower",
                                mean,
                                Arg.number(Math.abs(off), 0, Unit.PERCENT));
        return speed.runs() < 2
                ? drove
                : drove + " " + words.text("rate.runsDiffer", Arg.number(speed.spreadPercent(), 0, Unit.PERCENT));
    }
}
