package org.evenfall.wizard;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.Parent;

/** Nodes of a window, whether it is shown or not. */
final class Nodes {

    private Nodes() {}

    /** The first node for which the condition holds. */
    static Optional<Node> find(Node root, Predicate<Node> condition) {
        if (condition.test(root)) {
            return Optional.of(root);
        }
        return root instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .flatMap(child -> find(child, condition).stream())
                        .findFirst()
                : Optional.empty();
    }

    /** Every node, the root first. */
    static void each(Node root, Consumer<Node> action) {
        action.accept(root);
        if (root instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> each(child, action));
        }
    }
}
