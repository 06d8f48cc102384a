package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.flight.Throws;
import org.evenfall.granule.ParticleDensities;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.machine.MachineProfile;
import org.evenfall.machine.YardCheck;
import org.evenfall.machine.YardResult;
import org.evenfall.quantity.Typed;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.BucketResult;
import org.evenfall.rate.BucketTests;
import org.evenfall.reference.RankContext;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.trays.AdviceInput;
import org.evenfall.trays.Advisor;
import org.evenfall.trays.CatchConversion;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.CatchPlans;
import org.evenfall.trays.CropLoss;
import org.evenfall.trays.Evenness;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.Evennesses;
import org.evenfall.trays.ShapeCurve;
import org.evenfall.trays.ShapeCurves;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.WeatherGate;
import org.jspecify.annotations.Nullable;

/** Step 6: the tray test. */
final class TraysAssessor {

    /** Granule where the product is not measured: 3.2 mm, 1 340 kg/m³. Ours. */
    private static final double USUAL_GRANULE_G =
            CatchPlans.meanGranuleG(new SizeDistribution(3.2, 1.2, 0, 0, false), 1340);

    private final Setup setup;
    private final MachineProfile machine;
    private final EntryReader reader;
    private final TrayEntries entries;

    private TraysAssessor(Setup setup, MachineProfile machine, EntryReader reader) {
        this.setup = setup;
        this.machine = machine;
        this.reader = reader;
        this.entries = setup.trays();
    }

    static TraysResult assess(
            Setup setup,
            MachineProfile machine,
            @Nullable Double tramlineWidthM,
            ProductResult product,
            RateResult rate,
            YardResult yard,
            EntryReader reader) {
        return new TraysAssessor(setup, machine, reader).assess(tramlineWidthM, product, rate, yard);
    }

    private TraysResult assess(@Nullable Double widthM, ProductResult product, RateResult rate, YardResult yard) {
        TestGround ground = TestGround.read(setup, yard, reader);
        Double boreMm = reader.read(entries.tubeBore(), Fields.TUBE_BORE, "/trays/tubeBore");
        reader.read(entries.switchOn(), Fields.SWITCH_DISTANCE, "/trays/switchOn");
        reader.read(entries.switchOff(), Fields.SWITCH_DISTANCE, "/trays/switchOff");
        if (widthM == null) {
            reader.need(false, Step.TRAYS, "missing.widthFirst", "");
            return new TraysResult(null, null, List.of(), List.of(), null, null, null);
        }
        TrayLayout layout = ground.layout(widthM, driving(), reader);
        double granuleG = product.sieve() == null || product.particle() == null
                ? USUAL_GRANULE_G
                : CatchPlans.meanGranuleG(
                        product.sieve().distribution(), product.particle().kgPerM3());
        Double density = product.density() == null ? null : product.density().meanKgPerL();
        double stepG = readingStepG(boreMm, density);
        CatchPlan plan = rate.plan() == null
                ? null
                : CatchPlans.of(rate.plan().productKgPerHa(), ground.areaM2(), granuleG, stepG);
        List<TrayTestResult> results = new ArrayList<>();
        List<AdviceInput.DoneTest> done = new ArrayList<>();
        for (int i = 0; i < entries.tests().size(); i++) {
            TrayTestEntry test = entries.tests().get(i);
            String at = "/trays/tests/" + i;
            ReadSettings settings =
                    MatchAssessor.settings(test.settings(), machine, at + "/settings", reader, Step.TRAYS);
            Double wind = reader.read(test.wind(), Fields.WIND, at + "/wind");
            windy(wind, ground.gate(), at);
            Evenness evenness = evenness(test, at, layout, boreMm, density, granuleG, stepG, plan);
            if (evenness != null) {
                results.add(new TrayTestResult(i, test.date(), evenness));
                done.add(new AdviceInput.DoneTest(evenness, settings.levers(), wind));
            }
        }
        verdict(results);
        List<TestComparison> comparisons = TestComparisons.of(results, done, machine.levers(), reader);
        return new TraysResult(
                layout,
                plan,
                results,
                comparisons,
                results.isEmpty() ? null : CropLoss.of(last(results).cvPercent()),
                Advisor.advise(
                        new AdviceInput(
                                done,
                                machine.levers(),
                                widthM,
                                levelInOrder(yard),
                                ptoInOrder(yard),
                                outletsInOrder(rate, yard),
                                entries.twoLevers() == YesNo.YES,
                                driving(),
                                ground.gate()),
                        () -> curves(product, widthM)),
                LongPassAssessor.assess(entries, widthM, driving(), boreMm, density, reader));
    }

    /** A test that was driven in too strong a wind proves little. */
    private void windy(@Nullable Double wind, WeatherGate gate, String at) {
        if (wind != null && gate.ask(wind) == WeatherGate.Answer.STOP) {
            reader.add(Finding.warn(Step.TRAYS, "trays.drivenInWind", Arg.number(wind, 1, Unit.M_PER_S))
                    .at(at + "/wind")
                    .from("source.wind"));
        }
    }

    private DrivingPattern driving() {
        return setup.start().drivingPattern() == DrivingPattern.ROUND_AND_ROUND
                ? DrivingPattern.ROUND_AND_ROUND
                : DrivingPattern.BACK_AND_FORTH;
    }

    /** How the landing model expects the machine to answer; the broad default while the product is not measured. */
    private List<ShapeCurve> curves(ProductResult product, double widthM) {
        if (product.sieve() == null || product.density() == null) {
            return ShapeCurves.broad();
        }
        double radiusM = machine.discRadiusM() == null ? Throws.USUAL_DISC_RADIUS_M : machine.discRadiusM();
        double rpm = machine.discSpeedAt540Rpm() == null ? Throws.USUAL_DISC_RPM : machine.discSpeedAt540Rpm();
        return ShapeCurves.of(
                product.sieve().distribution(),
                1000 * product.density().meanKgPerL() / ParticleDensities.USUAL_PACKING,
                Throws.outletSpeedMPerS(radiusM, rpm),
                machine.wantedHeightM() == null ? RankContext.USUAL_HEIGHT_M : machine.wantedHeightM(),
                widthM);
    }

    private double readingStepG(@Nullable Double boreMm, @Nullable Double densityKgPerL) {
        Typed typed = entries.readingStep();
        if (typed.isBlank()) {
            return 0;
        }
        Unit unit = typed.unit() == Unit.NONE ? Unit.G : typed.unit();
        FieldSpec spec = new FieldSpec(Fields.READING_STEP.key(), Step.TRAYS, List.of(unit), 0.001, 50, 0.01, 20, 2);
        Double step = reader.read(typed.withUnit(unit), spec, "/trays/readingStep");
        if (step == null) {
            return 0;
        }
        return switch (unit.dimension()) {
            case MASS -> 1000 * unit.to(Unit.KG, step);
            case VOLUME -> densityKgPerL == null ? 0 : CatchConversion.gramsOfMl(unit.to(Unit.ML, step), densityKgPerL);
            case LENGTH ->
                densityKgPerL == null || boreMm == null
                        ? 0
                        : CatchConversion.gramsOfHeightMm(unit.to(Unit.MM, step), boreMm, densityKgPerL);
            default -> 0;
        };
    }

    private @Nullable Evenness evenness(
            TrayTestEntry test,
            String at,
            TrayLayout layout,
            @Nullable Double boreMm,
            @Nullable Double density,
            double granuleG,
            double stepG,
            @Nullable CatchPlan plan) {
        if (!ProductAssessor.anyTyped(test.catches())) {
            return null;
        }
        List<Double> places = places(test, at, layout);
        if (places == null) {
            return null;
        }
        List<Double> positions = new ArrayList<>();
        List<Double> grams = new ArrayList<>();
        List<Typed> typed = new ArrayList<>();
        for (int i = 0; i < test.catches().size(); i++) {
            Double caught = CatchReader.grams(
                    test.catches().get(i), entries.catchKind(), boreMm, density, at + "/catches/" + i, reader);
            if (caught != null) {
                positions.add(places.get(i));
                grams.add(caught);
                typed.add(test.catches().get(i));
            }
        }
        Double runsTyped = reader.read(test.runs(), Fields.RUNS, at + "/runs");
        int runs = runsTyped == null ? 1 : (int) Math.round(runsTyped);
        if (grams.size() < TrayLayouts.FEWEST_TRAYS) {
            reader.add(Finding.note(
                            Step.TRAYS, "trays.tooFew", Arg.count(grams.size()), Arg.count(TrayLayouts.FEWEST_TRAYS))
                    .at(at + "/catches"));
            return null;
        }
        if (grams.stream().mapToDouble(Double::doubleValue).sum() <= 0) {
            reader.add(Finding.stop(Step.TRAYS, "trays.nothingCaught").at(at + "/catches"));
            return null;
        }
        if (grams.size() < test.catches().size()) {
            reader.add(Finding.note(
                            Step.TRAYS,
                            "trays.spilt",
                            Arg.count((long) test.catches().size() - grams.size()))
                    .at(at + "/catches"));
        }
        CatchReader.slips(typed, grams, at + "/catches", reader);
        if (plan != null && runs < plan.runsNeeded()) {
            reader.add(Finding.note(Step.TRAYS, "trays.fewRuns", Arg.count(runs), Arg.count(plan.runsNeeded()))
                    .at(at + "/runs"));
        }
        return Evennesses.of(new TrayCatches(
                positions, grams, layout.tramlineWidthM(), driving(), layout.trayAreaM2(), runs, granuleG, stepG));
    }

    /** True positions where they were typed, else the layout's own; null with a finding when the counts differ. */
    private @Nullable List<Double> places(TrayTestEntry test, String at, TrayLayout layout) {
        List<Double> places = layout.positionsM();
        if (ProductAssessor.anyTyped(test.positions())) {
            places = reader.readAll(test.positions(), Fields.TRAY_POSITION, at + "/positions");
        }
        if (places.size() != test.catches().size()) {
            reader.add(Finding.stop(
                            Step.TRAYS,
                            "trays.count",
                            Arg.count(places.size()),
                            Arg.count(test.catches().size()))
                    .at(at + "/catches"));
            return null;
        }
        return places;
    }

    private void verdict(List<TrayTestResult> results) {
        if (results.isEmpty()) {
            reader.need(false, Step.TRAYS, "missing.trayTest", "/trays/tests");
            return;
        }
        TrayTestResult last = results.get(results.size() - 1);
        String at = "/trays/tests/" + last.index();
        Arg cv = Arg.number(last.evenness().cvPercent(), 0, Unit.PERCENT);
        Arg low = Arg.number(last.evenness().cvLowPercent(), 0, Unit.PERCENT);
        Arg high = Arg.number(last.evenness().cvHighPercent(), 0, Unit.PERCENT);
        EvennessVerdict verdict = last.evenness().verdict();
        Finding finding = switch (verdict) {
            case GOOD -> Finding.note(Step.TRAYS, "trays.good", cv, low, high);
            case ACCEPTABLE -> Finding.note(Step.TRAYS, "trays.acceptable", cv, low, high);
            case ADJUST -> Finding.warn(Step.TRAYS, "trays.adjust", cv, low, high);
            case DO_NOT_SPREAD -> Finding.stop(Step.TRAYS, "trays.doNotSpread", cv, low, high);
        };
        reader.add(finding.at(at).from("source.cvLimits"));
    }

    private static Evenness last(List<TrayTestResult> results) {
        return results.get(results.size() - 1).evenness();
    }

    private static boolean levelInOrder(YardResult yard) {
        return yard.levelDifferenceM() != null
                && Math.abs(yard.levelDifferenceM()) <= YardCheck.WORST_LEVEL_M + 1e-9
                && (yard.tyreDifferenceBar() == null
                        || Math.abs(yard.tyreDifferenceBar()) <= YardCheck.WORST_TYRE_BAR + 1e-9);
    }

    private static boolean ptoInOrder(YardResult yard) {
        return yard.ptoRpm() != null;
    }

    private static boolean outletsInOrder(RateResult rate, YardResult yard) {
        if (rate.bucketTests().isEmpty()) {
            return false;
        }
        BucketResult last = rate.bucketTests().get(rate.bucketTests().size() - 1);
        return last.leftRightPercent() != null
                && Math.abs(last.leftRightPercent()) <= BucketTests.WORST_LEFT_RIGHT_PERCENT
                && yard.vanes().stream().noneMatch(vane -> vane.failed());
    }

    /** Kinds in which a tray can be read. */
    static AmountKind kindOrMass(AmountKind kind) {
        return kind == AmountKind.VOLUME || kind == AmountKind.HEIGHT ? kind : AmountKind.MASS;
    }
}
