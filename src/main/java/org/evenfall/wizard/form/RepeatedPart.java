package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * One part of the page for each item of a list, below one another. A part more or less at the end leaves the others
 * alone, so that the field in use stays.
 */
public final class RepeatedPart extends VBox {

    private final Form form;
    private final BiFunction<Form, Integer, Node> part;
    private final List<Form> parts = new ArrayList<>();
    private @Nullable Object basis;

    /**
     * @param form the form of the page around it
     * @param count how many there are now
     * @param basis when this is another, all parts are made anew
     * @param part makes the part of an index, from 0, with a form that ends with it
     */
    public RepeatedPart(Form form, IntSupplier count, Supplier<?> basis, BiFunction<Form, Integer, Node> part) {
        this.form = form;
        this.part = part;
        form.follow(() -> {
            Object now = basis.get();
            if (!Objects.equals(now, this.basis)) {
                this.basis = now;
                resize(0);
            }
            resize(count.getAsInt());
        });
    }

    private void resize(int wanted) {
        while (parts.size() > wanted) {
            int last = parts.size() - 1;
            parts.remove(last).end();
            getChildren().remove(last);
        }
        while (parts.size() < wanted) {
            Form own = form.part();
            parts.add(own);
            getChildren().add(part.apply(own, parts.size() - 1));
        }
    }
}
