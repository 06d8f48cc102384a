package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.Tramlines;
import org.evenfall.trays.TrayCatches;
import org.evenfall.trays.TrayLayouts;
import org.evenfall.trays.Uniformity;
import org.evenfall.trays.UniformityCalculator;
import org.jspecify.annotations.Nullable;

/** Step 6: how even one tray test is, and what is doubtful in it. */
final class TrayTestAssessor {

    /** Assumption: half a tray; nobody paces out a place closer, m. */
    static final double BEYOND_MIDWAY_M = 0.25;

    private final ReadSetup read;
    private final TestGround ground;
    private final Tramlines today;
    private final @Nullable CatchPlan plan;
    private final TrayNoise noise;
    private final CatchReader catches;
    private final List<Finding> findings;

    /**
     * @param today how the field is driven now, which counts where a test states nothing else
     * @param plan runs needed; null without a rate
     * @param noise what the noise of a catch is computed from
     * @param findings takes what is to be reported
     */
    TrayTestAssessor(
            ReadSetup read,
            ProductResult product,
            TestGround ground,
            Tramlines today,
            @Nullable CatchPlan plan,
            TrayNoise noise,
            List<Finding> findings) {
        this.read = read;
        this.ground = ground;
        this.today = today;
        this.plan = plan;
        this.noise = noise;
        this.catches = new CatchReader(read, product, findings);
        this.findings = findings;
    }

    /** How even the test is; null while it is blank or, with a finding, when it cannot be used. */
    @Nullable
    Uniformity evenness(EntryPath<TrayTestEntry> at) {
        EntryPath<List<EnteredQuantity>> list = TrayPaths.TEST_CATCHES.at(at);
        List<EnteredQuantity> typed = list.get(read.setup());
        if (TrayPaths.TEST_CATCHES.isBlank(typed)) {
            return null;
        }
        List<Double> places = places(at);
        if (!oneCatchATray(places, typed.size(), list.pointer()) || !withinField(places, at)) {
            return null;
        }
        List<Double> positions = new ArrayList<>();
        List<CatchSlips.Catch> caught = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            EntryPath<EnteredQuantity> one = QuantityList.item(list, i);
            Double grams = catches.grams(one);
            if (grams != null) {
                // no place is known only where there are too few catches
                if (i < places.size()) {
                    positions.add(places.get(i));
                }
                caught.add(new CatchSlips.Catch(typed.get(i).text().strip(), grams, one.pointer()));
            }
        }
        return usable(caught, typed.size(), list.pointer()) ? evenness(at, positions, caught) : null;
    }

    private boolean usable(List<CatchSlips.Catch> caught, int trays, String at) {
        if (caught.size() < TrayLayouts.FEWEST_TRAYS) {
            findings.add(Finding.note(
                            Step.TRAYS, "trays.tooFew", Arg.count(caught.size()), Arg.count(TrayLayouts.FEWEST_TRAYS))
                    .from("source.fewestTrays")
                    .at(at));
            return false;
        }
        if (caught.stream().mapToDouble(CatchSlips.Catch::grams).sum() <= 0) {
            findings.add(Finding.stop(Step.TRAYS, "trays.nothingCaught").at(at));
            return false;
        }
        if (caught.size() < trays) {
            findings.add(Finding.note(Step.TRAYS, "trays.spilt", Arg.count((long) trays - caught.size()))
                    .at(at));
        }
        return true;
    }

    private Uniformity evenness(EntryPath<TrayTestEntry> at, List<Double> positions, List<CatchSlips.Catch> caught) {
        findings.addAll(CatchSlips.of(caught));
        Double typedRuns = read.number(TrayPaths.TEST_RUNS, at);
        int runs = typedRuns == null ? 1 : (int) Math.round(typedRuns);
        if (plan != null && runs < plan.runsNeeded()) {
            findings.add(Finding.note(Step.TRAYS, "trays.fewRuns", Arg.count(runs), Arg.count(plan.runsNeeded()))
                    .from("source.countingNoise")
                    .at(TrayPaths.TEST_RUNS.at(at).pointer()));
        }
        Tramlines tramlines = TestConditionReader.tramlines(read, at, today);
        return UniformityCalculator.of(new TrayCatches(
                positions,
                caught.stream().map(CatchSlips.Catch::grams).toList(),
                tramlines.widthM(),
                tramlines.pattern(),
                ground.areaM2(),
                runs,
                noise.granuleG(),
                noise.stepG()));
    }

    /**
     * Where the trays of a test are, m: its typed positions, else evenly, as many as trays are typed, else as catches.
     *
     * @return empty where neither positions nor a number of trays nor enough catches are typed
     */
    List<Double> places(EntryPath<TrayTestEntry> at) {
        EntryPath<List<EnteredQuantity>> positions = TrayPaths.TEST_POSITIONS.at(at);
        if (!TrayPaths.TEST_POSITIONS.isBlank(positions.get(read.setup()))) {
            return read.numbers(positions);
        }
        int caught = TrayPaths.TEST_CATCHES.at(at).get(read.setup()).size();
        return ground.typedTrays() == null && caught < TrayLayouts.FEWEST_TRAYS
                ? List.of()
                : ground.evenPlacesM(
                        TestConditionReader.tramlines(read, at, today).widthM(), caught);
    }

    /** Whether there are as many places as catches; a finding when not. Too few catches are reported as such. */
    private boolean oneCatchATray(List<Double> places, int catchCount, String catchesPointer) {
        if (places.size() == catchCount || (places.isEmpty() && catchCount < TrayLayouts.FEWEST_TRAYS)) {
            return true;
        }
        findings.add(Finding.stop(Step.TRAYS, "trays.count", Arg.count(places.size()), Arg.count(catchCount))
                .at(catchesPointer));
        return false;
    }

    /** Whether no tray is further out than midway to the next tramline; a finding for each that is. */
    private boolean withinField(List<Double> places, EntryPath<TrayTestEntry> at) {
        double furthestM = TestConditionReader.tramlines(read, at, today).widthM() / 2;
        EntryPath<List<EnteredQuantity>> positions = TrayPaths.TEST_POSITIONS.at(at);
        boolean within = true;
        for (int i = 0; i < places.size(); i++) {
            if (Math.abs(places.get(i)) > furthestM + BEYOND_MIDWAY_M) {
                findings.add(Finding.stop(
                                Step.TRAYS,
                                "trays.beyondMidway",
                                Arg.count(i + 1L),
                                Arg.number(places.get(i), 1, Unit.M),
                                Arg.number(-furthestM, 1, Unit.M),
                                Arg.number(furthestM, 1, Unit.M))
                        .at(QuantityList.item(positions, i).pointer()));
                within = false;
            }
        }
        return within;
    }
}
