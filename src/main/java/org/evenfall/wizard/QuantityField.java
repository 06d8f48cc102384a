package org.evenfall.wizard;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.FieldSpec;

/**
 * One measured value: the field, its unit, and the two readings of a number that can be read two ways.
 *
 * @param form the form it stands in
 * @param spec its units and limits
 * @param place where it is kept
 */
record QuantityField(Form form, FieldSpec spec, EntryPath<EnteredQuantity> place) {

    /** The field with its unit beside it. */
    HBox box(String pointer, String label) {
        TextField field = new TextField();
        field.setId(pointer);
        field.setPrefColumnCount(7);
        field.setAccessibleText(label);
        bind(field);
        HBox box = new HBox(field);
        box.getStyleClass().add("with-unit");
        box.setAlignment(Pos.CENTER_LEFT);
        if (spec.units().size() > 1) {
            box.getChildren().add(unitChoice(label));
        } else if (!spec.base().symbol().isEmpty()) {
            box.getChildren().add(new Label(spec.base().symbol()));
        }
        return box;
    }

    private ChoiceBox<Unit> unitChoice(String label) {
        ChoiceBox<Unit> choice = new ChoiceBox<>();
        choice.getItems().setAll(spec.units());
        choice.setConverter(Form.converter(Unit::symbol));
        choice.setAccessibleText(label + ": " + form.words().text("form.unit"));
        choice.setMinWidth(Region.USE_PREF_SIZE);
        form.follow(() -> {
            Unit unit = place.get(form.model().setup()).unit();
            choice.setValue(unit == Unit.NONE ? spec.base() : unit);
        });
        choice.valueProperty().addListener((seen, old, unit) -> {
            EnteredQuantity now = place.get(form.model().setup());
            if (unit != null && now.unit() != unit && !(now.unit() == Unit.NONE && unit == spec.base())) {
                form.model().set(place, now.withUnit(unit));
            }
        });
        return choice;
    }

    /** Ties a field to a place: what is typed goes in with the unit in use, what changes elsewhere comes back. */
    void bind(TextField field) {
        field.textProperty().addListener((seen, old, text) -> {
            EnteredQuantity now = place.get(form.model().setup());
            if (!now.text().equals(text)) {
                Unit unit = now.unit() == Unit.NONE && spec.base() != Unit.NONE ? spec.base() : now.unit();
                form.model().set(place, new EnteredQuantity(text, unit));
            }
        });
        form.follow(() -> {
            String text = place.get(form.model().setup()).text();
            if (!text.equals(field.getText())) {
                field.setText(text);
            }
        });
    }

    /** Two buttons for the two readings of an ambiguous number in a place. */
    Node readings() {
        HBox box = new HBox();
        box.getStyleClass().add("readings");
        form.follow(() -> {
            EnteredQuantity typed = place.get(form.model().setup());
            boolean asked = NumberText.read(typed.text()) instanceof NumberReading.Ambiguous;
            box.getChildren().clear();
            if (NumberText.read(typed.text()) instanceof NumberReading.Ambiguous twice) {
                box.getChildren().addAll(reading(typed, twice.asDecimal()), reading(typed, twice.asThousands()));
            }
            box.setManaged(asked);
            box.setVisible(asked);
        });
        return box;
    }

    private Button reading(EnteredQuantity typed, double value) {
        boolean whole = value == Math.rint(value);
        // four decimals: a text that is never asked back
        String text = NumberFormats.decimals(value, whole ? 0 : 4, form.words().locale());
        Button button = new Button(text);
        button.setOnAction(event -> form.model().set(place, typed.withText(text)));
        return button;
    }
}
