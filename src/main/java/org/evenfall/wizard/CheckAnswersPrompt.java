package org.evenfall.wizard;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import org.evenfall.setup.CardResult;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;

/** Every answer by step before the card is made. */
final class CheckAnswersPrompt implements Prompt {

    private final Form form;
    private final Supplier<? extends Node> picture;
    private final Lazy<CheckAnswersForm> answers;
    private final Runnable shown;

    CheckAnswersPrompt(Form form, Supplier<? extends Node> picture, SetupDocument document, Runnable shown) {
        this.form = form;
        this.picture = picture;
        this.answers = new Lazy<>(() -> new CheckAnswersForm(form.words(), document));
        this.shown = shown;
    }

    @Override
    public String id() {
        return "7a";
    }

    @Override
    public Node entries() {
        return answers.get();
    }

    @Override
    public Node picture() {
        return picture.get();
    }

    /** Nothing is left open that keeps the card from being made. */
    @Override
    public Optional<Boolean> answered() {
        CardResult card = form.model().assessment().card();
        return Optional.of(card.cardAllowed() || card.findingOnly());
    }

    @Override
    public void shown() {
        shown.run();
        answers.get().refresh();
    }
}
