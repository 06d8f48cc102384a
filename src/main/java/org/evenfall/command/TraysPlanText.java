package org.evenfall.command;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayPlanFindings;
import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.StripLoad;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/** A tray plan in words. */
final class TraysPlanText {

    private TraysPlanText() {}

    /** Lines for the trays, the passes, what is to know before, and, where there is a plan, the runs. */
    static String of(TrayLayout layout, @Nullable CatchPlan plan, @Nullable StripLoad strip, Sentences words) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < layout.positionsM().size(); i++) {
            double moved = layout.movedM().get(i);
            lines.add(words.text(
                    layout.inWheelMarks().contains(i) ? "plan.trayInMark" : moved == 0 ? "plan.tray" : "plan.trayMoved",
                    Arg.count(i + 1L),
                    Arg.number(layout.positionsM().get(i), 2, Unit.M),
                    Arg.number(moved, 2, Unit.M)));
        }
        for (int i = 0; i < layout.passesM().size(); i++) {
            lines.add(words.text(
                    layout.passForward().get(i) ? "plan.forth" : "plan.back",
                    Arg.count(i + 1L),
                    Arg.number(layout.passesM().get(i), 2, Unit.M)));
        }
        TrayPlanFindings.of(layout, plan, strip).forEach(finding -> lines.add(words.of(finding)));
        if (plan == null) {
            lines.add(words.text("plan.needs"));
        } else {
            lines.add(words.text(
                    "plan.run",
                    Arg.number(plan.catchPerRunG(), 1, Unit.G),
                    Arg.number(plan.granulesPerRun(), 0, Unit.NONE),
                    Arg.number(plan.countingNoisePercent(), 1, Unit.PERCENT),
                    Arg.number(plan.readingNoisePercent(), 1, Unit.PERCENT)));
            lines.add(words.text(
                    "plan.runs", Arg.count(plan.runsNeeded()), Arg.number(plan.noiseAtRunsPercent(), 1, Unit.PERCENT)));
        }
        return String.join(System.lineSeparator(), lines);
    }
}
