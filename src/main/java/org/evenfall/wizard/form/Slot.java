package org.evenfall.wizard.form;

import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** A place on the page whose content is replaced; what the earlier content followed ends with it. */
public final class Slot extends VBox {

    private final Form form;
    private @Nullable Form part;

    /** @param form the form of the page around it */
    public Slot(Form form) {
        this.form = form;
    }

    /** A slot whose content is made anew whenever what it is based on is another. */
    public static Slot rebuiltOn(Form form, Supplier<?> basis, Function<Form, Node> content) {
        Slot slot = new Slot(form);
        Object[] before = new Object[1];
        form.follow(() -> {
            Object now = basis.get();
            if (!Objects.equals(now, before[0])) {
                before[0] = now;
                slot.show(content);
            }
        });
        return slot;
    }

    /** Replaces the content; it is made with a form that ends when the content is replaced. */
    public void show(Function<Form, Node> content) {
        clear();
        Form next = form.part();
        part = next;
        getChildren().setAll(content.apply(next));
    }

    /** Leaves the place empty. */
    public void clear() {
        if (part != null) {
            part.end();
            part = null;
        }
        getChildren().clear();
    }
}
