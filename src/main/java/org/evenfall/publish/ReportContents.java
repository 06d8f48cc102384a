package org.evenfall.publish;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.report.ReportContent;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Item;
import org.evenfall.report.ReportContent.Level;
import org.evenfall.report.ReportContent.Text;
import org.evenfall.result.AnswerGroups;
import org.evenfall.result.CardLines;
import org.evenfall.result.PrintedLine;
import org.evenfall.result.ResultPart;
import org.evenfall.result.StepParts;
import org.evenfall.result.TrayParts;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.StepState;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.TrayPaths;

/** Puts a report together: head, steps with results and answers, what is open, what it rests on. Computes nothing. */
record ReportContents(Setup setup, Assessment assessment, Sentences words, ReportSources sources) {

    /**
     * The content of a report.
     *
     * @param when time of printing
     */
    static ReportContent of(Setup setup, Assessment assessment, Sentences words, LocalDateTime when) {
        return new ReportContent(
                words.text("report.title"),
                new ReportContents(setup, assessment, words, new ReportSources(assessment, words)).blocks(),
                PrintedLine.of(words, setup, when),
                words.text("sheet.page", Arg.text("{0}"), Arg.text("{1}")),
                words.locale().getLanguage());
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>(new ReportHead(setup, assessment, words).blocks());
        List<AnswerGroups.Group> answers = AnswerGroups.of(words, setup);
        for (Step step : Step.values()) {
            blocks.addAll(step(
                    step, answers.stream().filter(group -> group.step() == step).toList()));
        }
        blocks.addAll(new ReportEnd(setup, assessment, words, sources).blocks());
        return blocks;
    }

    private List<Block> step(Step step, List<AnswerGroups.Group> answers) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(
                Level.SECTION,
                step.number() + "  " + words.choice(step) + ": "
                        + words.choice(assessment.states().getOrDefault(step, StepState.OPEN))));
        List<Block> results = results(step);
        if (!results.isEmpty() && !(results.get(0) instanceof Heading)) {
            blocks.add(new Heading(Level.PART, words.text("report.results")));
        }
        blocks.addAll(results);
        if (step == Step.TRAYS) {
            blocks.addAll(new ReportTests(setup, assessment, words).blocks(answers));
        }
        List<Block> notes = CardLines.findings(assessment, FindingKind.NOTE).stream()
                .filter(finding -> finding.step() == step)
                .<Block>map(finding -> new Item("", sources.sentence(finding)))
                .toList();
        if (!notes.isEmpty()) {
            blocks.add(new Heading(Level.PART, words.text("report.notes")));
            blocks.addAll(notes);
        }
        List<AnswerGroups.Group> others = answers.stream()
                .filter(group -> !group.row().startsWith(TrayPaths.TESTS.pointer() + "/"))
                .toList();
        if (!others.isEmpty()) {
            blocks.add(new Heading(Level.PART, words.text("report.answers")));
            blocks.addAll(ReportBlocks.answers(others));
        }
        if (blocks.size() == 1) {
            blocks.add(new Text(words.text("report.nothing")));
        }
        return blocks;
    }

    /** The tray tests have a picture each instead of a table; of the start, all results are answers. */
    private List<Block> results(Step step) {
        List<ResultPart> parts = switch (step) {
            case START -> List.of();
            case TRAYS -> TrayParts.withoutTests(assessment.trays(), words);
            default -> StepParts.of(step, setup, assessment, words);
        };
        return parts.stream().flatMap(part -> ReportBlocks.of(part).stream()).toList();
    }
}
