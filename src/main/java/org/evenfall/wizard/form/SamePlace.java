package org.evenfall.wizard.form;

import java.util.List;
import java.util.function.IntSupplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** One of several nodes in one place, which is as large as the largest of them: nothing moves when another is shown. */
public final class SamePlace {

    private SamePlace() {}

    /**
     * The place.
     *
     * @param shown which of the nodes is shown now, from 0; a number of none leaves the place empty
     */
    public static Node of(Form form, IntSupplier shown, Node... nodes) {
        StackPane place = new StackPane(nodes);
        place.setAlignment(Pos.TOP_LEFT);
        List<Node> all = List.of(nodes);
        form.follow(() -> {
            int now = shown.getAsInt();
            for (int i = 0; i < all.size(); i++) {
                all.get(i).setVisible(i == now);
            }
        });
        return place;
    }
}
