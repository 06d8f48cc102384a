package org.evenfall.wizard;

import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** Something seldom needed: a quiet button, and what it brings to light. */
final class Disclosure extends VBox {

    private final BooleanProperty asked = new SimpleBooleanProperty(false);

    /** @param always shown without asking while this holds */
    Disclosure(Form form, String key, ObservableBooleanValue always, Node... hidden) {
        Button ask = form.button(key, () -> asked.set(true));
        ask.getStyleClass().add("quiet");
        VBox content = new VBox(hidden);
        content.getStyleClass().add("disclosed");
        for (Node node : new Node[] {ask, content}) {
            node.managedProperty().bind(node.visibleProperty());
        }
        content.visibleProperty().bind(Bindings.or(asked, always));
        ask.visibleProperty().bind(content.visibleProperty().not());
        getChildren().addAll(ask, content);
    }

    Disclosure(Form form, String key, Node... hidden) {
        this(form, key, new SimpleBooleanProperty(false), hidden);
    }

    /** Hides it again. */
    void close() {
        asked.set(false);
    }
}
