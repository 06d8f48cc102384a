package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** Step 2: the closest tested products, and the settings to start from. */
final class MatchParts {

    /** So many of the closest are shown; the others are rarely chosen. */
    private static final int CLOSEST = 3;

    private MatchParts() {}

    static List<ResultPart> parts(Setup setup, Assessment assessment, Sentences words) {
        MatchResult match = assessment.match();
        List<ResultPart> parts = new ArrayList<>();
        if (match != null && !match.ranked().isEmpty()) {
            List<RankedProduct> closest =
                    match.ranked().subList(0, Math.min(CLOSEST, match.ranked().size()));
            parts.add(ResultPart.of(words.text("match.ranked"), verdicts(closest, words)));
            parts.add(new ResultPart(
                    "", table(closest, words), List.of(ResultLine.sentence(MatchLines.repeats(words, match)))));
        }
        parts.add(ResultPart.inline(
                words.text("match.settings"),
                MatchLines.settings(words, setup.match().settings())));
        return parts;
    }

    private static List<ResultLine> verdicts(List<RankedProduct> closest, Sentences words) {
        List<ResultLine> lines = new ArrayList<>();
        for (RankedProduct reference : closest) {
            String place = number(lines.size(), words);
            lines.add(new ResultLine(place + "  " + reference.name(), words.choice(reference.verdict())));
        }
        return lines;
    }

    private static List<List<String>> table(List<RankedProduct> closest, Sentences words) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("", MatchLines.headers(words)));
        for (RankedProduct reference : closest) {
            rows.add(row(number(rows.size() - 1, words), MatchLines.figures(words, reference)));
        }
        return rows;
    }

    private static List<String> row(String first, List<String> others) {
        List<String> row = new ArrayList<>(List.of(first));
        row.addAll(others);
        return row;
    }

    private static String number(int index, Sentences words) {
        return words.number(index + 1.0, 0, Unit.NONE);
    }
}
