package org.evenfall.publish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Chart;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Level;
import org.evenfall.report.ReportContent.Text;
import org.evenfall.report.ReportContent.Tray;
import org.evenfall.result.AnswerGroups;
import org.evenfall.result.ResultLine;
import org.evenfall.result.TrayParts;
import org.evenfall.result.TrayTestLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.trays.Advice;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** Every tray test: its picture, how even, what was advised then, and what it was driven under. */
record ReportTests(Setup setup, Assessment assessment, Sentences words) {

    /**
     * All tests, oldest first.
     *
     * @param answers the answers of the step
     */
    List<Block> blocks(List<AnswerGroups.Group> answers) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < setup.trays().tests().size(); i++) {
            String row = TrayPaths.TESTS.pointer() + "/" + i;
            blocks.add(new Heading(Level.PART, words.text("form.test", Arg.count(i + 1L))));
            blocks.addAll(test(i));
            answers.stream()
                    .filter(group -> group.row().equals(row))
                    .findFirst()
                    .ifPresent(group -> {
                        blocks.add(new Heading(Level.PART, words.text("report.driven")));
                        blocks.add(new Text(ReportBlocks.labelled(group.lines())));
                    });
        }
        return blocks;
    }

    private List<Block> test(int index) {
        Optional<TrayTestResult> result = assessment.trays().tests().stream()
                .filter(test -> test.index() == index)
                .findFirst();
        if (result.isEmpty()) {
            return List.of(new Text(words.text("report.testOpen")));
        }
        Uniformity evenness = result.get().evenness();
        List<Block> blocks = new ArrayList<>();
        blocks.add(chart(evenness));
        List<ResultLine> lines = TrayParts.evenness(evenness, words);
        ResultLine.addSentence(lines, TrayTestLines.meanRate(words, evenness));
        blocks.addAll(ReportBlocks.of(lines));
        Advice advice = adviceAfter(index);
        if (advice != null) {
            blocks.add(new Heading(Level.PART, words.text("report.adviceThen")));
            blocks.addAll(ReportBlocks.of(TrayParts.advice(advice, words)));
        }
        return blocks;
    }

    /** The advice while this test was the last; null where another one was then the last that counts. */
    private @Nullable Advice adviceAfter(int index) {
        int tests = setup.trays().tests().size();
        TraysResult then = index == tests - 1
                ? assessment.trays()
                : Assessor.assess(setup.withTrays(
                                setup.trays().withTests(setup.trays().tests().subList(0, index + 1))))
                        .trays();
        TrayTestResult last = then.last();
        return last != null && last.index() == index ? then.advice() : null;
    }

    private Chart chart(Uniformity test) {
        List<Tray> trays = IntStream.range(0, test.trays())
                .mapToObj(i ->
                        tray(test.positionsM().get(i), test.relativePercent().get(i)))
                .sorted(Comparator.comparingDouble(Tray::placeM))
                .toList();
        String inWords = trays.stream()
                .map(tray -> words.number(tray.percent(), 0, Unit.PERCENT))
                .collect(Collectors.joining(", "));
        return new Chart(
                trays,
                List.of(CvLimits.GOOD_PERCENT, CvLimits.FIELD_PERCENT),
                words.text("picture.bars.axis"),
                words.text("card.barsTold", Arg.text(inWords)));
    }

    private Tray tray(double placeM, double percent) {
        return new Tray(placeM, percent, TrayParts.place(placeM, words));
    }
}
