package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.layout.Pane;

/** One node for each item of a list that follows the assessment; made anew only when the items have changed. */
public final class Lines {

    private Lines() {}

    /** Fills a pane with a node for each item, now and whenever the items change. */
    public static <T, P extends Pane> P of(Form form, P pane, Supplier<List<T>> items, Function<T, Node> line) {
        List<T> shown = new ArrayList<>();
        form.follow(() -> {
            List<T> now = items.get();
            if (!now.equals(shown)) {
                shown.clear();
                shown.addAll(now);
                pane.getChildren().setAll(now.stream().map(line).toList());
            }
        });
        return pane;
    }

    /** The same; without items the pane takes no room on the page. */
    static <T, P extends Pane> P collapsing(Form form, P pane, Supplier<List<T>> items, Function<T, Node> line) {
        present(pane, false);
        pane.getChildren().addListener((InvalidationListener)
                change -> present(pane, !pane.getChildren().isEmpty()));
        return of(form, pane, items, line);
    }

    private static void present(Pane pane, boolean there) {
        pane.setManaged(there);
        pane.setVisible(there);
    }
}
