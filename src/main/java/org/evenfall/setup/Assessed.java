package org.evenfall.setup;

import java.util.List;
import org.evenfall.finding.Finding;

/**
 * What the assessment of one step gives.
 *
 * @param <T> type of the result
 * @param result the result
 * @param findings what is to be reported with it, in the order in which it was found
 */
record Assessed<T>(T result, List<Finding> findings) {

    Assessed {
        findings = List.copyOf(findings);
    }
}
