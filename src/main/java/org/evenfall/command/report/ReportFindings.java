package org.evenfall.command.report;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.result.CardLines;
import org.evenfall.result.ResultLine;
import org.evenfall.result.SourceText;
import org.evenfall.setup.Assessment;

/** All findings: what stops, what is missing, warnings, notes; each with the name of its step and its source. */
final class ReportFindings {

    private static final List<FindingKind> ORDER =
            List.of(FindingKind.STOP, FindingKind.MISSING, FindingKind.WARNING, FindingKind.NOTE);

    private ReportFindings() {}

    static void write(ReportPage page, Assessment assessment, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        for (FindingKind kind : ORDER) {
            for (Finding finding : CardLines.findings(assessment, kind)) {
                lines.add(new ResultLine(words.choice(kind), words.choice(finding.step()) + ": " + words.of(finding)));
                if (!finding.source().isEmpty()) {
                    lines.add(ResultLine.below(SourceText.line(words, finding)));
                }
            }
        }
        page.heading(words.text(lines.isEmpty() ? "report.noFindings" : "report.findings"));
        page.results(lines);
    }
}
