package org.evenfall.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Severity;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.StartEntries;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/** Writes the card's content from an assessment. Chooses words and figures; computes nothing. */
public final class CardContents {

    private static final int STOPS = 6;
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
     * @param words the program's sentences; the card speaks the language chosen for it
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
        Uniformity test = lastTest();
        List<Double> bars = test == null || findingOnly ? List.of() : test.relativePercent();
        return new CardContent(
                setup.card().paper(),
                CardWords.code(setup.card().language()),
                LongTexts.abbreviated(title),
                lines.stream().map(LongTexts::abbreviated).toList(),
                figures,
                words.text("card.proof"),
                bars,
                barsTold(bars),
                findingOnly ? List.of() : proof(),
                warnings(),
                words.text("card.stopTitle"),
                findingOnly ? List.of() : numbered("card.stop.", STOPS),
                words.text("card.cautionTitle"),
                numbered("card.caution.", CAUTIONS),
                signature(keyCode, title, lines),
                words.text("card.time"),
                findingOnly
                        ? List.of()
                        : List.of(
                                words.text("card.pen.date"),
                                words.text("card.pen.bags"),
                                words.text("card.pen.initials")),
                words.text(findingOnly ? "card.findingFooter" : "card.footer"),
                findingOnly ? "" : qr(figures),
                words.text("card.qrTold"),
                findingOnly);
    }

    private String barsTold(List<Double> bars) {
        return words.text(
                "card.barsTold",
                Arg.text(bars.stream()
                        .map(percent -> words.number(percent, 0, Unit.PERCENT))
                        .collect(Collectors.joining(", "))));
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
        if (!setup.product().delivery().isBlank()) {
            product.add(words.text("card.delivery", Arg.text(setup.product().delivery())));
        }
        return List.of(String.join(" · ", product), String.join(" · ", job));
    }

    private @Nullable Uniformity lastTest() {
        var tests = assessment.trays().tests();
        return tests.isEmpty() ? null : tests.get(tests.size() - 1).evenness();
    }

    private List<String> proof() {
        List<String> proof = new ArrayList<>();
        Uniformity test = lastTest();
        if (test != null) {
            proof.add(words.text(
                    "card.cv",
                    Arg.number(test.cvPercent(), 0, Unit.PERCENT),
                    Arg.number(test.cv().lowPercent(), 0, Unit.NONE),
                    Arg.number(test.cv().highPercent(), 0, Unit.PERCENT),
                    Arg.word("choice.EvennessVerdict." + test.verdict())));
        }
        RatePlan plan = assessment.rate().plan();
        if (plan != null) {
            perAcre(plan, proof);
        }
        if (plan != null
                && plan.bucketKg() != null
                && plan.bucketLowKg() != null
                && plan.bucketHighKg() != null
                && plan.bucketSeconds() != null) {
            proof.add(words.text(
                    "card.bucketBand",
                    Arg.number(plan.bucketSeconds(), 0, Unit.S),
                    Arg.number(plan.bucketLowKg(), 1, Unit.NONE),
                    Arg.number(plan.bucketHighKg(), 1, Unit.KG)));
        }
        if (plan != null
                && plan.haPerBag() != null
                && !setup.rate().plan().bagMass().isBlank()) {
            proof.add(words.text(
                    "card.bag",
                    Arg.text(setup.rate().plan().bagMass().toString()),
                    Arg.number(plan.haPerBag(), 2, Unit.HA)));
        }
        return proof;
    }

    /** Where the rate was typed in pounds or units an acre: as typed, with the basis of a unit, kg/ha beside it. */
    private void perAcre(RatePlan plan, List<String> proof) {
        PlanEntries typed = setup.rate().plan();
        boolean byProduct = typed.basis() == RateBasis.PRODUCT;
        EnteredQuantity rate = byProduct ? typed.productRate() : typed.nitrogenRate();
        Arg metric = Arg.number(byProduct ? plan.productKgPerHa() : plan.nitrogenKgPerHa(), 0, Unit.KG_PER_HA);
        if (rate.unit() == Unit.UNITS) {
            proof.add(words.text(
                    "card.units", Arg.text(rate.text()), Arg.word("choice.UnitsBasis." + typed.unitsBasis()), metric));
        } else if (rate.unit() == Unit.LB_PER_AC) {
            proof.add(words.text(byProduct ? "card.perAcre" : "card.perAcreN", Arg.text(rate.toString()), metric));
        }
    }

    private List<String> warnings() {
        Severity least = assessment.card().findingOnly() ? Severity.STOP : Severity.WARN;
        List<String> warnings = new ArrayList<>();
        for (Finding finding : assessment.findings()) {
            if (finding.severity().compareTo(least) <= 0) {
                warnings.add(words.of(finding));
            }
        }
        if (!setup.card().remarks().isBlank()) {
            warnings.add(setup.card().remarks());
        }
        return warnings;
    }

    /** Before who measured and signed, in full, what was too long for the front. */
    private List<String> signature(String keyCode, String title, List<String> head) {
        List<String> lines = new ArrayList<>();
        Stream.concat(Stream.of(title), head.stream()).filter(LongTexts::isLong).forEach(lines::add);
        String role = setup.card().role().isBlank() ? "" : ", " + setup.card().role();
        lines.add(words.text("card.measuredBy", Arg.text(setup.card().measuredBy())));
        lines.add(words.text("card.signedBy", Arg.text(setup.card().signedBy() + role)));
        lines.add(words.text(
                "card.dated",
                Arg.text(setup.card().date()),
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
        for (CardContent.Figure figure : figures) {
            text.append(figure.label()).append(": ").append(figure.value()).append('\n');
        }
        text.append(setup.card().date())
                .append(" r")
                .append(Math.max(1, setup.card().revision()));
        return text.toString().replace('\u00a0', ' ');
    }

    private static Arg metres(double value, int decimals) {
        return Arg.number(value, decimals, Unit.M);
    }
}
