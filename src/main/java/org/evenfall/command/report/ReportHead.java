package org.evenfall.command.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.result.CardLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.CardResult;
import org.evenfall.setup.entry.Setup;

/** The first lines: what it is about, and whether a card can be made. */
final class ReportHead {

    private ReportHead() {}

    static void write(ReportPage page, Setup setup, Assessment assessment, Sentences words) {
        Double width = assessment.tramlineWidthM();
        String about = Stream.of(
                        setup.start().farm(),
                        setup.start().field(),
                        setup.start().crop(),
                        setup.product().name(),
                        width == null ? "" : words.number(width, 0, Unit.M))
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(" · "));
        if (!about.isEmpty()) {
            page.line(about, 0);
        }
        page.line(answer(assessment, words), 0);
    }

    /** A card can be made; or not, and what to do first. */
    private static String answer(Assessment assessment, Sentences words) {
        CardResult card = assessment.card();
        if (card.findingOnly()) {
            return CardLines.state(words, card);
        }
        if (card.cardAllowed()) {
            return words.text("report.card");
        }
        List<Finding> open = CardLines.open(assessment);
        if (open.isEmpty()) {
            return words.text("command.noCard");
        }
        Arg first = Arg.text(words.of(open.get(0)));
        return open.size() == 1
                ? words.text("report.noCard", first)
                : words.text("report.noCardMore", first, Arg.count(open.size() - 1L));
    }
}
