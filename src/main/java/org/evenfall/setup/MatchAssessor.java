package org.evenfall.setup;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.granule.SieveResult;
import org.evenfall.granule.Sieves;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.Lever;
import org.evenfall.machine.MachineProfile;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.Candidate;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.PatternChange;
import org.evenfall.reference.ProductRanking;
import org.evenfall.reference.RankContext;
import org.evenfall.reference.RankedProduct;
import org.evenfall.reference.TestedProduct;
import org.evenfall.reference.Verdict;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.YesNo;
import org.jspecify.annotations.Nullable;

/** Step 2: the closest tested product and the settings to start from. */
final class MatchAssessor {

    /** A change of CV below which a pattern counts as the same, points. Ours. */
    private static final double SAME_CV_POINTS = 2;

    private MatchAssessor() {}

    static @Nullable MatchResult assess(
            Setup setup,
            MachineProfile machine,
            @Nullable Double tramlineWidthM,
            ProductResult product,
            AssessOptions options,
            EntryReader reader) {
        List<TestedProduct> references = references(setup.match().library(), reader);
        boolean chosenKnown =
                references.stream().anyMatch(r -> r.id().equals(setup.match().chosen()));
        reader.need(
                chosenKnown || setup.match().startWithoutReference() == YesNo.YES,
                Step.MATCH,
                references.isEmpty() ? "missing.noReference" : "missing.chosen",
                "/match/chosen");
        settings(setup.match().settings(), machine, "/match/settings", reader, Step.MATCH);
        if (product.density() == null || tramlineWidthM == null) {
            reader.need(false, Step.MATCH, "missing.productFirst", "");
            return null;
        }
        Candidate candidate = new Candidate(
                setup.product().form(),
                product.density().meanKgPerL(),
                product.density().standardErrorKgPerL(),
                product.sieve() == null ? null : product.sieve().distribution());
        MatchResult result = ProductRanking.rank(
                candidate,
                references,
                context(setup, machine, tramlineWidthM),
                options.seed(),
                options.redraws(),
                options.watch());
        tell(result, setup, tramlineWidthM, chosenKnown, reader);
        tellPattern(result, reader);
        return result;
    }

    /** What the landing model says of keeping the settings. */
    private static void tellPattern(MatchResult result, EntryReader reader) {
        PatternChange pattern = result.pattern();
        if (pattern == null || result.overlay() == null || result.outOfReach()) {
            return;
        }
        Arg before = Arg.number(pattern.referenceCvPercent(), 0, Unit.PERCENT);
        Arg kept = Arg.number(pattern.keptCvPercent(), 0, Unit.PERCENT);
        Arg low = Arg.number(pattern.keptCvIntervalPercent().low(), 0, Unit.PERCENT);
        Arg high = Arg.number(pattern.keptCvIntervalPercent().high(), 0, Unit.PERCENT);
        Arg reset = Arg.number(pattern.resetCvPercent(), 0, Unit.PERCENT);
        String name = result.overlay().otherName();
        if (result.overlay().otherId().isEmpty()) {
            reader.add(Finding.note(Step.MATCH, "match.keptDense", before, kept, low, high, reset));
        } else if (pattern.cvChangePercent() < SAME_CV_POINTS) {
            reader.add(Finding.note(Step.MATCH, "match.keptSame", Arg.text(name), kept));
        } else {
            reader.add(Finding.note(Step.MATCH, "match.keptWorse", Arg.text(name), before, kept, low, high, reset));
        }
    }

    private static RankContext context(Setup setup, MachineProfile machine, double tramlineWidthM) {
        Double highest = machine.discSpeedAt540Rpm() == null || machine.ptoHighestRpm() == null
                ? null
                : Double.valueOf(machine.discSpeedAt540Rpm() * machine.ptoHighestRpm() / 540);
        return RankContext.of(
                        tramlineWidthM,
                        machine.discRadiusM(),
                        machine.discSpeedAt540Rpm(),
                        highest,
                        machine.wantedHeightM(),
                        setup.match().chosen())
                .reaching(
                        machine.workingWidthsM().stream().max(Double::compare).orElse(null),
                        machine.levers().stream().anyMatch(lever -> lever.widerSign() != 0));
    }

    private static void tell(
            MatchResult result, Setup setup, double tramlineWidthM, boolean chosenKnown, EntryReader reader) {
        if (result.outOfReach()) {
            Arg widest = Arg.number(result.widestReachableM() == null ? 0 : result.widestReachableM(), 0, Unit.M);
            Arg width = Arg.number(tramlineWidthM, 0, Unit.M);
            reader.add((setup.match().trayTestOnly() == YesNo.YES
                            ? Finding.warn(Step.MATCH, "match.outOfReachTray", width, widest)
                            : Finding.stop(Step.MATCH, "match.outOfReach", width, widest))
                    .at("/match/trayTestOnly"));
            return;
        }
        RankedProduct chosen = result.chosen();
        if (chosen != null && (chosenKnown || setup.match().startWithoutReference() != YesNo.YES)) {
            Arg name = Arg.text(chosen.name());
            switch (result.verdict()) {
                case HOLD -> reader.add(Finding.note(Step.MATCH, "match.hold", name));
                case HOLD_AS_START ->
                    reader.add(Finding.note(
                            Step.MATCH, "match.holdAsStart", name, Arg.word("direction." + result.direction())));
                case FIRST_GUESS_ONLY ->
                    reader.add(Finding.warn(
                            Step.MATCH, "match.firstGuess", name, Arg.word("direction." + result.direction())));
                case NOT_AT_THIS_WIDTH, NO_REFERENCE -> {
                    // told elsewhere
                }
            }
            return;
        }
        if (result.verdict() == Verdict.NO_REFERENCE || !chosenKnown) {
            double against = result.throwAgainstDenseM() == null ? 0 : result.throwAgainstDenseM();
            reader.add(Finding.note(
                    Step.MATCH,
                    against < 0 ? "match.noReferenceShorter" : "match.noReferenceFurther",
                    Arg.number(Math.abs(against), 1, Unit.M)));
        }
    }

    static List<TestedProduct> references(List<TestedProductEntry> library, EntryReader reader) {
        List<TestedProduct> products = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < library.size(); i++) {
            TestedProductEntry entry = library.get(i);
            String at = "/match/library/" + i;
            if (entry.id().isBlank() || !ids.add(entry.id())) {
                reader.add(Finding.stop(Step.MATCH, "match.idTwice", Arg.text(entry.id()))
                        .at(at + "/id"));
                continue;
            }
            Double width = reader.read(entry.width(), Fields.WORKING_WIDTH, at + "/width", Step.MATCH);
            Double density = reader.read(entry.bulkDensity(), Fields.BULK_DENSITY, at + "/bulkDensity", Step.MATCH);
            SizeDistribution sizes = sizes(entry, at, reader);
            if (width == null || (density == null && sizes == null)) {
                reader.add(Finding.warn(Step.MATCH, "match.referenceOpen", Arg.text(entry.name()))
                        .at(at));
                continue;
            }
            products.add(new TestedProduct(entry.id(), entry.name(), entry.form(), width, density, sizes));
        }
        return products;
    }

    private static @Nullable SizeDistribution sizes(TestedProductEntry entry, String at, EntryReader reader) {
        List<Double> apertures = SieveAssessor.apertures(entry.apertures(), at + "/apertures", Step.MATCH, reader);
        if (apertures != null) {
            List<Double> shares = SieveAssessor.sample(
                    entry.shares(), apertures.size() + 1, Fields.SIEVE_SHARE, at + "/shares", Step.MATCH, reader);
            if (shares != null) {
                SieveResult result = Sieves.analyse(apertures, List.of(shares));
                return result.distribution();
            }
        }
        Double d50 = reader.read(entry.d50(), Fields.MEDIAN_DIAMETER, at + "/d50");
        return d50 == null ? null : SizeDistribution.medianOnly(d50);
    }

    /** Settings as numbers, levers within their limits; findings where they are not. */
    static ReadSettings settings(
            SettingsEntries entries, MachineProfile machine, String at, EntryReader reader, Step step) {
        Map<String, Double> levers = new LinkedHashMap<>();
        for (Lever lever : machine.levers()) {
            EnteredQuantity typed = entries.levers().getOrDefault(lever.label(), EnteredQuantity.EMPTY);
            String pointer = at + "/levers/" + lever.label().replace("~", "~0").replace("/", "~1");
            Double value = reader.read(typed, Fields.LEVER_VALUE, pointer, step);
            if (value == null) {
                continue;
            }
            if (!lever.reaches(value)) {
                reader.add(Finding.stop(
                                step,
                                "settings.leverBeyond",
                                Arg.text(lever.label()),
                                Arg.number(value, 1, Unit.NONE),
                                Arg.number(lever.lowest(), 1, Unit.NONE),
                                Arg.number(lever.highest(), 1, Unit.NONE))
                        .at(pointer));
                continue;
            }
            levers.put(lever.label(), value);
        }
        Double pto = reader.read(entries.ptoSpeed(), Fields.PTO_SPEED, at + "/ptoSpeed", step);
        if (pto != null
                && ((machine.ptoLowestRpm() != null && pto < machine.ptoLowestRpm())
                        || (machine.ptoHighestRpm() != null && pto > machine.ptoHighestRpm()))) {
            reader.add(Finding.stop(step, "settings.ptoBeyond", Arg.number(pto, 0, Unit.RPM))
                    .at(at + "/ptoSpeed"));
        }
        Double heightCm = reader.read(entries.heightOverCrop(), Fields.HEIGHT_OVER_CROP, at + "/heightOverCrop", step);
        return new ReadSettings(
                levers,
                pto,
                heightCm == null ? null : Double.valueOf(heightCm / 100),
                reader.read(entries.tilt(), Fields.TILT, at + "/tilt", step));
    }
}
