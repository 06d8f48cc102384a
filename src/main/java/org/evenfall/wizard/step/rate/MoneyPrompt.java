package org.evenfall.wizard.step.rate;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.result.RateSentences;
import org.evenfall.setup.RateResult;
import org.evenfall.setup.path.RatePaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.ReservedSentence;

/** What a kilogram of nitrogen costs, against the product before. */
public final class MoneyPrompt extends FormPrompt {

    /** @param picture of the step */
    public MoneyPrompt(Form form, Supplier<? extends Node> picture) {
        super("5c", form, picture);
    }

    @Override
    public Node entries() {
        VBox prices = new VBox(
                form().row(form().quantity(RatePaths.PRICE), form().quantity(RatePaths.OTHER_PRICE)),
                form().row(form().quantity(RatePaths.OTHER_NITROGEN), form().quantity(RatePaths.OTHER_DENSITY)));
        prices.getStyleClass().add("parts");
        return new VBox(
                prices,
                form().choice(RatePaths.NITROGEN_EFFICIENCY),
                form().quantity(RatePaths.EFFECTIVENESS),
                ReservedSentence.of(
                        form(), "figure-line", 3, () -> RateSentences.money(form().words(), rate().plan())));
    }

    private RateResult rate() {
        return form().model().assessment().rate();
    }

    @Override
    public Help help() {
        return Help.terms("breakEven", "totalNitrogen").from("source.efficiency", "source.nitrateDensity");
    }
}
