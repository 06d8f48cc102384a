package org.evenfall.wizard.form;

import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** Nodes that take part in the page only while a condition holds. */
public final class VisibleWhen {

    private VisibleWhen() {}

    /** Takes part in the page only while the condition holds. */
    public static Node when(Form form, BooleanSupplier condition, Node node) {
        form.follow(() -> {
            boolean shown = condition.getAsBoolean();
            node.setManaged(shown);
            node.setVisible(shown);
        });
        return node;
    }

    /** A wrapped sentence that follows the assessment; an empty one takes no room. */
    public static Label sentence(Form form, String style, Supplier<String> text) {
        Label label = new Label();
        label.setWrapText(true);
        label.getStyleClass().add(style);
        form.follow(() -> {
            String now = text.get();
            label.setText(now);
            label.setManaged(!now.isEmpty());
            label.setVisible(!now.isEmpty());
        });
        return label;
    }
}
