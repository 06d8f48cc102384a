package org.evenfall.wizard.layout;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;

/** Controls that the keyboard reaches and that a screen reader has no name for. */
public final class Unlabelled {

    private Unlabelled() {}

    /** Names of the controls. */
    public static List<String> in(Node root) {
        List<Node> nodes = Shown.nodes(root);
        Set<Node> labelled = new HashSet<>();
        for (Node node : nodes) {
            if (node instanceof Label label && label.getLabelFor() != null) {
                labelled.add(label.getLabelFor());
            }
        }
        return nodes.stream()
                .filter(node -> node instanceof Control && node.isFocusTraversable() && !node.isDisabled())
                .filter(node -> blank(node.getAccessibleText()) && !labelled.contains(node))
                .filter(node -> !(node instanceof Labeled labeled) || blank(labeled.getText()))
                .map(node -> Shown.name(node) + " " + node.getStyleClass() + " has no name")
                .toList();
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
