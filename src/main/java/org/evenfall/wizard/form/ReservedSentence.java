package org.evenfall.wizard.form;

import java.util.function.Supplier;
import javafx.scene.control.Label;

/** A sentence that follows the assessment and keeps room for so many lines, so that nothing below moves. */
public final class ReservedSentence {

    private ReservedSentence() {}

    /**
     * The sentence.
     *
     * @param style of its text
     * @param lines so many lines have room, 1 to 3
     */
    public static Label of(Form form, String style, int lines, Supplier<String> text) {
        Label label = new Label();
        label.setWrapText(true);
        label.getStyleClass().addAll(style, "reserved-" + lines);
        form.follow(() -> label.setText(text.get()));
        return label;
    }
}
