package org.evenfall.wizard.form;

import javafx.scene.Node;

/** Where the keys go. */
public final class Keyboard {

    private Keyboard() {}

    /** Brings the keys to a node: it takes them only once it is styled, and the next key may come before the next frame. */
    public static void to(Node node) {
        node.applyCss();
        node.requestFocus();
    }
}
