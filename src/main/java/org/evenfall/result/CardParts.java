package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.CardResult;
import org.evenfall.setup.Rechecked;
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
                rechecked(assessment, words),
                ResultPart.inline(words.text("report.onCard"), figures),
                ResultPart.of(words.text("log.passes"), LogLines.of(words, assessment.log())));
    }

    /** From the second revision on: what was checked again, and what still holds. */
    private static ResultPart rechecked(Assessment assessment, Sentences words) {
        Rechecked since = Rechecked.of(assessment);
        return since == null
                ? ResultPart.of(List.of())
                : ResultPart.of(
                        words.text("rechecked.title", Arg.text(since.previousDate())),
                        since.parts().stream()
                                .map(part -> new ResultLine(words.text("rechecked." + part.what()), state(part, words)))
                                .toList());
    }

    private static String state(Rechecked.Part part, Sentences words) {
        String key = "rechecked." + part.state();
        boolean undated = part.date().isEmpty() && part.state() != Rechecked.State.NO_LONGER;
        return words.text(undated ? key + "_UNDATED" : key, Arg.text(part.date()));
    }
}
