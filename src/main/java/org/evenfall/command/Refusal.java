package org.evenfall.command;

import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.quantity.PlainText;
import org.evenfall.quantity.Quoted;
import org.evenfall.setup.Assessment;

/** Why no card can be made, in one line: what stops it first, else what is missing first, with its place in the file. */
final class Refusal {

    private Refusal() {}

    /** Reports why there is no card, in one line. */
    static void report(CommandContext context, String file, Assessment assessment) {
        List<Finding> stops = assessment.findings().stream()
                .filter(finding -> finding.kind() == FindingKind.STOP)
                .toList();
        List<Finding> missing = assessment.findings().stream()
                .filter(finding -> finding.kind() == FindingKind.MISSING)
                .toList();
        List<Finding> first = stops.isEmpty() ? missing : stops;
        StringBuilder line = new StringBuilder(file);
        if (first.isEmpty()) {
            line.append(": ").append(context.words().text("command.noCard"));
        } else {
            line.append(": ")
                    .append(first.get(0).field())
                    .append(": ")
                    .append(context.words().of(first.get(0)));
        }
        int others = stops.size() + missing.size() - 1;
        if (others > 0) {
            line.append(' ').append(context.words().text("command.andMore", Arg.count(others)));
        }
        context.err().println(PlainText.oneLine(line.toString(), Quoted.MOST_IN_MESSAGE));
        context.err().flush();
    }
}
