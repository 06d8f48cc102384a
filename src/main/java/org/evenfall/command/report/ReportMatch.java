package org.evenfall.command.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.evenfall.finding.Sentences;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.result.MatchLines;
import org.evenfall.result.ResultLine;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** Step 2: the nearest tested products, and the settings to start from. */
final class ReportMatch {

    /** So many of the nearest are shown; the others are rarely chosen. */
    private static final int NEAREST = 3;

    private ReportMatch() {}

    static List<ReportPart> parts(Setup setup, Assessment assessment, Sentences words) {
        List<ResultLine> ranked = new ArrayList<>();
        MatchResult match = assessment.match();
        if (match != null && !match.ranked().isEmpty()) {
            match.ranked().stream().limit(NEAREST).forEach(reference -> ranked.add(line(words, reference)));
            ResultLine.addSentence(ranked, MatchLines.repeats(words, match));
        }
        return List.of(
                ReportPart.of(words.text("match.ranked"), ranked),
                ReportPart.of(
                        words.text("match.settings"),
                        MatchLines.settings(words, setup.match().settings())));
    }

    private static ResultLine line(Sentences words, RankedProduct reference) {
        List<String> headers = MatchLines.headers(words);
        List<String> figures = MatchLines.figures(words, reference);
        String compared = IntStream.range(0, headers.size())
                .mapToObj(i -> headers.get(i) + " " + figures.get(i))
                .map(part -> part.replace(' ', '\u00a0'))
                .collect(Collectors.joining(" · "));
        return new ResultLine(reference.name(), words.choice(reference.verdict()) + ". " + compared);
    }
}
