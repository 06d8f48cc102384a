package org.evenfall.trays.ground;

import java.util.Map;
import org.evenfall.trays.ExpectedCv;
import org.jspecify.annotations.Nullable;

/**
 * What a rule does next.
 *
 * @param kind which
 * @param settings settings of the next test; empty without one
 * @param expected what the rule expects of them; null where it says nothing
 * @param moreRuns runs of the next test beyond the plan
 */
record Decision(
        Kind kind, Map<String, Double> settings, @Nullable ExpectedCv expected, int moreRuns) {

    enum Kind {
        TEST,
        /** Good: spread with the settings of the last test. */
        KEEP,
        /** Gives up: spread with the best settings that were tested. */
        STOP
    }

    static final Decision KEEP = new Decision(Kind.KEEP, Map.of(), null, 0);
    static final Decision STOP = new Decision(Kind.STOP, Map.of(), null, 0);

    static Decision test(Map<String, Double> settings) {
        return new Decision(Kind.TEST, settings, null, 0);
    }
}
