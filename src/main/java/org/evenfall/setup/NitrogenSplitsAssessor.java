package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Dimension;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.Nutrients;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.UnitsBasis;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.RatePaths;
import org.jspecify.annotations.Nullable;

/** Step 5: the nitrogen of the season's passes, their sum, and which of them is this one. */
final class NitrogenSplitsAssessor {

    /** Assumption: passes in a season, at most; more look like one that was typed twice. */
    static final int USUAL_PASSES = 6;

    /** Assumption: an ordinary season has at least one of the smallest usual passes, at most two of the largest. */
    private static final int LARGEST_PASSES = 2;

    private static final String SOURCE = "source.seasonNitrogen";

    private static final String AT = RatePaths.NITROGEN_SPLITS.pointer();

    private final ReadSetup read;
    private final List<Finding> findings = new ArrayList<>();

    private NitrogenSplitsAssessor(ReadSetup read) {
        this.read = read;
    }

    /** No result while no pass can be read. */
    static Assessed<NitrogenSplits> assess(ReadSetup read, @Nullable RatePlan plan) {
        NitrogenSplitsAssessor assessor = new NitrogenSplitsAssessor(read);
        NitrogenSplits splits =
                assessor.splits(plan == null ? null : plan.amounts().nitrogenKgPerHa());
        return new Assessed<>(splits, assessor.findings);
    }

    private @Nullable NitrogenSplits splits(@Nullable Double plannedKgPerHa) {
        List<Double> passes = passesKgPerHa();
        if (passes.isEmpty()) {
            return null;
        }
        NitrogenSplits splits = NitrogenSplits.of(passes, plannedKgPerHa);
        if (plannedKgPerHa != null && splits.thisPassNumbers().isEmpty()) {
            findings.add(Finding.note(Step.RATE, "rate.splitNotListed", Arg.number(plannedKgPerHa, 0, Unit.KG_PER_HA))
                    .at(AT));
        }
        if (passes.size() > USUAL_PASSES) {
            findings.add(Finding.note(Step.RATE, "rate.splitsMany", Arg.count(passes.size()), Arg.count(USUAL_PASSES))
                    .at(AT)
                    .from(SOURCE));
        }
        Limits usual = ordinarySeasonKgPerHa();
        if (!usual.contain(splits.totalKgPerHa())) {
            findings.add(Finding.note(
                            Step.RATE,
                            "rate.splitsUnusual",
                            Arg.number(splits.totalKgPerHa(), 0, Unit.KG_PER_HA),
                            Arg.number(usual.low(), 0, Unit.NONE),
                            Arg.number(usual.high(), 0, Unit.KG_PER_HA))
                    .at(AT)
                    .from(SOURCE));
        }
        return splits;
    }

    /** Sum of a season that is not reported, from the usual limits of one pass, kg/ha. */
    private Limits ordinarySeasonKgPerHa() {
        Limits pass = RatePaths.NITROGEN_RATE
                .range(read.setup(), EnteredQuantity.EMPTY)
                .usual();
        return new Limits(pass.low(), LARGEST_PASSES * pass.high());
    }

    /** Passes that can be read; none while it is not known what a unit means. */
    private List<Double> passesKgPerHa() {
        EntryPath<List<EnteredQuantity>> list = RatePaths.NITROGEN_SPLITS.path();
        UnitsBasis basis = read.get(RatePaths.UNITS_BASIS);
        List<Double> passes = new ArrayList<>();
        for (int i = 0; i < list.get(read.setup()).size(); i++) {
            EntryPath<EnteredQuantity> item = QuantityList.item(list, i);
            Double typed = read.number(item);
            if (typed == null) {
                continue;
            }
            if (!inUnits(item.get(read.setup()))) {
                passes.add(typed);
            } else if (basis == UnitsBasis.UNANSWERED) {
                findings.add(Finding.stop(Step.RATE, "rate.unitsBasis").at(RatePaths.UNITS_BASIS.pointer()));
                return List.of();
            } else {
                passes.add(typed * Nutrients.unitKgPerHa(basis));
            }
        }
        return passes;
    }

    private boolean inUnits(EnteredQuantity typed) {
        Unit core = RatePaths.NITROGEN_SPLITS.range(read.setup(), typed).core();
        return core.dimension() == Dimension.NUTRIENT_UNITS;
    }
}
