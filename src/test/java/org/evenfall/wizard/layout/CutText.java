package org.evenfall.wizard.layout;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.text.Text;

/** Text that is drawn with an ellipsis, is larger than its box, or sticks out of the window. */
public final class CutText {

    /** Less cannot be seen, px. */
    private static final double TOLERANCE = 1.5;

    private CutText() {}

    /** Names of the controls whose text is cut. */
    public static List<String> in(Node root) {
        List<String> found = new ArrayList<>();
        for (Node node : Shown.nodes(root)) {
            if (node instanceof Labeled labeled
                    && !String.valueOf(labeled.getText()).isBlank()) {
                String fault = fault(labeled);
                if (!fault.isEmpty()) {
                    found.add(Shown.name(labeled) + " " + fault);
                }
            }
        }
        for (Node thing : Shown.things(root)) {
            double px = sticksOut(Shown.seen(thing), thing.getScene());
            if (px > TOLERANCE) {
                found.add(Shown.name(thing) + " sticks out of the window by " + Math.round(px) + " px");
            }
        }
        return found;
    }

    private static String fault(Labeled labeled) {
        for (Node part : labeled.getChildrenUnmodifiable()) {
            if (part instanceof Text text) {
                if (shortened(labeled, text.getText())) {
                    return "is drawn as “" + text.getText() + "”";
                }
                Bounds drawn = text.getLayoutBounds();
                if (drawn.getWidth() > labeled.getWidth() + TOLERANCE
                        || drawn.getHeight() > labeled.getHeight() + TOLERANCE) {
                    return "is larger than its box";
                }
            }
        }
        return "";
    }

    private static boolean shortened(Labeled labeled, String drawn) {
        return drawn.isBlank()
                || ends(drawn, labeled.getText(), labeled.getEllipsisString())
                || ends(drawn, labeled.getText(), "\u2026");
    }

    private static boolean ends(String drawn, String whole, String ellipsis) {
        return drawn.endsWith(ellipsis) && !whole.endsWith(ellipsis);
    }

    /** How much of what is seen is outside, px; what a scroll pane hides is not seen. */
    private static double sticksOut(Bounds place, Scene scene) {
        if (place.getWidth() <= 0 || place.getHeight() <= 0) {
            return 0;
        }
        double across = Math.max(-place.getMinX(), place.getMaxX() - scene.getWidth());
        return Math.max(across, Math.max(-place.getMinY(), place.getMaxY() - scene.getHeight()));
    }
}
