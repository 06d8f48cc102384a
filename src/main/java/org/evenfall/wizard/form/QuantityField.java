package org.evenfall.wizard.form;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.FieldSpec;

/**
 * One measured value: the field, its unit, and the two readings of a number that can be read two ways.
 *
 * @param form the form it belongs to
 * @param spec its units and limits
 * @param path where it is kept
 */
record QuantityField(Form form, FieldSpec spec, EntryPath<EnteredQuantity> path) {

    /** The field with its unit at the right. */
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
        choice.setConverter(Choices.converter(Unit::symbol));
        choice.setAccessibleText(label + ": " + form.words().text("form.unit"));
        choice.setMinWidth(Region.USE_PREF_SIZE);
        form.follow(() -> {
            Unit unit = path.get(form.model().setup()).unit();
            choice.setValue(unit == Unit.NONE ? spec.base() : unit);
        });
        choice.valueProperty().addListener((property, old, unit) -> {
            EnteredQuantity now = path.get(form.model().setup());
            if (unit != null && now.unit() != unit && !(now.unit() == Unit.NONE && unit == spec.base())) {
                form.model().set(path, now.withUnit(unit));
            }
        });
        return choice;
    }

    /** Connects a field to its place: what is typed goes in with the unit in use, other changes come back. */
    void bind(TextField field) {
        field.textProperty().addListener((property, old, text) -> {
            EnteredQuantity now = path.get(form.model().setup());
            if (!now.text().equals(text)) {
                Unit unit = now.unit() == Unit.NONE && spec.base() != Unit.NONE ? spec.base() : now.unit();
                form.model().set(path, new EnteredQuantity(text, unit));
            }
        });
        form.follow(() -> {
            String text = path.get(form.model().setup()).text();
            if (!text.equals(field.getText())) {
                field.setText(text);
            }
        });
    }

    /** Two buttons for the two readings of an ambiguous number; no room otherwise. */
    Node readings() {
        HBox box = new HBox();
        box.getStyleClass().add("readings");
        form.follow(() -> {
            EnteredQuantity typed = path.get(form.model().setup());
            box.getChildren().clear();
            if (NumberText.read(typed.text()) instanceof NumberReading.Ambiguous twice) {
                box.getChildren().addAll(reading(typed, twice.asDecimal()), reading(typed, twice.asThousands()));
            }
            box.setManaged(!box.getChildren().isEmpty());
            box.setVisible(!box.getChildren().isEmpty());
        });
        return box;
    }

    private Button reading(EnteredQuantity typed, double value) {
        boolean whole = value == Math.rint(value);
        // four decimals: a text that can be read in one way only
        String text = form.numberText(value, whole ? 0 : 4);
        Button button = new Button(text);
        button.setOnAction(event -> form.model().set(path, typed.withText(text)));
        return button;
    }

    /** The usual range in words; empty where nothing is unusual. */
    String hint() {
        boolean limited = spec.usualLow() > spec.low() || spec.usualHigh() < spec.high();
        return !limited || spec.usualLow() == spec.usualHigh()
                ? ""
                : form.words()
                        .text(
                                "form.usual",
                                Arg.number(spec.usualLow(), decimals(spec.usualLow()), Unit.NONE),
                                Arg.number(spec.usualHigh(), decimals(spec.usualHigh()), spec.base()));
    }

    private static int decimals(double limit) {
        if (limit == Math.rint(limit)) {
            return 0;
        }
        return limit * 10 == Math.rint(limit * 10) ? 1 : 2;
    }
}
