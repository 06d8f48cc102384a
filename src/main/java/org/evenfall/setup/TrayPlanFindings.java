package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.LargerTrays;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.TrayLayouts;
import org.jspecify.annotations.Nullable;

/** What is to know before a tray test is driven: the gaps between trays, larger trays in place of runs, the strip. */
public final class TrayPlanFindings {

    private TrayPlanFindings() {}

    /**
     * The notes of a plan, in the order in which they are to be read.
     *
     * @param plan null without a rate
     * @param strip null without a rate
     */
    public static List<Finding> of(TrayLayout layout, @Nullable CatchPlan plan, @Nullable StripLoad strip) {
        List<Finding> findings = new ArrayList<>();
        int trays = layout.positionsM().size();
        double widthM = layout.tramlineWidthM();
        int proposed = TrayLayouts.proposedTrays(widthM);
        if (widthM >= TrayLayouts.CLOSER_FROM_M && trays < proposed) {
            findings.add(Finding.note(
                            Step.TRAYS,
                            "trays.sevenAtWidth",
                            Arg.count(trays),
                            Arg.number(layout.largestGapM(), 1, Unit.M),
                            Arg.count(proposed))
                    .at(TrayPaths.TRAY_COUNT.pointer())
                    .from("source.trayPlaces"));
        }
        if (plan != null && plan.largerTrays() != null) {
            findings.add(larger(plan.largerTrays()));
        }
        if (strip != null) {
            findings.add(strip(strip));
        }
        return findings;
    }

    private static Finding larger(LargerTrays larger) {
        return Finding.note(
                        Step.TRAYS,
                        larger.runs() == 1 ? "trays.largerTrays" : "trays.largerTraysRuns",
                        Arg.number(larger.sideM(), 2, Unit.M),
                        Arg.count(larger.traysTogether()),
                        Arg.count(larger.runs()))
                .from("source.countingNoise")
                .at(TrayPaths.TRAYS.only().pointer());
    }

    private static Finding strip(StripLoad strip) {
        boolean once = strip.runs() == 1;
        Arg used = Arg.number(strip.productUsedKg(), 0, Unit.KG);
        Arg length = Arg.number(strip.lengthM(), 0, Unit.M);
        Double nitrogen = strip.nitrogenPerRunKgPerHa();
        double perRun = nitrogen == null ? strip.productPerRunKgPerHa() : nitrogen;
        String key = nitrogen == null
                ? once ? "trays.stripProductOnce" : "trays.stripProduct"
                : once ? "trays.stripNitrogenOnce" : "trays.stripNitrogen";
        return Finding.note(
                        Step.TRAYS,
                        key,
                        Arg.number(perRun, 0, Unit.KG_PER_HA),
                        Arg.count(strip.runs()),
                        Arg.number(strip.runs() * perRun, 0, Unit.KG_PER_HA),
                        used,
                        length)
                .from("source.stripLength")
                .at(TrayPaths.TRAYS.only().pointer());
    }
}
