package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetContent.Plan;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;

/** Where the trays go, how the passes are driven and how often. */
record TrayPlanBlock(Setup setup, Assessment assessment, Sentences words) {

    /** Less is the tramline itself, m: half a centimetre. */
    private static final double ON_TRAMLINE_M = 0.005;

    /** Passes of a sketch without a tramline width: as far apart as the trays reach, in distances of two trays. */
    private static final double SKETCH_PASS = 7;

    Plan plan() {
        TrayLayout layout = assessment.trays().layout();
        Boxes boxes = new Boxes(setup, words, "6a");
        List<Double> trays = layout == null ? sketch() : layout.positionsM();
        List<Double> passes = layout == null ? List.of(-SKETCH_PASS, 0.0, SKETCH_PASS) : layout.passesM();
        List<Boolean> forward = layout == null ? List.of(false, true, false) : layout.passForward();
        List<String> notes = new ArrayList<>();
        if (layout == null) {
            notes.add(words.text("sheet.planSketch"));
        } else {
            notes.add(words.text("sheet.pace", Arg.text(distances(layout.positionsM()))));
            notes.add(words.text("picture.plan.note"));
        }
        notes.addAll(runs());
        return new Plan(
                boxes.heading(words.text("prompt.6a.name"), notes),
                trays,
                passes,
                forward,
                IntStream.rangeClosed(1, passes.size())
                        .mapToObj(i -> words.text("picture.plan.pass", Arg.count(i)))
                        .toList(),
                words.text("sheet.windArrow"));
    }

    private static List<Double> sketch() {
        int middle = TrayLayouts.USUAL_TRAYS / 2;
        return IntStream.range(0, TrayLayouts.USUAL_TRAYS)
                .mapToObj(i -> (double) (i - middle))
                .toList();
    }

    private String distances(List<Double> placesM) {
        return IntStream.range(0, placesM.size())
                .mapToObj(i -> distance(i + 1, placesM.get(i)))
                .collect(Collectors.joining(" · "));
    }

    private String distance(int tray, double placeM) {
        if (Math.abs(placeM) < ON_TRAMLINE_M) {
            return words.text("sheet.paceOn", Arg.count(tray));
        }
        return words.text(
                placeM < 0 ? "sheet.paceLeft" : "sheet.paceRight",
                Arg.count(tray),
                Arg.number(Math.abs(placeM), 2, Unit.M));
    }

    private List<String> runs() {
        CatchPlan plan = assessment.trays().plan();
        StripLoad strip = assessment.trays().strip();
        List<String> notes = new ArrayList<>();
        if (plan != null) {
            notes.add(words.text("sheet.runs", Arg.count(plan.runsNeeded())));
        }
        if (strip != null) {
            notes.add(words.text(
                    "sheet.strip",
                    Arg.number(strip.productUsedKg(), 0, Unit.KG),
                    Arg.number(strip.runs() * strip.productPerRunKgPerHa(), 0, Unit.KG_PER_HA)));
        }
        return notes;
    }
}
