package org.evenfall.wizard.form;

import java.util.function.BooleanSupplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** Something seldom needed: a quiet button, and the content that it shows. */
public final class Disclosure extends VBox {

    private final BooleanProperty asked = new SimpleBooleanProperty(false);

    /**
     * @param key of the button's text
     * @param always the content is shown without asking while this holds
     */
    public Disclosure(Form form, String key, BooleanSupplier always, Node... hidden) {
        Button ask = form.button(key, () -> asked.set(true));
        ask.getStyleClass().add("quiet");
        VBox content = new VBox(hidden);
        content.getStyleClass().add("disclosed");
        for (Node node : new Node[] {ask, content}) {
            node.managedProperty().bind(node.visibleProperty());
        }
        BooleanProperty needed = new SimpleBooleanProperty();
        form.follow(() -> needed.set(always.getAsBoolean()));
        content.visibleProperty().bind(asked.or(needed));
        ask.visibleProperty().bind(content.visibleProperty().not());
        getChildren().addAll(ask, content);
    }

    /** @param key of the button's text */
    public Disclosure(Form form, String key, Node... hidden) {
        this(form, key, () -> false, hidden);
    }

    /** Hides the content again. */
    public void close() {
        asked.set(false);
    }
}
