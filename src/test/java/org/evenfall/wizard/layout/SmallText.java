package org.evenfall.wizard.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;

/** Text that the last row of a hall cannot read: sizes as they are drawn, as shares of the height of the screen. */
public final class SmallText {

    /** Question, entries, result. Ours, as in the guide. */
    private static final double LEAST_MAIN = 0.044;

    /** All else. */
    private static final double LEAST = 0.03;

    private static final Set<String> MAIN = Set.of(
            "question",
            "text-field",
            "toggle-button",
            "figure-line",
            "figure-value",
            "result-figure",
            "instruction-title",
            "instruction-line",
            "line-label",
            "primary");

    private SmallText() {}

    /** Names of the controls with the size of their text. */
    public static List<String> in(Node root) {
        List<String> found = new ArrayList<>();
        for (Node node : Shown.nodes(root)) {
            if (node instanceof Text text && isRead(text)) {
                double share = text.getFont().getSize() / root.getScene().getHeight();
                if (share < (isMain(text) ? LEAST_MAIN : LEAST)) {
                    found.add(String.format(
                            Locale.ROOT,
                            "%s has letters of %.2f %% of the height",
                            Shown.name(Shown.control(text)),
                            100 * share));
                }
            }
        }
        return found;
    }

    private static boolean isRead(Text text) {
        return !text.getText().isBlank() || Shown.control(text) instanceof TextInputControl;
    }

    private static boolean isMain(Node text) {
        boolean inCatches = false;
        boolean header = false;
        for (Node up = text; up != null; up = up.getParent()) {
            if (up.getStyleClass().stream().anyMatch(MAIN::contains)) {
                return true;
            }
            header |= up.getStyleClass().contains("column-header");
            inCatches |= up.getStyleClass().contains("catch-line");
        }
        return header && inCatches;
    }
}
