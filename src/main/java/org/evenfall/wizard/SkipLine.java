package org.evenfall.wizard;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.Setup;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SetupModel;

/** Going on without a prompt: a button for "I don't have this", and what it means in one sentence. */
final class SkipLine extends HBox {

    private final SetupModel model;
    private final Sentences words;
    private final String prompt;
    private final Button button = new Button();

    SkipLine(Form form, String prompt) {
        this.model = form.model();
        this.words = form.words();
        this.prompt = prompt;
        Label without = new Label(words.text("prompt." + prompt + ".without"));
        without.setWrapText(true);
        without.setMinHeight(Region.USE_PREF_SIZE);
        without.getStyleClass().add("sentence");
        HBox.setHgrow(without, Priority.ALWAYS);
        button.setId("skip-" + prompt);
        button.getStyleClass().add("skip");
        // both words have room, so that nothing moves
        button.setMinWidth(Region.USE_PREF_SIZE);
        // by the mouse or its shortcut; Enter and Tab go through the entries
        button.setFocusTraversable(false);
        button.setOnAction(event -> model.change(this::turned));
        getStyleClass().add("skip-line");
        getChildren().addAll(button, without);
        form.follow(this::refresh);
    }

    private boolean skipped() {
        return model.setup().guide().skipped().contains(prompt);
    }

    private Setup turned(Setup setup) {
        boolean skip = !setup.guide().skipped().contains(prompt);
        return setup.withGuide(setup.guide().withSkipped(prompt, skip));
    }

    private void refresh() {
        button.setText(words.text(skipped() ? "skip.ask" : "skip.skip"));
    }
}
