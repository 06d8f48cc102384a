package org.evenfall.command.report;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.result.ResultSource;
import org.evenfall.setup.Assessment;

/** The end: what limits and figures of a model rest on, as far as no finding names it. */
final class ReportSources {

    private ReportSources() {}

    static void write(ReportPage page, Assessment assessment, Sentences words) {
        Set<String> printed =
                assessment.findings().stream().map(Finding::source).collect(Collectors.toSet());
        List<String> lines = ResultSource.of(assessment).stream()
                .filter(one -> printed.add(one.source()))
                .map(one -> words.choice(one) + ": " + words.text(one.source()))
                .toList();
        if (!lines.isEmpty()) {
            page.heading(words.text("result.sources"));
            lines.forEach(page::item);
        }
    }
}
