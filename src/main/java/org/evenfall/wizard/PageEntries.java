package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import org.controlsfx.control.SegmentedButton;

/** The entries below a node, whether it is styled already or not; each has its pointer as its id. */
final class PageEntries {

    private PageEntries() {}

    /** Pointers of the places that are typed below a node. */
    static List<String> places(Node node) {
        List<String> places = new ArrayList<>();
        collect(node, places);
        return places;
    }

    private static void collect(Node node, List<String> places) {
        if (node.getId() != null && node.getId().startsWith("/")) {
            places.add(node.getId());
        }
        inside(node).forEach(child -> collect(child, places));
    }

    /** Whether something is typed or chosen below a node. */
    static boolean typed(Node node) {
        if (node instanceof TextInputControl field) {
            return !field.getText().isBlank();
        }
        if (node instanceof ToggleButton toggle) {
            // one that chooses what is shown is no answer
            return toggle.isSelected() && String.valueOf(toggle.getId()).startsWith("/");
        }
        return inside(node).stream().anyMatch(PageEntries::typed);
    }

    /** What a node holds; some controls have it among their children only once they are styled. */
    private static List<? extends Node> inside(Node node) {
        if (node instanceof ScrollPane pane) {
            return pane.getContent() == null ? List.of() : List.of(pane.getContent());
        }
        if (node instanceof SegmentedButton choice) {
            return choice.getButtons();
        }
        return node instanceof Parent parent ? parent.getChildrenUnmodifiable() : List.of();
    }
}
