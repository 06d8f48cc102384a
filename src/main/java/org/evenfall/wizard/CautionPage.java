package org.evenfall.wizard;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Keyboard;

/** The cautions of a step on a page of their own, the first time in a setup, before its first prompt that can hurt. */
final class CautionPage extends VBox {

    private final Sentences words;
    private final VBox sentences = new VBox();
    private final Label name = new Label();
    private final Button goOn;

    /** @param read runs when the person has read them */
    CautionPage(Sentences words, Runnable read) {
        this.words = words;
        Label title = new Label(words.text("caution.title"));
        title.getStyleClass().add("question");
        title.setWrapText(true);
        name.getStyleClass().add("why");
        goOn = new Button(words.text("caution.goOn"));
        goOn.setId("caution.goOn");
        goOn.setMinWidth(Region.USE_PREF_SIZE);
        goOn.getStyleClass().add("primary");
        goOn.setDefaultButton(true);
        goOn.setOnAction(event -> read.run());
        sentences.getStyleClass().add("caution-lines");
        getStyleClass().addAll("page", "caution-page");
        getChildren().addAll(title, name, sentences, goOn);
    }

    /** Shows the cautions of a step. */
    void show(Step step) {
        name.setText(words.choice(step));
        sentences
                .getChildren()
                .setAll(of(words, step).stream().map(CautionPage::line).toList());
    }

    /** Puts the keyboard on the button that goes on. */
    void focus() {
        Keyboard.to(goOn);
    }

    /** The sentences of the caution of a step, one a line. */
    static List<String> of(Sentences words, Step step) {
        String text = words.text("step." + step.name().toLowerCase(Locale.ROOT) + ".caution");
        BreakIterator ends = BreakIterator.getSentenceInstance(words.locale());
        ends.setText(text);
        List<String> lines = new ArrayList<>();
        int from = ends.first();
        for (int to = ends.next(); to != BreakIterator.DONE; from = to, to = ends.next()) {
            lines.add(text.substring(from, to).strip());
        }
        return lines;
    }

    private static HBox line(String sentence) {
        Label text = new Label(sentence);
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox line = new HBox(FindingView.mark(FindingKind.WARNING), text);
        line.getStyleClass().add("caution");
        return line;
    }
}
