package org.evenfall.wizard.form;

import javafx.scene.control.TextField;
import org.evenfall.setup.path.EntryPath;

/** The field of a line of text. */
public final class TextEntry {

    /** Width of a field under its own label, in letters. */
    static final int COLUMNS = 18;

    /** A narrower field hides what is typed, px. */
    private static final double MIN_WIDTH = 54;

    private TextEntry() {}

    /** A field that writes into the model and follows it; its id is the pointer of its place. */
    public static TextField field(Form form, String label, EntryPath<String> path, int columns) {
        TextField field = TypedField.words();
        field.setId(path.pointer());
        field.setPrefColumnCount(columns);
        field.setMinWidth(MIN_WIDTH);
        field.setAccessibleText(label);
        field.textProperty().addListener((property, old, text) -> {
            if (!path.get(form.model().setup()).equals(text)) {
                form.model().set(path, text);
            }
        });
        form.follow(() -> {
            String text = path.get(form.model().setup());
            if (!text.equals(field.getText())) {
                field.setText(text);
            }
        });
        HiddenText.follow(form, field, path.pointer());
        return field;
    }
}
