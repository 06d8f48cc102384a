package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.AgainstOther;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.RatePlan;
import org.jspecify.annotations.Nullable;

/** Step 5 in words, the plan: amounts, flow, the product before, money. */
public final class RatePlanLines {

    private RatePlanLines() {}

    /** The plan in the order in which it is used, as far as it is known; none without a plan. */
    public static List<ResultLine> figures(Sentences words, @Nullable RatePlan plan) {
        List<ResultLine> lines = new ArrayList<>();
        if (plan == null) {
            return lines;
        }
        RatePlan.Logistics logistics = plan.logistics();
        ResultLine.add(lines, words, "rate.figure.product", plan.amounts().productKgPerHa(), 0, Unit.KG_PER_HA);
        ResultLine.add(lines, words, "rate.figure.nitrogen", plan.amounts().nitrogenKgPerHa(), 0, Unit.KG_PER_HA);
        ResultLine.add(lines, words, "rate.figure.units", plan.amounts().unitsPerAcre(), 0, Unit.NONE);
        ResultLine.add(lines, words, "rate.figure.tonnes", logistics.productTonnes(), 1, Unit.T);
        if (logistics.bags() != null && logistics.bagsToOrder() != null) {
            lines.add(new ResultLine(
                    words.text("rate.figure.bags"),
                    words.text(
                            "rate.figure.bagsOrder",
                            Arg.number(logistics.bags(), 1, Unit.NONE),
                            Arg.number(logistics.bagsToOrder(), 0, Unit.NONE))));
        }
        ResultLine.add(lines, words, "rate.figure.haPerBag", logistics.haPerBag(), 2, Unit.HA);
        ResultLine.add(lines, words, "rate.figure.loads", logistics.hopperLoads(), 1, Unit.NONE);
        ResultLine.add(lines, words, "rate.figure.flow", plan.flow().kgPerMin(), 0, Unit.KG_PER_MIN);
        ResultLine.add(lines, words, "rate.figure.outlet", plan.flow().outletKgPerMin(), 1, Unit.KG_PER_MIN);
        return lines;
    }

    /** The season's nitrogen: the sum of its passes, and which of them this one is; none while no pass is listed. */
    public static List<ResultLine> season(Sentences words, @Nullable NitrogenSplits splits) {
        List<ResultLine> lines = new ArrayList<>();
        if (splits == null) {
            return lines;
        }
        lines.add(new ResultLine(
                words.text(
                        "rate.figure.season", Arg.count(splits.passesKgPerHa().size())),
                words.number(splits.totalKgPerHa(), 0, Unit.KG_PER_HA)));
        if (!splits.thisPassNumbers().isEmpty()) {
            lines.add(new ResultLine(
                    words.text("rate.figure.thisPass"),
                    splits.thisPassNumbers().stream().map(String::valueOf).collect(Collectors.joining(", "))));
        }
        return lines;
    }

    /** This product against the one used before, in sentences; empty while a nitrogen share is not known. */
    public static String against(Sentences words, @Nullable AgainstOther against) {
        if (against == null) {
            return "";
        }
        Arg mass = percent(against.massShare());
        if (against.volumeShare() == null) {
            return words.text("rate.againstMass", mass);
        }
        String sentence = words.text("rate.against", mass, percent(against.volumeShare()));
        return against.densityAssumed()
                ? sentence + " "
                        + words.text(
                                "rate.againstAssumed",
                                Arg.number(AgainstOther.USUAL_DENSITY_KG_PER_L, 1, Unit.KG_PER_L))
                : sentence;
    }

    private static Arg percent(double share) {
        return Arg.number(share * 100, 0, Unit.PERCENT);
    }

    /** Cost, parity and saving, as far as prices were typed; none without a plan. */
    public static List<ResultLine> money(Sentences words, @Nullable RatePlan plan) {
        List<ResultLine> lines = new ArrayList<>();
        if (plan == null) {
            return lines;
        }
        RatePlan.Money money = plan.money();
        ResultLine.add(lines, words, "rate.figure.cost", money.costPerKgN(), 2, Unit.NONE);
        ResultLine.add(lines, words, "rate.figure.otherCost", money.otherCostPerKgN(), 2, Unit.NONE);
        ResultLine.add(lines, words, "rate.figure.parity", money.parityPricePerT(), 0, Unit.PER_T);
        if (money.saving() != null) {
            ResultLine.add(
                    lines,
                    words,
                    money.saving() < 0 ? "rate.figure.dearer" : "rate.figure.saving",
                    Math.abs(money.saving()),
                    0,
                    Unit.NONE);
        }
        return lines;
    }
}
