package org.evenfall.wizard.step.card;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.VisibleWhen;

/** Who measured and who signs, and what the paper is like. */
public final class WhoPrompt extends FormPrompt {

    private final Runnable shown;

    /**
     * @param picture the card as it will be printed
     * @param shown called when the prompt comes to the front
     */
    public WhoPrompt(Form form, Supplier<? extends Node> picture, Runnable shown) {
        super("7b", form, picture);
        this.shown = shown;
    }

    @Override
    public Node entries() {
        return new VBox(
                form().row(
                                form().text(CardPaths.MEASURED_BY),
                                form().text(CardPaths.SIGNED_BY),
                                form().text(CardPaths.ROLE),
                                form().text(CardPaths.DATE)),
                form().row(form().quantity(CardPaths.WIND_STOP), form().text(CardPaths.REMARKS)),
                form().choice(CardPaths.PAPER),
                form().choice(CardPaths.LANGUAGE),
                form().sentence("card.asTyped"),
                VisibleWhen.when(
                        form(),
                        () -> form().model().assessment().card().unevenPercent() != null,
                        form().text(CardPaths.UNEVEN_REASON)));
    }

    @Override
    public void shown() {
        shown.run();
    }

    @Override
    public Help help() {
        return Help.NONE.from("source.wind");
    }
}
