package org.evenfall.wizard;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Wrapped;

/** Every answer by step, with findings and skipped prompts; each prompt is a link to where it is changed. */
final class CheckAnswersForm extends VBox {

    private final Sentences words;
    private final SetupDocument document;

    CheckAnswersForm(Sentences words, SetupDocument document) {
        this.words = words;
        this.document = document;
        getStyleClass().add("check-answers");
    }

    /** Shows the answers as they are now. */
    void refresh() {
        getChildren().clear();
        Step step = null;
        for (Frame.Review review : document.frame().review()) {
            if (review.step() != step) {
                step = review.step();
                getChildren().add(Wrapped.label(step.number() + "  " + words.choice(step), "group-title"));
            }
            getChildren().add(line(review));
        }
    }

    private Node line(Frame.Review review) {
        String name = review.prompt() + "  " + words.text("prompt." + review.prompt() + ".name");
        Button change = new Button(name + " · " + words.choice(review.state()));
        change.setId("check-" + review.prompt());
        change.setMnemonicParsing(false);
        change.setGraphic(StateMark.of(review.state()));
        change.getStyleClass().add("lead");
        change.setOnAction(event -> document.frame().visit(review.prompt()));
        VBox box = new VBox(change);
        box.getStyleClass().add("check-" + review.state().name().toLowerCase(Locale.ROOT));
        if (!review.answers().isEmpty()) {
            box.getChildren().add(Wrapped.label(String.join("; ", review.answers()), "check-answer"));
        }
        review.findings().stream()
                .filter(CheckAnswersForm::matters)
                .map(finding -> FindingView.brief(words, finding))
                .forEach(box.getChildren()::add);
        return box;
    }

    private static boolean matters(Finding finding) {
        return finding.kind() != FindingKind.NOTE;
    }
}
