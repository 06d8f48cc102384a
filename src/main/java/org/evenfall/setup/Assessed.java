package org.evenfall.setup;

import java.util.List;
import java.util.Objects;
import org.evenfall.finding.Finding;
import org.jspecify.annotations.Nullable;

/**
 * What the assessment of one step gives.
 *
 * @param <T> type of the result
 * @param result the result; null where the step has none yet
 * @param findings what is to be reported with it, in the order in which it was found
 */
record Assessed<T>(@Nullable T result, List<Finding> findings) {

    Assessed {
        findings = List.copyOf(findings);
    }

    /**
     * The result of a step that always has one.
     *
     * @throws NullPointerException when there is none (a programming error)
     */
    T present() {
        return Objects.requireNonNull(result, "result");
    }
}
