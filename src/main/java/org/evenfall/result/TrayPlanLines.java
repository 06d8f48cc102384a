package org.evenfall.result;

import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.CatchPlan;
import org.jspecify.annotations.Nullable;

/** Step 6 in words, before driving: how often to drive and what to expect in a tray. */
public final class TrayPlanLines {

    private TrayPlanLines() {}

    /** Runs, catch, granules and noise; none without a plan. */
    public static List<ResultLine> runs(Sentences words, @Nullable CatchPlan plan) {
        return plan == null
                ? List.of()
                : List.of(
                        line(words, "trays.figure.runs", plan.runsNeeded(), 0, Unit.NONE),
                        line(words, "trays.figure.catch", plan.catchPerRunG(), 1, Unit.G),
                        line(words, "trays.figure.granules", plan.granulesPerRun(), 0, Unit.NONE),
                        line(words, "trays.figure.noise", plan.noiseAtRunsPercent(), 0, Unit.PERCENT));
    }

    private static ResultLine line(Sentences words, String key, double value, int decimals, Unit unit) {
        return new ResultLine(words.text(key), words.number(value, decimals, unit));
    }
}
