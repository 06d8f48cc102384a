package org.evenfall.wizard.layout;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;

/** Controls and texts that lie over each other. */
public final class Overlaps {

    /** Buttons of one choice share their border, px. */
    private static final double TOLERANCE = 2;

    private Overlaps() {}

    /** Pairs of names. */
    public static List<String> in(Node root) {
        List<Node> things = Shown.things(root);
        List<Bounds> places = things.stream().map(Shown::seen).toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) {
            for (int j = i + 1; j < things.size(); j++) {
                Bounds common = Shown.common(places.get(i), places.get(j));
                if (common.getWidth() > TOLERANCE && common.getHeight() > TOLERANCE) {
                    found.add(Shown.name(things.get(i)) + " and " + Shown.name(things.get(j)) + " overlap by "
                            + Math.round(common.getWidth()) + " × " + Math.round(common.getHeight()));
                }
            }
        }
        return found;
    }
}
