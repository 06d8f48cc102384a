package org.evenfall.command.report;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.rate.BucketResult;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.result.AdviceLines;
import org.evenfall.result.CardLines;
import org.evenfall.result.ProductLines;
import org.evenfall.result.RateCheckLines;
import org.evenfall.result.RatePlanLines;
import org.evenfall.result.ResultLine;
import org.evenfall.result.ResultPart;
import org.evenfall.result.TrayTestLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** The demo where no window can open: what it is, that it is invented, its main results, what to run next. */
public final class DemoPage {

    private DemoPage() {}

    /** What it is and what came out, each line with its line end. */
    public static String results(Setup setup, Assessment assessment, Sentences words) {
        ReportPage page = new ReportPage(words.locale());
        page.line(words.text("demo.title"), 0);
        page.sentence(words.text("demo.what"));
        page.sentence(words.text("demo.invented"));
        page.sentence(words.text("report.first"));
        page.heading(words.text("demo.results") + ": " + ReportHead.about(setup, assessment, words));
        List<ResultLine> lines = new ArrayList<>();
        product(lines, assessment, words);
        closest(lines, assessment.match(), words);
        rate(lines, assessment, words);
        trays(lines, assessment, words);
        add(lines, words.choice(Step.CARD), List.of(CardLines.answer(words, assessment)));
        page.results(lines);
        page.sentence(words.text("report.levels"));
        return page.text();
    }

    /** What to run next: the setup, then commands under each other, each with what it gives. */
    public static String next(String setup, List<ResultLine> commands, Sentences words) {
        ReportPage heading = new ReportPage(words.locale());
        heading.heading(words.text("demo.next"));
        ReportPage page = new ReportPage(words.locale());
        page.results(commands);
        return heading.text() + path(setup) + page.text();
    }

    /** A path on one line, however long, so that it can be copied. */
    public static String path(String path) {
        return ReportPage.INDENT + path + System.lineSeparator();
    }

    /** Sentences below each other, the first with a label; those that are empty are left out. */
    private static void add(List<ResultLine> lines, String label, List<String> sentences) {
        boolean first = true;
        for (String sentence : sentences) {
            if (!sentence.isEmpty()) {
                lines.add(first ? new ResultLine(label, sentence) : ResultLine.below(sentence));
                first = false;
            }
        }
    }

    private static void product(List<ResultLine> lines, Assessment assessment, Sentences words) {
        add(
                lines,
                words.choice(Step.PRODUCT),
                List.of(
                        ProductLines.density(words, assessment.product().density()),
                        ProductLines.median(words, assessment.product().sieve())));
    }

    private static void closest(List<ResultLine> lines, @Nullable MatchResult match, Sentences words) {
        if (match != null && !match.ranked().isEmpty()) {
            RankedProduct first = match.ranked().get(0);
            add(lines, words.choice(Step.MATCH), List.of(first.name() + ": " + words.choice(first.verdict())));
        }
    }

    private static void rate(List<ResultLine> lines, Assessment assessment, Sentences words) {
        List<ResultLine> plan = RatePlanLines.figures(words, assessment.rate().plan());
        List<BucketResult> buckets = assessment.rate().bucketTests();
        add(
                lines,
                words.choice(Step.RATE),
                List.of(
                        ResultPart.joined(plan.subList(0, Math.min(2, plan.size()))),
                        ResultPart.joined(RateCheckLines.expected(words, assessment.rate())),
                        buckets.isEmpty()
                                ? ""
                                : RateCheckLines.attempt(
                                        words,
                                        buckets.size(),
                                        buckets.get(buckets.size() - 1),
                                        assessment.machine().rateSetting())));
    }

    private static void trays(List<ResultLine> lines, Assessment assessment, Sentences words) {
        Uniformity last = assessment.trays().lastEvenness();
        if (last != null) {
            add(
                    lines,
                    words.choice(Step.TRAYS),
                    List.of(
                            TrayTestLines.fieldCv(words, last),
                            ResultPart.joined(TrayTestLines.figures(words, last)),
                            AdviceLines.headline(words, assessment.trays().advice())));
        }
    }
}
