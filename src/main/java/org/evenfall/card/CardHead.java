package org.evenfall.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.RateSetting;
import org.evenfall.quantity.DateReading;
import org.evenfall.quantity.DateText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.FinalSettings;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.StartEntries;

/**
 * The small lines at the top of the card, and its date.
 *
 * @param setup what was entered
 * @param assessment its assessment
 * @param words the card's language
 */
record CardHead(Setup setup, Assessment assessment, Sentences words) {

    /** Name of the product. */
    String title() {
        return setup.product().name().isBlank()
                ? words.text("card.noProduct")
                : setup.product().name();
    }

    /** How to recognise the product, what its bag says, the job with the settings that are printed small. */
    List<String> lines() {
        StartEntries start = setup.start();
        List<String> job = new ArrayList<>();
        for (String part : new String[] {start.farm(), start.field(), start.crop(), start.season()}) {
            if (!part.isBlank()) {
                job.add(part);
            }
        }
        if (assessment.card().findingOnly() && assessment.tramlineWidthM() != null) {
            job.add(words.text(
                    "card.tramlines", Arg.text(Decimals.fewest(words, assessment.tramlineWidthM(), 1, Unit.M))));
        }
        job.addAll(smallSettings());
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

    /** How the rate is set, and a tilt of 0. */
    private List<String> smallSettings() {
        List<String> small = new ArrayList<>();
        FinalSettings settings = assessment.card().settings();
        RateSetting setting = assessment.machine().rateSetting();
        if (setting != RateSetting.UNANSWERED || settings.openingLeft() != null) {
            small.add(words.text(
                    switch (setting) {
                        case UNANSWERED, OPENING -> "card.byOpening";
                        case FACTOR -> "card.byFactor";
                        case WEIGHING -> "card.byWeighing";
                    }));
        }
        Double tilt = settings.tiltDeg();
        if (tilt != null && tilt == 0) {
            small.add(words.text("card.tiltSmall", Arg.number(tilt, 0, Unit.DEG)));
        }
        return small;
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
                                product.useBy().isBlank() ? "" : words.text("card.useBy", day(product.useBy())))
                        .filter(part -> !part.isEmpty())
                        .toList();
        };
    }

    /** A card in spite of an uneven field says so above all else, with the reason. */
    List<String> unevenness() {
        Double percent = assessment.card().unevenPercent();
        return percent == null || assessment.card().findingOnly()
                ? List.of()
                : List.of(
                        words.text("card.notEvenEnough", Arg.number(percent, 0, Unit.PERCENT)),
                        words.text(
                                "card.unevenReason",
                                Arg.text(setup.card().unevenReason().strip())));
    }

    /** Date and revision. */
    String dated() {
        return words.text(
                "card.dated",
                day(setup.card().date()),
                Arg.count(Math.max(1, setup.card().revision())));
    }

    /** A date in words; what is no date as it was typed. */
    private static Arg day(String typed) {
        return DateText.read(typed) instanceof DateReading.Value value
                ? new Arg.Day(value.date())
                : Arg.text(typed.strip());
    }
}
