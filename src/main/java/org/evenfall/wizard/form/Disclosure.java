package org.evenfall.wizard.form;

import java.util.function.BooleanSupplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** Something seldom needed: a quiet button, and the content that it shows. */
public final class Disclosure extends VBox {

    private final BooleanProperty asked;

    /**
     * @param asked whether the content was asked for; kept longer than the page, which may be made anew
     * @param key of the button's text
     * @param always the content is shown without asking while this holds
     */
    public Disclosure(Form form, BooleanProperty asked, String key, BooleanSupplier always, Node... hidden) {
        this.asked = asked;
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

    /**
     * @param asked whether the content was asked for
     * @param key of the button's text
     */
    public Disclosure(Form form, BooleanProperty asked, String key, Node... hidden) {
        this(form, asked, key, () -> false, hidden);
    }

    /** @param key of the button's text */
    public Disclosure(Form form, String key, Node... hidden) {
        this(form, new SimpleBooleanProperty(), key, hidden);
    }

    /** Hides the content again. */
    public void close() {
        asked.set(false);
    }
}
