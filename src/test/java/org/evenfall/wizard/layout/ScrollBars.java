package org.evenfall.wizard.layout;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;

/** Scroll bars that are shown. */
public final class ScrollBars {

    private ScrollBars() {}

    /** Those that go from side to side. */
    public static List<String> horizontal(Node root) {
        return shown(root, Orientation.HORIZONTAL);
    }

    /** Those that go up and down. */
    public static List<String> upright(Node root) {
        return shown(root, Orientation.VERTICAL);
    }

    private static List<String> shown(Node root, Orientation way) {
        return Shown.nodes(root).stream()
                .filter(node -> node instanceof ScrollBar bar && bar.getOrientation() == way)
                .map(bar -> way.name().toLowerCase(java.util.Locale.ROOT) + " scroll bar in " + owner(bar))
                .toList();
    }

    /** The style classes of the pane, and how much is hidden. */
    private static String owner(Node bar) {
        return bar.getParent() instanceof ScrollPane pane
                ? pane.getStyleClass() + ", content "
                        + size(pane.getContent().getLayoutBounds()) + " in "
                        + size(pane.getViewportBounds())
                : Shown.name(bar);
    }

    private static String size(javafx.geometry.Bounds bounds) {
        return Math.round(bounds.getWidth()) + " × " + Math.round(bounds.getHeight());
    }
}
