package org.evenfall.command;

import org.evenfall.finding.Finding;
import org.evenfall.finding.Severity;
import org.evenfall.setup.Assessment;

/** Why no card can be made: what stops and what is missing, a line each, with its place in the file. */
final class Refusal {

    private Refusal() {}

    static void print(Surroundings around, Assessment assessment) {
        for (Finding finding : assessment.findings()) {
            if (finding.severity() == Severity.STOP || finding.key().startsWith("missing.")) {
                around.err()
                        .println("  " + finding.field() + ": " + around.words().of(finding));
            }
        }
        around.err().flush();
    }
}
