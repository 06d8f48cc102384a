package org.evenfall.wizard.form;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;

/**
 * A scroll pane without a cached image of its content. The scroll pane of the platform caches one: it takes megabytes and is
 * drawn once more with every letter typed.
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
            // the viewport
            child.setCache(false);
        }
        return skin;
    }
}
