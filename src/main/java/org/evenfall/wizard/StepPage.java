package org.evenfall.wizard;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.wizard.form.FindingView;

/** The page of a step: its question, why it is asked, the caution before the work, its entries. */
final class StepPage {

    private StepPage() {}

    static VBox of(Sentences words, StepView view) {
        String key = "step." + view.step().name().toLowerCase(Locale.ROOT);
        Label question = new Label(words.text(key + ".question"));
        question.getStyleClass().add("question");
        question.setWrapText(true);
        Label why = new Label(words.text(key + ".why"));
        why.getStyleClass().add("why");
        why.setWrapText(true);
        VBox page = new VBox(question, why);
        page.getStyleClass().add("page");
        if (words.has(key + ".caution")) {
            page.getChildren().add(caution(words.text(key + ".caution")));
        }
        page.getChildren().add(view.entries());
        return page;
    }

    private static Node caution(String sentence) {
        Label text = new Label(sentence);
        text.setWrapText(true);
        HBox band = new HBox(FindingView.mark(FindingKind.WARNING), text);
        HBox.setHgrow(text, Priority.ALWAYS);
        band.getStyleClass().add("caution");
        return band;
    }
}
