package org.evenfall.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Rechecked;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.entry.Setup;
import org.evenfall.trays.Uniformity;
import org.jspecify.annotations.Nullable;

/**
 * The proof on the card: the tray test that proves its settings, the bucket and the bag.
 *
 * @param setup what was entered
 * @param assessment its assessment
 * @param words the card's language
 */
record CardProof(Setup setup, Assessment assessment, Sentences words) {

    /** The proof; without bars and lines for a one-page finding. */
    CardContent.Proof proof() {
        Uniformity test = assessment.card().findingOnly() ? null : test();
        List<Double> bars = test == null ? List.of() : test.relativePercent();
        String inWords = bars.stream()
                .map(percent -> words.number(percent, 0, Unit.PERCENT))
                .collect(Collectors.joining(", "));
        return new CardContent.Proof(
                words.text("card.proof"),
                bars,
                words.text("card.barsTold", Arg.text(inWords)),
                assessment.card().findingOnly() ? List.of() : lines(test));
    }

    private @Nullable Uniformity test() {
        TrayTestResult proof = assessment.trays().proof();
        return proof == null ? assessment.trays().lastEvenness() : proof.evenness();
    }

    private List<String> lines(@Nullable Uniformity test) {
        List<String> proof = new ArrayList<>();
        if (test != null) {
            proof.add(words.text(
                    "card.fieldCv",
                    Arg.number(test.field().medianPercent(), 0, Unit.PERCENT),
                    Arg.number(test.field().lowPercent(), 0, Unit.NONE),
                    Arg.number(test.field().highPercent(), 0, Unit.PERCENT),
                    Arg.word("choice.EvennessVerdict." + test.verdict())));
            proof.add(words.text("card.trayCv", Arg.number(test.cvPercent(), 0, Unit.PERCENT)));
        }
        RatePlan plan = assessment.rate().plan();
        if (plan != null) {
            perAcre(plan, proof);
        }
        if (plan != null
                && plan.bucket().kg() != null
                && plan.bucket().toleranceKg() != null
                && plan.bucket().seconds() != null) {
            proof.add(words.text(
                    "card.bucketBand",
                    Arg.number(plan.bucket().seconds(), 0, Unit.S),
                    Arg.number(plan.bucket().toleranceKg().low(), 1, Unit.NONE),
                    Arg.number(plan.bucket().toleranceKg().high(), 1, Unit.KG)));
        }
        if (plan != null
                && plan.logistics().haPerBag() != null
                && !setup.rate().plan().bagMass().isBlank()) {
            proof.add(words.text(
                    "card.bag",
                    Arg.text(Decimals.typed(words, setup.rate().plan().bagMass())),
                    Arg.number(plan.logistics().haPerBag(), 2, Unit.HA)));
        }
        if (!setup.trays().switchOn().isBlank() || !setup.trays().switchOff().isBlank()) {
            proof.add(words.text("card.switchZero"));
        }
        Rechecked since = Rechecked.of(assessment);
        if (since != null) {
            proof.add(words.text(
                    "card.revised",
                    Arg.count(since.revision()),
                    rechecked(since.part(Rechecked.What.RATE)),
                    rechecked(since.part(Rechecked.What.TRAY_TEST))));
        }
        return proof;
    }

    /** A measurement since the card before: made again, or of which day it still holds. */
    private Arg rechecked(Rechecked.Part part) {
        String key = "card.rechecked." + part.what() + "." + part.state();
        return Arg.text(
                part.date().isEmpty()
                        ? words.text(part.state() == Rechecked.State.HOLDS ? key + "_UNDATED" : key)
                        : words.text(key, new Arg.Day(LocalDate.parse(part.date()))));
    }

    /** A rate that was typed in pounds or units per acre: as typed, with the basis of a unit and with kg/ha. */
    private void perAcre(RatePlan plan, List<String> proof) {
        PlanEntries typed = setup.rate().plan();
        boolean byProduct = typed.basis() == RateBasis.PRODUCT;
        EnteredQuantity rate = byProduct ? typed.productRate() : typed.nitrogenRate();
        Arg metric = Arg.number(
                byProduct ? plan.amounts().productKgPerHa() : plan.amounts().nitrogenKgPerHa(), 0, Unit.KG_PER_HA);
        if (rate.unit() == Unit.UNITS) {
            proof.add(words.text(
                    "card.units", Arg.text(rate.text()), Arg.word("choice.UnitsBasis." + typed.unitsBasis()), metric));
        } else if (rate.unit() == Unit.LB_PER_AC) {
            proof.add(words.text(
                    byProduct ? "card.perAcre" : "card.perAcreN", Arg.text(Decimals.typed(words, rate)), metric));
        }
    }
}
