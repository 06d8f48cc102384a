package org.evenfall.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.DateText;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.FieldUse;
import org.evenfall.rate.NitrogenSplits;
import org.evenfall.rate.PassUse;
import org.evenfall.rate.RatePlan;
import org.evenfall.rate.SeasonUse;
import org.evenfall.setup.SeasonLogResult.Field;
import org.evenfall.setup.SeasonLogResult.Pass;
import org.evenfall.setup.SeasonLogResult.Plan;
import org.evenfall.setup.entry.PassEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.LogPaths;
import org.evenfall.setup.path.StartPaths;
import org.jspecify.annotations.Nullable;

/** The log of the passes: product used against area, and each field against the plan of the season. */
final class SeasonLogAssessor {

    private static final String SOURCE = "source.rateTolerance";

    /** Rounding room in which a deviation still counts as within its limit, points. */
    private static final double ROUNDING = 1e-9;

    private static final double PERCENT = 100;

    private final ReadSetup read;
    private final @Nullable Double nitrogenPercent;
    private final @Nullable RatePlan plan;
    private final @Nullable NitrogenSplits season;
    private final List<Finding> findings = new ArrayList<>();

    private SeasonLogAssessor(ReadSetup read, ProductResult product, RateResult rate) {
        this.read = read;
        this.nitrogenPercent = product.nitrogenPercent();
        this.plan = rate.plan();
        this.season = rate.nitrogenSplits();
    }

    static Assessed<SeasonLogResult> assess(ReadSetup read, ProductResult product, RateResult rate) {
        SeasonLogAssessor assessor = new SeasonLogAssessor(read, product, rate);
        return new Assessed<>(assessor.log(), assessor.findings);
    }

    private SeasonLogResult log() {
        List<Pass> passes = new ArrayList<>();
        Map<String, List<Pass>> byField = new LinkedHashMap<>();
        List<PassEntry> typed = read.get(LogPaths.PASSES);
        for (int i = 0; i < typed.size(); i++) {
            if (typed.get(i).equals(PassEntry.EMPTY)) {
                continue;
            }
            Pass pass = pass(i, typed.get(i));
            passes.add(pass);
            if (pass.amounts() != null) {
                byField.computeIfAbsent(SeasonLogResult.plain(pass.field()), fresh -> new ArrayList<>())
                        .add(pass);
            }
        }
        List<PassUse> complete = amounts(passes);
        return new SeasonLogResult(
                passes,
                byField.values().stream().map(this::field).toList(),
                SeasonUse.of(complete),
                passes.size() - complete.size());
    }

    private static List<PassUse> amounts(List<Pass> passes) {
        return passes.stream().map(Pass::amounts).filter(Objects::nonNull).toList();
    }

    private Pass pass(int index, PassEntry typed) {
        EntryPath<PassEntry> at = LogPaths.PASSES.item(index);
        Double areaHa = read.number(LogPaths.AREA, at);
        Double productKg = read.number(LogPaths.PRODUCT_DRAWN, at);
        PassUse use = areaHa == null || productKg == null
                ? null
                : PassUse.of(
                        areaHa,
                        productKg,
                        nitrogenPercent,
                        plan == null ? null : plan.amounts().productKgPerHa());
        if (use != null) {
            checkUse(use, at);
        }
        String field = typed.field().isBlank() ? read.get(StartPaths.FIELD) : typed.field();
        return new Pass(index, DateText.iso(typed.date()), field.strip(), areaHa, productKg, use);
    }

    private void checkUse(PassUse use, EntryPath<PassEntry> at) {
        Double deviation = use.deviationPercent();
        if (deviation != null && Math.abs(deviation) > RateAssessor.tolerancePercent(read) + ROUNDING) {
            findings.add(Finding.warn(
                            Step.CARD,
                            "log.use",
                            Arg.number(use.productKgPerHa(), 0, Unit.KG_PER_HA),
                            Arg.number(deviation, 0, Unit.PERCENT))
                    .at(LogPaths.PRODUCT_DRAWN.at(at).pointer())
                    .from(SOURCE));
        }
    }

    /** @param passes complete passes over one field, at least one */
    private Field field(List<Pass> passes) {
        FieldUse use = FieldUse.of(amounts(passes));
        Double spread = use.nitrogenKgPerHa();
        if (season == null || spread == null) {
            return new Field(passes.get(0).field(), use, null);
        }
        double planned = season.totalKgPerHa();
        if (spread > planned * (1 + (RateAssessor.tolerancePercent(read) + ROUNDING) / PERCENT)) {
            int last = passes.get(passes.size() - 1).index();
            findings.add(Finding.note(
                            Step.CARD,
                            "log.seasonMore",
                            Arg.number(spread, 0, Unit.KG_PER_HA),
                            Arg.number(planned, 0, Unit.KG_PER_HA))
                    .at(LogPaths.FIELD.at(LogPaths.PASSES.item(last)).pointer())
                    .from(SOURCE));
        }
        return new Field(
                passes.get(0).field(), use, new Plan(season.passesKgPerHa().size(), planned, planned - spread));
    }
}
