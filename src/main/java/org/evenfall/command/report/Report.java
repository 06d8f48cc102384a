package org.evenfall.command.report;

import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.result.ResultPart;
import org.evenfall.result.StepParts;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.StepState;
import org.evenfall.setup.entry.Setup;

/** An assessment to read: the answer, all findings, then the results step by step in the words of the wizard, and their sources. */
public final class Report {

    private Report() {}

    /** The page, each line with its line end. */
    public static String of(Setup setup, Assessment assessment, Sentences words) {
        ReportPage page = new ReportPage(words.locale());
        ReportHead.write(page, setup, assessment, words);
        ReportFindings.write(page, assessment, words);
        for (Step step : Step.values()) {
            page.heading(step.number() + "  " + words.choice(step) + ": "
                    + words.choice(assessment.states().getOrDefault(step, StepState.OPEN)));
            List<ResultPart> parts = StepParts.of(step, setup, assessment, words);
            parts.forEach(page::part);
            if (parts.isEmpty()) {
                page.sentence(words.text("report.nothing"));
            }
        }
        ReportSources.write(page, assessment, words);
        return page.text();
    }
}
