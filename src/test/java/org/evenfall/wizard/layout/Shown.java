package org.evenfall.wizard.layout;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;

/** What can be seen of a laid out page. */
final class Shown {

    private Shown() {}

    /** All visible nodes, the root first. */
    static List<Node> nodes(Node root) {
        List<Node> found = new ArrayList<>();
        collect(root, found);
        return found;
    }

    private static void collect(Node node, List<Node> found) {
        if (node.isVisible()) {
            found.add(node);
            if (node instanceof Parent parent) {
                parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
            }
        }
    }

    /** Visible controls and texts that nothing else may cover; not what is inside of them. */
    static List<Node> things(Node root) {
        List<Node> found = new ArrayList<>();
        collectThings(root, found);
        return found;
    }

    private static void collectThings(Node node, List<Node> found) {
        if (!node.isVisible()) {
            return;
        }
        if (isThing(node)) {
            found.add(node);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collectThings(child, found));
        }
    }

    private static boolean isThing(Node node) {
        if (node instanceof Labeled labeled) {
            return labeled.getGraphic() != null
                    || !String.valueOf(labeled.getText()).isBlank();
        }
        return node instanceof TextInputControl
                || node instanceof ChoiceBox<?>
                || node instanceof ComboBoxBase<?>
                || node instanceof Spinner<?>
                || node instanceof Text text && !text.getText().isBlank();
    }

    /** Its place in the window without what scroll panes around it hide. */
    static Bounds seen(Node node) {
        Bounds seen = node.localToScene(node.getLayoutBounds());
        for (Node up = node.getParent(); up != null; up = up.getParent()) {
            if (up.getStyleClass().contains("viewport")) {
                seen = common(seen, up.localToScene(up.getLayoutBounds()));
            }
        }
        return seen;
    }

    /** What two places have in common; without width or height where that is nothing. */
    static Bounds common(Bounds one, Bounds other) {
        double x = Math.max(one.getMinX(), other.getMinX());
        double y = Math.max(one.getMinY(), other.getMinY());
        return new BoundingBox(
                x,
                y,
                Math.max(0, Math.min(one.getMaxX(), other.getMaxX()) - x),
                Math.max(0, Math.min(one.getMaxY(), other.getMaxY()) - y));
    }

    /** Whether it scrolls with a page. */
    static boolean scrolls(Node node) {
        for (Node up = node.getParent(); up != null; up = up.getParent()) {
            if (up instanceof ScrollPane) {
                return true;
            }
        }
        return false;
    }

    /** What a person calls it: kind, id, text. */
    static String name(Node node) {
        String words = "";
        if (node instanceof Labeled labeled) {
            words = String.valueOf(labeled.getText());
        } else if (node instanceof Text text) {
            words = text.getText();
        }
        if (words.isBlank() && node.getAccessibleText() != null) {
            words = node.getAccessibleText();
        }
        return kind(node)
                + (node.getId() == null ? "" : " " + node.getId())
                + (words.isBlank() ? "" : " “" + words + "”");
    }

    private static String kind(Node node) {
        Class<?> kind = node.getClass();
        while (kind.getSimpleName().isEmpty()) {
            kind = kind.getSuperclass();
        }
        return kind.getSimpleName();
    }

    /** The nearest control around a node, else the node. */
    static Node control(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (up instanceof Control) {
                return up;
            }
        }
        return node;
    }
}
