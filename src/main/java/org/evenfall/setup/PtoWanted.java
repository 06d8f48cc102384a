package org.evenfall.setup;

import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.SettingsPaths;
import org.jspecify.annotations.Nullable;

/** The PTO speed that is wanted. */
public final class PtoWanted {

    private PtoWanted() {}

    /** That of the settings to start from, else the usual one where the handbook allows it, rpm; null without one. */
    public static @Nullable Double rpm(Assessment assessment) {
        Double typed = assessment.read().number(SettingsPaths.PTO_SPEED, MatchPaths.SETTINGS.only());
        return PtoSpeed.of(assessment.machine(), null, typed).wantedRpm();
    }
}
