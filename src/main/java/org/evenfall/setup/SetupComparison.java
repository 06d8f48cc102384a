package org.evenfall.setup;

import org.evenfall.trays.TestChange;
import org.evenfall.trays.TestChanges;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** The last tray test of one setup against that of another, for example of another machine or another year. */
public final class SetupComparison {

    private SetupComparison() {}

    /** The last test that can be read; null while there is none. */
    public static @Nullable Uniformity lastTest(Assessment assessment) {
        return assessment.trays().lastEvenness();
    }

    /** How the second test differs from the first. */
    public static TestChange of(Uniformity first, Uniformity second) {
        return TestChanges.of(first, second);
    }
}
