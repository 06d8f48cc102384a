package org.evenfall.wizard.form;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;

/**
 * A scroll pane that draws what is in it as it is. The one of the platform keeps an image of all it shows, megabytes that
 * every letter typed draws once more.
 */
public class PlainScrollPane extends ScrollPane {

    /** Without anything in it. */
    public PlainScrollPane() {}

    /** @param content what is scrolled */
    public PlainScrollPane(Node content) {
        super(content);
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        Skin<?> skin = super.createDefaultSkin();
        for (Node child : getChildren()) {
            // its only part that is kept as an image
            child.setCache(false);
        }
        return skin;
    }
}
