package org.evenfall.wizard.step.card;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.result.CardLines;
import org.evenfall.setup.CardResult;
import org.evenfall.setup.entry.LogEntries;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Lines;
import org.evenfall.wizard.form.VisibleWhen;
import org.evenfall.wizard.form.Wrapped;
import org.jspecify.annotations.Nullable;

/** The card as it prints: made and signed, opened, printed. */
public final class SignPrompt extends FormPrompt {

    /**
     * What is made elsewhere for this page.
     *
     * @param keyState which key signs
     * @param keyOptions what can be done with it
     * @param check checks a card that somebody else made
     */
    public record Parts(Node keyState, Node keyOptions, Node check) {}

    /** So many of what is open have room here. */
    private static final int MOST_OPEN = 4;

    private final CardActions actions;
    private final Supplier<@Nullable SignedCard> signed;
    private final Supplier<Parts> parts;
    private final Runnable shown;
    private final VBox signedLines = new VBox();

    /**
     * @param picture the card as it will be printed
     * @param signed the card signed last; null while there is none
     * @param parts made when the page is
     * @param shown called when the prompt comes to the front
     */
    public SignPrompt(
            Form form,
            Supplier<? extends Node> picture,
            CardActions actions,
            Supplier<@Nullable SignedCard> signed,
            Supplier<Parts> parts,
            Runnable shown) {
        super("7c", form, picture);
        this.actions = actions;
        this.signed = signed;
        this.parts = parts;
        this.shown = shown;
        signedLines.getStyleClass().add("instruction");
    }

    @Override
    public Node entries() {
        VBox open = new VBox();
        open.getStyleClass().add("attempts");
        Lines.of(form(), open, this::missing, this::link);
        form().follow(this::showSigned);
        Parts made = parts.get();
        return new VBox(
                VisibleWhen.sentence(
                        form(),
                        "figure-line",
                        () -> CardLines.state(
                                form().words(), form().model().assessment().card())),
                open,
                VisibleWhen.sentence(form(), "sentence", this::more),
                buttons(),
                signedLines,
                form().sentence("card.signWhy"),
                made.keyState(),
                new Disclosure(form(), "card.keyOptions", made.keyOptions()),
                new Disclosure(form(), "check.title", made.check()));
    }

    /** An answer about a card that was checked, and a passphrase being typed, are only here. */
    @Override
    public boolean end() {
        return false;
    }

    private Node buttons() {
        Button make = form().button("card.make", actions::make);
        make.getStyleClass().add("primary");
        Button print = form().button("card.print", actions::print);
        Button elsewhere = form().button("card.saveElsewhere", actions::saveElsewhere);
        form().follow(() -> List.of(make, print, elsewhere).forEach(button -> button.setDisable(!mayBeMade())));
        return form().row(make, print, elsewhere);
    }

    private boolean mayBeMade() {
        CardResult card = form().model().assessment().card();
        return card.cardAllowed() || card.findingOnly();
    }

    private List<Finding> missing() {
        return mayBeMade()
                ? List.of()
                : CardLines.open(form().model().assessment()).stream()
                        .limit(MOST_OPEN)
                        .toList();
    }

    /** How many more are open; all of them are on the check page. */
    private String more() {
        int more = mayBeMade() ? 0 : CardLines.open(form().model().assessment()).size() - MOST_OPEN;
        return more <= 0 ? "" : form().words().text("card.moreOpen", Arg.count(more));
    }

    /** A button for something open, which brings its step to the front. */
    private Node link(Finding finding) {
        Button link = new Button(
                form().words().choice(finding.step()) + ": " + form().words().of(finding));
        link.setGraphic(FindingView.mark(finding.kind()));
        link.setWrapText(true);
        link.getStyleClass().add("lead");
        link.setOnAction(event -> actions.mend(finding));
        return link;
    }

    /** Shows what was signed, or that it has changed since. */
    public void showSigned() {
        SignedCard card = signed.get();
        signedLines.setManaged(card != null);
        signedLines.setVisible(card != null);
        if (card == null) {
            return;
        }
        boolean same = isOf(card);
        Label title = Wrapped.label(
                form().words().text(same ? "card.signed" : "card.changedSince", new Arg.Day(card.day())),
                "instruction-title");
        Button open = form().button("card.open", actions::open);
        signedLines
                .getChildren()
                .setAll(
                        title,
                        Wrapped.label(
                                form().words()
                                        .text(
                                                "card.written",
                                                Arg.text(card.file().toString()),
                                                Arg.text(card.keyCode())),
                                "instruction-line"),
                        Wrapped.label(form().words().text("card.reopens"), "instruction-line"),
                        open);
    }

    @Override
    public Optional<Boolean> answered() {
        SignedCard card = signed.get();
        return Optional.of(card != null && isOf(card));
    }

    /** Whether a card is that of the setup as it is now; what is logged after it makes no other. */
    private boolean isOf(SignedCard card) {
        return card.setup()
                .withLog(LogEntries.EMPTY)
                .equals(form().model().setup().withLog(LogEntries.EMPTY));
    }

    @Override
    public boolean holdsRest() {
        return true;
    }

    @Override
    public void shown() {
        shown.run();
        showSigned();
    }
}
