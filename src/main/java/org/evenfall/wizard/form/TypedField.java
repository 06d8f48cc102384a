package org.evenfall.wizard.form;

import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.store.InputText;

/** Fields that take no more than a saved setup may hold, so that what is typed can be read again. */
public final class TypedField {

    private TypedField() {}

    /** A field for words. */
    public static TextField words() {
        return atMost(InputText.MOST_LETTERS);
    }

    /** A field for a number; its unit has room behind it. */
    public static TextField number() {
        return atMost(EnteredQuantity.MOST_LETTERS / 2);
    }

    /** A longer text that is pasted is cut; at the limit nothing more is typed. */
    private static TextField atMost(int letters) {
        TextField field = new TextField();
        field.setTextFormatter(new TextFormatter<>(change -> {
            int beyond = change.getControlNewText().length() - letters;
            if (beyond > 0) {
                String text = change.getText();
                change.setText(text.substring(0, Math.max(0, text.length() - beyond)));
                change.setCaretPosition(Math.min(change.getCaretPosition(), letters));
                change.setAnchor(Math.min(change.getAnchor(), letters));
            }
            return change;
        }));
        return field;
    }
}
