package org.evenfall.wizard.step.rate;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.quantity.Unit;
import org.evenfall.result.RateSentences;
import org.evenfall.setup.RateResult;
import org.evenfall.setup.entry.PlanEntries;
import org.evenfall.setup.entry.RateBasis;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.EntryTable;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.ReservedSentence;
import org.evenfall.wizard.form.SamePlace;

/** How much is spread: nitrogen or product, and the passes of the season. */
public final class AmountPrompt extends FormPrompt {

    /** @param picture of the step */
    public AmountPrompt(Form form, Supplier<? extends Node> picture) {
        super("5a", form, picture);
    }

    @Override
    public Node entries() {
        VBox rate = new VBox(
                form().choice(RatePaths.BASIS),
                SamePlace.of(
                        form(),
                        () -> byProduct() ? 1 : 0,
                        form().quantity(RatePaths.NITROGEN_RATE),
                        form().quantity(RatePaths.PRODUCT_RATE)));
        rate.getStyleClass().add("parts");
        Node units = SamePlace.of(form(), () -> inUnits() ? 0 : -1, form().choice(RatePaths.UNITS_BASIS));
        units.getStyleClass().add("units-place");
        return new VBox(
                form().row(rate, units),
                EntryTable.values(form(), RatePaths.NITROGEN_SPLITS).node(),
                ReservedSentence.of(
                        form(), "figure-line", 1, () -> RateSentences.amount(form().words(), rate().plan())),
                ReservedSentence.of(
                        form(), "figure-line", 1, () -> RateSentences.season(form().words(), rate().nitrogenSplits())));
    }

    private RateResult rate() {
        return form().model().assessment().rate();
    }

    private boolean byProduct() {
        return form().model().setup().rate().plan().basis() == RateBasis.PRODUCT;
    }

    /** Whether some nitrogen is typed in units, whose meaning is then asked. */
    private boolean inUnits() {
        PlanEntries typed = form().model().setup().rate().plan();
        return (!byProduct() && typed.nitrogenRate().withUnitFromText().unit() == Unit.UNITS)
                || typed.nitrogenSplits().stream()
                        .anyMatch(split -> split.withUnitFromText().unit() == Unit.UNITS);
    }

    @Override
    public Help help() {
        return Help.terms("totalNitrogen", "nitrogenContent", "unit").from("source.units");
    }
}
