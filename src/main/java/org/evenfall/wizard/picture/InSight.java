package org.evenfall.wizard.picture;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;

/** A drawing that is kept only while it can be looked at, since it takes the memory of an image of its size. */
public interface InSight {

    /** Called when the drawing comes in sight and when it is out of sight; each only as it changes. */
    void setInSight(boolean now);

    /** Passes on to every drawing in a node whether it is in sight. */
    static void of(Node node, boolean now) {
        if (node instanceof InSight drawing) {
            drawing.setInSight(now);
        } else if (node instanceof ScrollPane pane && pane.getContent() != null) {
            // before it is styled, it has no children
            of(pane.getContent(), now);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> of(child, now));
        }
    }
}
