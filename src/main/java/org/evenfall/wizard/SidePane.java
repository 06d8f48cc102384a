package org.evenfall.wizard;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import org.evenfall.finding.Finding;
import org.evenfall.wizard.form.Prompt;

/**
 * The picture of the prompt in front with its findings: at the right where there is room, else below the entries. The help
 * takes the picture's place while it is asked for.
 */
final class SidePane extends BorderPane {

    private final List<PromptPage> pages;
    private final StepFindings findings;
    private final HelpPane help;
    private final StackPane pictures = new StackPane();
    private boolean atRight = true;
    private boolean helping;

    SidePane(List<PromptPage> pages, StepFindings findings, HelpPane help) {
        this.pages = pages;
        this.findings = findings;
        this.help = help;
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
     */
    void place(PromptPage page, boolean room) {
        boolean alone = page.prompt().alone();
        atRight = room && !alone;
        Node picture = page.prompt().picture();
        setCenter(null);
        setBottom(null);
        page.getChildren().removeAll(help, findings, picture);
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
        for (PromptPage other : pages) {
            Node its = other.prompt().picture();
            boolean shown = its.equals(picture) && !alone;
            its.setVisible(shown);
            its.setManaged(shown);
        }
        setVisible(atRight);
        setManaged(atRight);
    }
}
