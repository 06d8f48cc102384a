package org.evenfall.wizard;

import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;

/**
 * Scrolls so far that the node with the keyboard can be seen. Not while a mouse button is down: what is pressed is in view
 * already, and it must not move away before it is released.
 */
final class FocusScroll {

    /** Room kept above and below the node, in lines of text. */
    private static final double MARGIN_EM = 3;

    private final Node frame;
    private final ScrollPane pane;
    private final Supplier<? extends Node> page;
    private final DoubleSupplier em;
    private boolean pressed;

    /**
     * @param frame what the mouse is watched in
     * @param pane what scrolls
     * @param page the page in front
     * @param em height of a line of text, px
     */
    FocusScroll(Node frame, ScrollPane pane, Supplier<? extends Node> page, DoubleSupplier em) {
        this.frame = frame;
        this.pane = pane;
        this.page = page;
        this.em = em;
    }

    void install() {
        frame.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> pressed = true);
        frame.addEventFilter(MouseEvent.MOUSE_RELEASED, event -> pressed = false);
        frame.sceneProperty().flatMap(scene -> scene.focusOwnerProperty()).subscribe(this::bringIntoView);
    }

    private void bringIntoView(@Nullable Node owner) {
        Node content = page.get();
        if (pressed || owner == null || !inside(owner, content)) {
            return;
        }
        Bounds place = content.sceneToLocal(owner.localToScene(owner.getBoundsInLocal()));
        double view = pane.getViewportBounds().getHeight();
        double hidden = content.getBoundsInLocal().getHeight() - view;
        if (hidden <= 0) {
            return;
        }
        double top = pane.getVvalue() * hidden;
        double margin = MARGIN_EM * em.getAsDouble();
        if (place.getMinY() - margin < top) {
            pane.setVvalue(Math.max(0, (place.getMinY() - margin) / hidden));
        } else if (place.getMaxY() + margin > top + view) {
            pane.setVvalue(Math.min(1, (place.getMaxY() + margin - view) / hidden));
        }
    }

    private static boolean inside(Node node, Node page) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at.equals(page)) {
                return true;
            }
        }
        return false;
    }
}
