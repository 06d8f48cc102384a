package org.evenfall.setup;

import org.evenfall.trays.CatchPlan;
import org.evenfall.trays.FirstMove;
import org.evenfall.trays.FirstMoves;
import org.evenfall.trays.TrayLayout;
import org.jspecify.annotations.Nullable;

/** The first move on paper for a setup: from the settings that it has now. Computed where it is asked for only. */
public final class FieldMoves {

    private FieldMoves() {}

    /** Null without tramline width, rate or tray. */
    public static @Nullable FirstMove first(Assessment assessment) {
        TrayLayout layout = assessment.trays().layout();
        CatchPlan plan = assessment.trays().plan();
        TestConditions now = assessment.now();
        if (layout == null || plan == null || now == null) {
            return null;
        }
        return FirstMoves.of(
                layout,
                now.tramlines(),
                plan,
                assessment.machine().levers(),
                assessment.card().settings().levers(),
                TrayNoise.of(assessment.read(), assessment.product()).granuleG());
    }
}
