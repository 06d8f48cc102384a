package org.evenfall.wizard.layout;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;

/** A page whose keyboard does not begin on its first entry. */
public final class FirstFocus {

    private FirstFocus() {}

    /**
     * What has the keyboard instead.
     *
     * @param page the page in front
     * @param owner what has the keyboard
     */
    public static List<String> wrong(Node page, Node owner) {
        Optional<Node> first = Shown.nodes(page).stream()
                .filter(node -> isEntry(node) && node.isFocusTraversable() && !node.isDisabled())
                .findFirst();
        if (first.isEmpty() || first.get().equals(owner) || sameChoice(first.get(), owner)) {
            return List.of();
        }
        return List.of((owner == null ? "nothing" : Shown.name(owner)) + " has the keyboard, the first entry is "
                + Shown.name(first.get()));
    }

    private static boolean isEntry(Node node) {
        return node instanceof TextInputControl
                || node instanceof ToggleButton
                || node instanceof ChoiceBox<?>
                || node instanceof ComboBoxBase<?>;
    }

    /** Of a choice that is made, the button that is chosen. */
    private static boolean sameChoice(Node first, Node owner) {
        return first instanceof ToggleButton button
                && owner instanceof ToggleButton chosen
                && chosen.isSelected()
                && sameGroup(button, chosen);
    }

    private static boolean sameGroup(ToggleButton one, ToggleButton other) {
        return one.getParent().equals(other.getParent())
                || (one.getToggleGroup() != null && one.getToggleGroup().equals(other.getToggleGroup()));
    }
}
