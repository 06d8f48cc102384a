package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Arg;

/**
 * A condition that has changed by more than its tolerance since a measurement.
 *
 * @param kind which condition
 * @param then how it was, as it is shown
 * @param now how it is, as it is shown
 * @param field JSON pointer of the entry that says how it was
 */
record ConditionDifference(ConditionKind kind, Arg then, Arg now, String field) {

    /** Arguments of its sentence: number of the test, how it was, how it is. */
    Arg[] args(int test) {
        return List.of(Arg.count(test), then, now).toArray(new Arg[0]);
    }
}
