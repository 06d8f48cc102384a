package org.evenfall.wizard.picture;

import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Several pictures of one step, one under the other, sharing the height by what each would like. */
public final class PictureStack extends VBox {

    /** Puts pictures one under the other. */
    public PictureStack(Node... pictures) {
        super(pictures);
        getStyleClass().addAll("picture", "picture-stack");
        for (Node picture : pictures) {
            setVgrow(picture, Priority.ALWAYS);
        }
    }
}
