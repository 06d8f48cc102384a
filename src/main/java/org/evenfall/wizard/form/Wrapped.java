package org.evenfall.wizard.form;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Text that wraps and is never cut. */
public final class Wrapped {

    private Wrapped() {}

    /** A label with a style of the style sheet. */
    public static Label label(String text, String style) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }
}
