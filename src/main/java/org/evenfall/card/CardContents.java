package org.evenfall.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.DayLines;
import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;

/** Writes the card's content from an assessment. Chooses words and figures; computes nothing. */
public final class CardContents {

    /** Number of sentences card.stop.1 and following. */
    private static final int STOPS = 6;

    /** Number of sentences card.caution.1 and following. */
    private static final int CAUTIONS = 7;

    private final Setup setup;
    private final Assessment assessment;
    private final Sentences words;

    private CardContents(Setup setup, Assessment assessment, Sentences words) {
        this.setup = setup;
        this.assessment = assessment;
        this.words = words;
    }

    /**
     * The content of a card, or of a one-page finding where the assessment allows no more.
     *
     * @param setup what was entered
     * @param assessment its assessment
     * @param words the program's sentences; the card uses the language chosen in the setup
     * @param keyCode short code of the signing key, empty while there is none
     */
    public static CardContent of(Setup setup, Assessment assessment, Sentences words, String keyCode) {
        return new CardContents(setup, assessment, CardWords.in(setup.card().language(), words)).content(keyCode);
    }

    private CardContent content(String keyCode) {
        boolean findingOnly = assessment.card().findingOnly();
        List<CardContent.Figure> figures =
                findingOnly ? List.of() : LongTexts.parts(new CardFigures(setup, assessment, words).large());
        CardHead head = new CardHead(setup, assessment, words);
        String title = head.title();
        List<String> lines = head.lines();
        return new CardContent(
                new CardContent.Sheet(
                        setup.card().paper(), setup.card().language().tag(), findingOnly),
                new CardContent.Heading(
                        LongTexts.abbreviated(title),
                        lines.stream().map(LongTexts::abbreviated).toList(),
                        head.unevenness()),
                figures,
                warnings(),
                new CardProof(setup, assessment, words).proof(),
                new CardContent.Section(words.text("card.stopTitle"), findingOnly ? List.of() : stops()),
                new CardContent.Section(words.text("card.cautionTitle"), cautions()),
                new CardContent.Day(
                        words.text(DayLines.TITLE),
                        findingOnly ? List.of() : texts(DayLines.WEATHER),
                        words.text("card.dayElsewhere")),
                signature(keyCode, title, lines),
                new CardContent.Code(findingOnly ? "" : qr(head), words.text("card.qrTold")),
                foot(findingOnly));
    }

    private CardContent.Foot foot(boolean findingOnly) {
        return findingOnly
                ? new CardContent.Foot(List.of(), words.text("card.findingFooter"))
                : new CardContent.Foot(
                        List.of(
                                words.text("card.pen.date"),
                                words.text("card.pen.bags"),
                                words.text("card.pen.initials"),
                                words.text("card.pen.signature")),
                        words.text("card.footer"));
    }

    /** When to stop; a treated product also at its use-by date, on the line of the delivery, so that the list fits. */
    private List<String> stops() {
        List<String> stops = new ArrayList<>(numbered("card.stop.", STOPS));
        if (setup.product().treated() == YesNo.YES) {
            stops.set(0, words.text("card.stop.useBy"));
        }
        return stops;
    }

    private List<String> cautions() {
        List<String> cautions = new ArrayList<>(numbered("card.caution.", CAUTIONS));
        cautions.addAll(texts(DayLines.CARE));
        return cautions;
    }

    private List<String> texts(List<DayLines.Line> lines) {
        return lines.stream().map(line -> words.text(line.key(), line.args())).toList();
    }

    private List<String> numbered(String key, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> words.text(key + i))
                .toList();
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        for (Finding finding : assessment.findingsForCard()) {
            if (finding.kind() == FindingKind.STOP || finding.kind() == FindingKind.WARNING) {
                warnings.add(words.of(finding));
            }
        }
        if (!setup.card().remarks().isBlank()) {
            warnings.add(setup.card().remarks());
        }
        return warnings;
    }

    /** In full what was too long for the front, then who measured and who signs. */
    private List<String> signature(String keyCode, String title, List<String> head) {
        List<String> lines = new ArrayList<>();
        Stream.concat(Stream.of(title), head.stream()).filter(LongTexts::isLong).forEach(lines::add);
        CardEntries card = setup.card();
        if (!card.measuredBy().isBlank()) {
            lines.add(words.text("card.measuredBy", Arg.text(card.measuredBy())));
        }
        if (!card.signedBy().isBlank()) {
            String role = card.role().isBlank() ? "" : ", " + card.role();
            lines.add(words.text("card.signedBy", Arg.text(card.signedBy() + role)));
        }
        lines.add(new CardHead(setup, assessment, words).dated());
        if (!keyCode.isEmpty()) {
            lines.add(words.text("card.key", Arg.text(keyCode)));
        }
        return lines;
    }

    private String qr(CardHead head) {
        List<String> uneven = head.unevenness();
        List<CodeText.Line> lines = new ArrayList<>();
        lines.add(new CodeText.Line("", head.dated()));
        if (!uneven.isEmpty()) {
            lines.add(new CodeText.Line(uneven.get(0), uneven.get(0)));
        }
        lines.add(new CodeText.Line(LongTexts.abbreviated(head.title()), LongTexts.abbreviated(head.title())));
        for (CardContent.Figure figure : new CardFigures(setup, assessment, words).all()) {
            lines.add(new CodeText.Line(figure.label(), figure.label() + ": " + figure.value()));
        }
        if (!uneven.isEmpty()) {
            lines.add(new CodeText.Line(words.text("card.code.reason"), uneven.get(1)));
        }
        return new CodeText(words).of(lines);
    }
}
