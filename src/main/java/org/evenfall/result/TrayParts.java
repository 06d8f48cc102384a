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
public final class TrayParts {

    private TrayParts() {}

    static List<ResultPart> parts(Setup setup, Assessment assessment, Sentences words) {
        TraysResult trays = assessment.trays();
        List<ResultPart> parts = new ArrayList<>();
        parts.add(layout(trays, words));
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
        parts.add(longPass(trays, words));
        return parts;
    }

    /** What there is without the tests: how often to drive over the trays, what unevenness costs, the long line. */
    public static List<ResultPart> withoutTests(TraysResult trays, Sentences words) {
        List<ResultLine> loss = new ArrayList<>();
        ResultLine.addSentence(loss, TrayTestLines.loss(words, trays));
        return ResultPart.filled(List.of(layout(trays, words), ResultPart.of(loss), longPass(trays, words)));
    }

    /** The place of a tray. */
    public static String place(double metres, Sentences words) {
        return TrayTableParts.place(metres, words);
    }

    /** How often to drive over the trays. */
    private static ResultPart layout(TraysResult trays, Sentences words) {
        return ResultPart.inline(words.text("trays.layout"), TrayPlanLines.runs(words, trays.plan()));
    }

    /** The long line under one pass. */
    private static ResultPart longPass(TraysResult trays, Sentences words) {
        return ResultPart.of(words.text("trays.line"), SinglePassLines.figures(words, trays.line()));
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
            lines.add(new ResultLine(words.text("form.test", Arg.count(test.index() + 1L)), String.join(" · ", parts)));
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
        List<ResultLine> lines = evenness(last, words);
        ResultLine.addSentence(lines, TrayTestLines.loss(words, trays));
        ResultLine.addSentence(lines, TrayTestLines.meanRate(words, last));
        return lines;
    }

    /** How even a test is, and where it differs. */
    public static List<ResultLine> evenness(Uniformity test, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addSentence(lines, TrayTestLines.fieldCv(words, test));
        lines.addAll(TrayTestLines.figures(words, test));
        lines.addAll(TrayTestLines.differences(words, test.contrasts()));
        ResultLine.addSentence(lines, TrayTestLines.noDifference(words, test.contrasts()));
        return lines;
    }

    /** What to do next, with its reasons. */
    public static List<ResultLine> advice(Advice advice, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addSentence(lines, AdviceLines.headline(words, advice));
        ResultLine.addSentence(lines, words.of(AdviceFindings.decisive(advice)));
        ResultLine.addSentence(lines, AdviceLines.expected(words, advice));
        AdviceFindings.others(advice).forEach(reason -> ResultLine.addSentence(lines, words.of(reason)));
        return lines;
    }
}
