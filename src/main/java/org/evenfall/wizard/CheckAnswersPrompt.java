package org.evenfall.wizard;

import java.util.Optional;
import javafx.scene.Node;
import org.evenfall.setup.CardResult;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;

/** Every answer by step before the card is made. */
final class CheckAnswersPrompt implements Prompt {

    private final Form form;
    private final Node picture;
    private final CheckAnswersForm answers;
    private final Runnable shown;

    CheckAnswersPrompt(Form form, Node picture, SetupDocument document, Runnable shown) {
        this.form = form;
        this.picture = picture;
        this.answers = new CheckAnswersForm(form.words(), document);
        this.shown = shown;
    }

    @Override
    public String id() {
        return "7a";
    }

    @Override
    public Node entries() {
        return answers;
    }

    @Override
    public Node picture() {
        return picture;
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
        answers.refresh();
    }
}
