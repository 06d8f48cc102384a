package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.Wrapped;
import org.evenfall.wizard.picture.InSight;
import org.jspecify.annotations.Nullable;

/**
 * The picture of the prompt in front with its findings: at the right where there is room, else below the entries. The help
 * takes the picture's place while it is asked for.
 */
final class SidePane extends BorderPane {

    private final StepFindings findings;
    private final HelpPane help;
    private final StackPane pictures = new StackPane();
    private final Label hiddenCard;
    private boolean atRight = true;
    private boolean helping;
    private @Nullable Node inSight;

    SidePane(Sentences words, StepFindings findings, HelpPane help) {
        this.findings = findings;
        this.help = help;
        hiddenCard = Wrapped.label(words.text("shell.cardHidden"), "hidden-card");
        hiddenCard.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        getStyleClass().add("right");
    }

    /** Whether there is room at the right of the entries. */
    boolean atRight() {
        return atRight;
    }

    /** Whether the help is shown. */
    boolean helping() {
        return helping;
    }

    /** Shows the help of a prompt, or the picture again. */
    void help(Prompt prompt, List<Finding> found, boolean shown) {
        helping = shown;
        if (shown) {
            help.show(prompt, found);
        }
    }

    /**
     * Puts everything where it belongs for a page.
     *
     * @param room whether there is room at the right
     * @param hidden whether names are hidden: the card is full of them
     */
    void place(PromptPage page, boolean room, boolean hidden) {
        boolean alone = page.prompt().alone();
        atRight = room && !alone;
        Node own = page.prompt().picture();
        boolean covered = hidden && page.step() == Step.CARD;
        Node picture = covered ? hiddenCard : own;
        setCenter(null);
        setBottom(null);
        page.getChildren().removeAll(help, findings, own, hiddenCard);
        pictures.getChildren().remove(hiddenCard);
        if (atRight) {
            setCenter(helping ? help : pictures);
            if (!pictures.getChildren().contains(picture)) {
                pictures.getChildren().add(picture);
            }
            setBottom(helping ? null : findings);
        } else if (!alone) {
            if (helping) {
                page.getChildren().add(0, help);
            }
            page.getChildren().addAll(findings, picture);
        }
        picture.setVisible(!alone);
        picture.setManaged(!alone);
        for (Node other : pictures.getChildren()) {
            boolean shown = other.equals(picture) && !alone;
            other.setVisible(shown);
            other.setManaged(shown);
        }
        setVisible(atRight);
        setManaged(atRight);
        inSight(alone || (helping && atRight) ? null : picture);
    }

    /** One picture at a time is in sight. */
    private void inSight(@Nullable Node picture) {
        Node before = inSight;
        if (before == picture) {
            return;
        }
        if (before != null) {
            InSight.of(before, false);
        }
        inSight = picture;
        if (picture != null) {
            InSight.of(picture, true);
        }
    }
}
