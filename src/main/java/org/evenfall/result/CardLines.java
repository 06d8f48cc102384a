package org.evenfall.result;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.evenfall.card.CardContents;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.DateText;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.CardResult;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.LogPaths;

/** Step 7 in words: may a card be made, what keeps it from being made, and what goes on it. */
public final class CardLines {

    private CardLines() {}

    /** Whether a card, a finding or nothing can be made, in one sentence. */
    public static String state(Sentences words, CardResult card) {
        return words.text(card.findingOnly() ? "card.findingOnly" : card.cardAllowed() ? "card.may" : "card.mayNot");
    }

    /** Whether a card can be made; and where not, what to do first. */
    public static String answer(Sentences words, Assessment assessment) {
        CardResult card = assessment.card();
        if (card.findingOnly()) {
            return state(words, card);
        }
        if (card.cardAllowed()) {
            return words.text("report.card");
        }
        List<Finding> open = open(assessment);
        if (open.isEmpty()) {
            return words.text("command.noCard");
        }
        Arg first = Arg.text(words.of(open.get(0)));
        return open.size() == 1
                ? words.text("report.noCard", first)
                : words.text("report.noCardMore", first, Arg.count(open.size() - 1L));
    }

    /** What keeps a setup from a card: all that stops, then all that is missing, in the order of the steps. */
    public static List<Finding> open(Assessment assessment) {
        List<Finding> open = new ArrayList<>();
        for (FindingKind kind : List.of(FindingKind.STOP, FindingKind.MISSING)) {
            findings(assessment, kind).stream()
                    .filter(finding -> !LogPaths.holds(finding.field()))
                    .forEach(open::add);
        }
        return open;
    }

    /** The findings of one kind in the order of the steps; what would be the same sentence comes once. */
    public static List<Finding> findings(Assessment assessment, FindingKind kind) {
        Set<String> named = new LinkedHashSet<>();
        return assessment.findings().stream()
                .filter(finding -> finding.kind() == kind)
                .filter(finding -> named.add(finding.step() + finding.key() + finding.args()))
                .toList();
    }

    /** Who measured and who signs, as typed, and the date. */
    public static List<ResultLine> people(Sentences words, Setup setup) {
        List<ResultLine> lines = new ArrayList<>();
        ResultLine.addTyped(lines, words, CardPaths.MEASURED_BY.labelKey(), CardPaths.MEASURED_BY.get(setup));
        ResultLine.addTyped(lines, words, CardPaths.SIGNED_BY.labelKey(), CardPaths.SIGNED_BY.get(setup));
        ResultLine.addTyped(lines, words, CardPaths.DATE.labelKey(), DateText.iso(CardPaths.DATE.get(setup)));
        return lines;
    }

    /** The large values of the card, in the language of the program. */
    public static List<ResultLine> figures(Sentences words, Setup setup, Assessment assessment) {
        Setup inOwnLanguage = setup.withCard(setup.card().withLanguage(CardLanguage.UNANSWERED));
        return CardContents.of(inOwnLanguage, assessment, words, "").figures().stream()
                .map(figure -> new ResultLine(figure.label(), figure.value()))
                .toList();
    }
}
