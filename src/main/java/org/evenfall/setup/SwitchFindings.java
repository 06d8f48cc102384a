package org.evenfall.setup;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Interval;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.setup.entry.TrayEntries;
import org.evenfall.setup.path.Limits;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.TrayPaths;
import org.jspecify.annotations.Nullable;

/**
 * Step 6: the distances of the discs from the headland tramline at which the outlets open and close. Plus is into the field,
 * minus toward its edge; a minus is reported, so that nobody types it unawares.
 */
final class SwitchFindings {

    /** A smaller difference is shown as nothing, m. */
    private static final double LEAST_SHOWN_M = 0.5;

    private SwitchFindings() {}

    static List<Finding> of(ReadSetup read) {
        List<Finding> findings = new ArrayList<>();
        add(findings, read, TrayPaths.SWITCH_ON, "trays.switchOnShort");
        add(findings, read, TrayPaths.SWITCH_OFF, "trays.switchOffShort");
        return findings;
    }

    /**
     * How much nearer to the headland tramline, or further from it, the discs are than with a 27 % N product, by the flight
     * model. None while nothing is measured.
     */
    static List<Finding> againstDense(@Nullable MatchResult match) {
        return match == null || match.throwAgainstDenseM() == null || match.throwAgainstDenseIntervalM() == null
                ? List.of()
                : againstDense(match.throwAgainstDenseM(), match.throwAgainstDenseIntervalM());
    }

    /**
     * One note, or none where the difference is nothing in the figures shown.
     *
     * <p>The granules land behind the discs. Switched on, the discs are ahead of the place by the throw; switched off, they
     * are short of it by the throw. So a shorter throw makes the first distance smaller and the second greater, plus being
     * into the field. Assumption: by the whole change of the throw; no distance by product is published.
     *
     * @param metres throw less the throw of a 27 % N product, m
     * @param intervalM its interval, m
     */
    static List<Finding> againstDense(double metres, Interval intervalM) {
        if (Math.abs(metres) < LEAST_SHOWN_M) {
            return List.of();
        }
        boolean shorter = metres < 0;
        return List.of(Finding.note(
                        Step.TRAYS,
                        shorter ? "trays.switchNearer" : "trays.switchFurther",
                        Arg.number(Math.abs(metres), 0, Unit.M),
                        Arg.number(Math.max(0, shorter ? -intervalM.high() : intervalM.low()), 0, Unit.NONE),
                        Arg.number(shorter ? -intervalM.low() : intervalM.high(), 0, Unit.M))
                .at(TrayPaths.SWITCH_ON.pointer())
                .from("source.switchModel"));
    }

    private static void add(List<Finding> findings, ReadSetup read, Quantity<TrayEntries> entry, String name) {
        Double metres = read.number(entry);
        if (metres == null || metres >= 0) {
            return;
        }
        Limits usual = entry.range(read.setup()).usual();
        findings.add(Finding.note(
                        Step.TRAYS,
                        "trays.switchBefore",
                        Arg.word(name),
                        Arg.number(metres, 1, Unit.M),
                        Arg.number(usual.low(), 0, Unit.NONE),
                        Arg.number(usual.high(), 0, Unit.M))
                .at(entry.pointer()));
    }
}
