package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.CardResult;
import org.evenfall.setup.entry.Setup;

/** Step 7: who signs, and what goes on the card once there can be one. */
final class CardParts {

    private CardParts() {}

    static List<ResultPart> parts(Setup setup, Assessment assessment, Sentences words) {
        CardResult card = assessment.card();
        List<ResultLine> lines = new ArrayList<>(CardLines.people(words, setup));
        if (card.cardAllowed() || card.findingOnly()) {
            lines.add(ResultLine.sentence(CardLines.state(words, card)));
        }
        List<ResultLine> figures = card.cardAllowed() ? CardLines.figures(words, setup, assessment) : List.of();
        return List.of(
                ResultPart.of(lines),
                ResultPart.inline(words.text("report.onCard"), figures),
                ResultPart.of(words.text("log.passes"), LogLines.of(words, assessment.log())));
    }
}
