package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import org.evenfall.wizard.form.GridKeys;
import org.jspecify.annotations.Nullable;

/** The entries of a page in the order in which Enter goes through them: fields, and one button of each choice. */
final class EntryOrder {

    private EntryOrder() {}

    /**
     * The first entry that is shown, else the button of the page's main action.
     *
     * @param anyButton whether the first button counts as much as an entry
     */
    static Optional<Node> first(Parent page, boolean anyButton) {
        return anyButton
                ? button(page.lookup(".entries"), true)
                : entries(page).stream().findFirst().or(() -> button(page.lookup(".entries"), false));
    }

    private static Optional<Node> button(@Nullable Node node, boolean any) {
        if (node == null || !node.isVisible() || node.isDisabled()) {
            return Optional.empty();
        }
        boolean wanted = any ? node instanceof ButtonBase : isMain(node);
        if (wanted && node.isFocusTraversable()) {
            return Optional.of(node);
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .flatMap(child -> button(child, any).stream())
                        .findFirst()
                : Optional.empty();
    }

    /** Whether a node is the button of a page's main action, which Enter presses. */
    static boolean isMain(Node node) {
        return node instanceof Button && node.getStyleClass().contains("primary");
    }

    /** The entry after the one that a node is or belongs to; empty after the last. */
    static Optional<Node> after(Parent page, Node at) {
        List<Node> entries = entries(page);
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).equals(at) || sameChoice(entries.get(i), at)) {
                // a grid goes through its own cells
                return entries.stream()
                        .skip(i + 1)
                        .filter(next -> !GridKeys.sameGrid(at, next))
                        .findFirst();
            }
        }
        return Optional.empty();
    }

    private static boolean sameChoice(Node entry, Node at) {
        return entry instanceof ToggleButton
                && at instanceof ToggleButton
                && choiceOf(entry).equals(choiceOf(at));
    }

    private static String choiceOf(Node toggle) {
        String id = String.valueOf(toggle.getId());
        return id.substring(0, Math.max(0, id.lastIndexOf('/')));
    }

    private static List<Node> entries(Parent page) {
        // a choice has its buttons only once it is styled, and the next key may come before the next frame
        page.applyCss();
        List<Node> entries = new ArrayList<>();
        collect(page, entries);
        return entries;
    }

    private static void collect(@Nullable Node node, List<Node> entries) {
        if (node == null || !node.isVisible() || node.isDisabled()) {
            return;
        }
        if (node instanceof ToggleButton toggle) {
            if (toggle.isFocusTraversable()) {
                addChoice(toggle, entries);
            }
        } else if (node instanceof TextInputControl || node instanceof ChoiceBox<?>) {
            if (node.isFocusTraversable()) {
                entries.add(node);
            }
        } else if (node instanceof ScrollPane pane) {
            collect(pane.getContent(), entries);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, entries));
        }
    }

    /** Of a choice the selected button, else the first. */
    private static void addChoice(ToggleButton toggle, List<Node> entries) {
        int last = entries.size() - 1;
        boolean same = last >= 0 && sameChoice(entries.get(last), toggle);
        if (!same) {
            entries.add(toggle);
        } else if (toggle.isSelected()) {
            entries.set(last, toggle);
        }
    }
}
