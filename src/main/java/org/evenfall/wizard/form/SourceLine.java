package org.evenfall.wizard.form;

import java.util.function.BooleanSupplier;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.evenfall.result.SourceText;

/** One quiet line: where a figure or a limit comes from. */
public final class SourceLine {

    private static final String STYLE = "source";

    private SourceLine() {}

    /** A line that is always there. */
    public static Label of(Form form, String sourceKey) {
        return label(SourceText.line(form.words(), sourceKey));
    }

    /** A line that is there only while its figure is. */
    public static Label when(Form form, BooleanSupplier figure, String sourceKey) {
        return VisibleWhen.sentence(
                form, STYLE, () -> figure.getAsBoolean() ? SourceText.line(form.words(), sourceKey) : "");
    }

    /** A line with this text. */
    static Label label(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(STYLE);
        return label;
    }
}
