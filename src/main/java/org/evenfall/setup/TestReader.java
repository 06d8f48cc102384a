package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.trays.CatchConversion;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.UniformityCalculator;
import org.jspecify.annotations.Nullable;

/**
 * Reads one tray test after the other: catches to grams, places, runs, and what looks odd in them.
 *
 * @param kind how the trays are read
 * @param boreMm inner diameter of the tubes, null when not told
 * @param density bulk density of the product, kg/L, null when not measured
 * @param granuleG mean granule, g
 * @param stepG smallest step read, g
 * @param driving how the passes follow each other
 * @param layout where the trays stand unless told otherwise
 * @param plan runs needed, null without a rate
 * @param reader takes the findings
 */
record TestReader(
        AmountKind kind,
        @Nullable Double boreMm,
        @Nullable Double density,
        double granuleG,
        double stepG,
        DrivingPattern driving,
        TrayLayout layout,
        @Nullable CatchPlan plan,
        EntryReader reader) {

    /** The smallest step read on scale, cylinder or tube, as grams; 0 where it is not told or cannot be turned into grams. */
    static double readingStepG(
            EnteredQuantity typed, @Nullable Double boreMm, @Nullable Double densityKgPerL, EntryReader reader) {
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

    /** How even the test is; null while it is blank or, with a finding, when it cannot be used. */
    @Nullable
    Uniformity evenness(TrayTestEntry test, String at) {
        if (!ProductAssessor.anyTyped(test.catches())) {
            return null;
        }
        List<Double> places = places(test, at);
        if (places == null) {
            return null;
        }
        List<Double> positions = new ArrayList<>();
        List<Double> grams = new ArrayList<>();
        List<EnteredQuantity> typed = new ArrayList<>();
        for (int i = 0; i < test.catches().size(); i++) {
            Double caught =
                    CatchReader.grams(test.catches().get(i), kind, boreMm, density, at + "/catches/" + i, reader);
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
        return UniformityCalculator.of(new TrayCatches(
                positions, grams, layout.tramlineWidthM(), driving, layout.trayAreaM2(), runs, granuleG, stepG));
    }

    /** True positions where they were typed, else the layout's own; null with a finding when the counts differ. */
    private @Nullable List<Double> places(TrayTestEntry test, String at) {
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
}
