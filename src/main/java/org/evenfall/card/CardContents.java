package org.evenfall.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.DateText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.StartEntries;
import org.evenfall.setup.entry.YesNo;

/** Writes the card's content from an assessment. Chooses words and figures; computes nothing. */
public final class CardContents {

    /** Number of sentences card.stop.1 and following. */
    private static final int STOPS = 6;

    /** Number of sentences card.caution.1 and following. */
    private static final int CAUTIONS = 8;

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
                findingOnly ? List.of() : LongTexts.parts(new CardFigures(setup, assessment, words).all());
        String title = setup.product().name().isBlank()
                ? words.text("card.noProduct")
                : setup.product().name();
        List<String> lines = lines();
        return new CardContent(
                new CardContent.Sheet(
                        setup.card().paper(), setup.card().language().tag(), findingOnly),
                new CardContent.Heading(
                        LongTexts.abbreviated(title),
                        lines.stream().map(LongTexts::abbreviated).toList(),
                        unevenness()),
                figures,
                warnings(),
                new CardProof(setup, assessment, words).proof(),
                new CardContent.Section(words.text("card.stopTitle"), findingOnly ? List.of() : stops()),
                new CardContent.Section(words.text("card.cautionTitle"), numbered("card.caution.", CAUTIONS)),
                new CardContent.Signature(signature(keyCode, title, lines), words.text("card.time")),
                new CardContent.Code(findingOnly ? "" : qr(figures), words.text("card.qrTold")),
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

    private List<String> numbered(String key, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> words.text(key + i))
                .toList();
    }

    private List<String> lines() {
        StartEntries start = setup.start();
        List<String> job = new ArrayList<>();
        for (String part : new String[] {start.farm(), start.field(), start.crop(), start.season()}) {
            if (!part.isBlank()) {
                job.add(part);
            }
        }
        if (assessment.tramlineWidthM() != null) {
            job.add(words.text("card.width", metres(assessment.tramlineWidthM(), 0)));
        }
        List<String> product = new ArrayList<>();
        product.add(words.choice(setup.product().form()));
        if (assessment.product().nitrogenPercent() != null) {
            product.add(
                    words.text("card.nitrogen", Arg.number(assessment.product().nitrogenPercent(), 0, Unit.PERCENT)));
        }
        if (assessment.product().density() != null) {
            product.add(words.number(assessment.product().density().meanKgPerL(), 2, Unit.KG_PER_L));
        }
        if (assessment.product().sieve() != null) {
            product.add(words.text(
                    "card.median", Arg.number(assessment.product().sieve().d50Mm(), 1, Unit.MM)));
        }
        return Stream.of(product, bag(), job)
                .map(parts -> String.join(" · ", parts))
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** What the bag says: the delivery, and whether it is treated, with which inhibitor, to be used by when. */
    private List<String> bag() {
        List<String> bag = new ArrayList<>();
        if (!setup.product().delivery().isBlank()) {
            bag.add(words.text("card.delivery", Arg.text(setup.product().delivery())));
        }
        if (!assessment.card().testedDelivery().isEmpty()) {
            bag.add(words.text("card.testedDelivery", Arg.text(assessment.card().testedDelivery())));
        }
        bag.addAll(treatment());
        return bag;
    }

    /** Nothing while it is not answered. */
    private List<String> treatment() {
        ProductEntries product = setup.product();
        return switch (product.treated()) {
            case UNANSWERED -> List.of();
            case NO -> List.of(words.text("card.untreated"));
            case YES ->
                Stream.of(
                                product.inhibitor().isBlank()
                                        ? words.text("card.treated")
                                        : words.text(
                                                "card.treatedWith",
                                                Arg.text(product.inhibitor().strip())),
                                product.useBy().isBlank()
                                        ? ""
                                        : words.text("card.useBy", Arg.text(DateText.iso(product.useBy()))))
                        .filter(part -> !part.isEmpty())
                        .toList();
        };
    }

    /** A card in spite of an uneven field says so above all else, with the reason. */
    private List<String> unevenness() {
        Double percent = assessment.card().unevenPercent();
        return percent == null || assessment.card().findingOnly()
                ? List.of()
                : List.of(
                        words.text("card.notEvenEnough", Arg.number(percent, 0, Unit.PERCENT)),
                        words.text(
                                "card.unevenReason",
                                Arg.text(setup.card().unevenReason().strip())));
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        for (Finding finding : assessment.findings()) {
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
        String role = setup.card().role().isBlank() ? "" : ", " + setup.card().role();
        lines.add(words.text("card.measuredBy", Arg.text(setup.card().measuredBy())));
        lines.add(words.text("card.signedBy", Arg.text(setup.card().signedBy() + role)));
        lines.add(words.text(
                "card.dated",
                Arg.text(DateText.iso(setup.card().date())),
                Arg.count(Math.max(1, setup.card().revision()))));
        if (!keyCode.isEmpty()) {
            lines.add(words.text("card.key", Arg.text(keyCode)));
        }
        return lines;
    }

    private String qr(List<CardContent.Figure> figures) {
        StringBuilder text = new StringBuilder("EVENFALL ")
                .append(LongTexts.abbreviated(setup.product().name()))
                .append('\n');
        unevenness().forEach(line -> text.append(line).append('\n'));
        for (CardContent.Figure figure : figures) {
            text.append(figure.label()).append(": ").append(figure.value()).append('\n');
        }
        text.append(DateText.iso(setup.card().date()))
                .append(" r")
                .append(Math.max(1, setup.card().revision()));
        return text.toString().replace('\u00a0', ' ');
    }

    private static Arg metres(double value, int decimals) {
        return Arg.number(value, decimals, Unit.M);
    }
}
