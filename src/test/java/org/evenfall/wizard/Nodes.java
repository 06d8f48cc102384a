package org.evenfall.wizard;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;

/** Nodes of a window, whether it is shown or not. */
final class Nodes {

    private Nodes() {}

    /** The first node for which the condition holds. */
    static Optional<Node> find(Node root, Predicate<Node> condition) {
        if (condition.test(root)) {
            return Optional.of(root);
        }
        return children(root).stream()
                .flatMap(child -> find(child, condition).stream())
                .findFirst();
    }

    /** Every node, the root first. */
    static void each(Node root, Consumer<Node> action) {
        action.accept(root);
        children(root).forEach(child -> each(child, action));
    }

    /** The content of a scroll pane is its child only once it is shown. */
    private static List<Node> children(Node node) {
        if (node instanceof ScrollPane pane) {
            return pane.getContent() == null ? List.of() : List.of(pane.getContent());
        }
        return node instanceof Parent parent ? parent.getChildrenUnmodifiable() : List.of();
    }
}
