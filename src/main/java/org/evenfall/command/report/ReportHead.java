package org.evenfall.command.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.result.CardLines;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;

/** The first lines: what it is about, and whether a card can be made. */
final class ReportHead {

    private ReportHead() {}

    static void write(ReportPage page, Setup setup, Assessment assessment, Sentences words) {
        String about = about(setup, assessment, words);
        if (!about.isEmpty()) {
            page.line(about, 0);
        }
        page.line(CardLines.answer(words, assessment), 0);
    }

    /** Farm, field, crop, product and width, as far as they are known. */
    static String about(Setup setup, Assessment assessment, Sentences words) {
        Double width = assessment.tramlineWidthM();
        return Stream.of(
                        setup.start().farm(),
                        setup.start().field(),
                        setup.start().crop(),
                        setup.product().name(),
                        width == null ? "" : words.number(width, 0, Unit.M))
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(" · "));
    }
}
