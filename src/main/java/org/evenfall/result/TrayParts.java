package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.AdviceFindings;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.TraysResult;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.trays.Advice;
import org.evenfall.trays.Uniformity;

/** Step 6: the trays, the tests, how even the last one is, what to do next, the long pass. */
final class TrayParts {

    private TrayParts() {}

    static List<ResultPart> parts(Setup setup, Assessment assessment, Sentences words) {
        TraysResult trays = assessment.trays();
        List<ResultPart> parts = new ArrayList<>();
        parts.add(ResultPart.inline(words.text("trays.layout"), TrayPlanLines.runs(words, trays.plan())));
        parts.addAll(TrayTableParts.parts(trays.tests(), words));
        parts.add(ResultPart.of(tests(setup, trays, words)));
        Uniformity last = trays.lastEvenness();
        if (last != null) {
            parts.add(ResultPart.of(words.text("trays.result"), result(last, trays, words)));
        }
        Advice advice = trays.advice();
        if (last != null && advice != null) {
            parts.add(ResultPart.of(words.text("trays.next"), advice(advice, words)));
        }
        parts.add(ResultPart.of(words.text("trays.line"), SinglePassLines.figures(words, trays.line())));
        return parts;
    }

    /** Each test against the others: date, field CV, verdict, levers as typed. */
    private static List<ResultLine> tests(Setup setup, TraysResult trays, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        for (TrayTestResult test : trays.tests()) {
            List<String> parts = new ArrayList<>();
            if (!test.date().isBlank()) {
                parts.add(test.date());
            }
            parts.add(words.text(
                    "trays.cvShort", Arg.number(test.evenness().field().medianPercent(), 0, Unit.PERCENT)));
            parts.add(words.choice(test.evenness().verdict()));
            parts.addAll(levers(setup, test.index()));
            lines.add(
                    new ResultLine(words.text("trays.test", Arg.count(test.index() + 1L)), String.join(" · ", parts)));
        }
        return lines;
    }

    private static List<String> levers(Setup setup, int index) {
        List<TrayTestEntry> entries = setup.trays().tests();
        return index >= entries.size()
                ? List.of()
                : entries.get(index).settings().levers().entrySet().stream()
                        .filter(lever -> !lever.getValue().isBlank())
                        .map(lever -> lever.getKey() + " " + lever.getValue())
                        .toList();
    }

    private static List<ResultLine> result(Uniformity last, TraysResult trays, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addSentence(lines, TrayTestLines.fieldCv(words, last));
        lines.addAll(TrayTestLines.figures(words, last));
        lines.addAll(TrayTestLines.differences(words, last.contrasts()));
        ResultLine.addSentence(lines, TrayTestLines.noDifference(words, last.contrasts()));
        ResultLine.addSentence(lines, TrayTestLines.loss(words, trays));
        ResultLine.addSentence(lines, TrayTestLines.meanRate(words, last));
        return lines;
    }

    private static List<ResultLine> advice(Advice advice, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addSentence(lines, AdviceLines.headline(words, advice));
        ResultLine.addSentence(lines, words.of(AdviceFindings.decisive(advice)));
        ResultLine.addSentence(lines, AdviceLines.expected(words, advice));
        AdviceFindings.others(advice).forEach(reason -> ResultLine.addSentence(lines, words.of(reason)));
        return lines;
    }
}
