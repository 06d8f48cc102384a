package org.evenfall.wizard.form;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberReading;
import org.evenfall.quantity.NumberText;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Range;
import org.evenfall.setup.path.ShownLimits;

/**
 * One measured value: the field, its unit, and the two readings of a number that can be read two ways.
 *
 * @param form the form it belongs to
 * @param kind its units and limits
 * @param path where it is kept
 */
public record QuantityField(Form form, Measured kind, EntryPath<EnteredQuantity> path) {

    /** The field with its unit at the right. */
    HBox box(String label) {
        TextField field = TypedField.number();
        field.setPrefColumnCount(7);
        field.setAccessibleText(label);
        bind(field);
        HBox box = new HBox(field);
        box.getStyleClass().add("with-unit");
        box.setAlignment(Pos.CENTER_LEFT);
        if (units().size() > 1) {
            box.getChildren().add(unitChoice(label));
        } else if (!unit().symbol().isEmpty()) {
            box.getChildren().add(new Label(unit().symbol()));
        }
        return box;
    }

    private ChoiceBox<Unit> unitChoice(String label) {
        ChoiceBox<Unit> choice = new ChoiceBox<>();
        choice.getItems().setAll(units());
        choice.setConverter(Choices.converter(Unit::symbol));
        choice.setAccessibleText(label + ": " + form.words().text("form.unit"));
        choice.setMinWidth(Region.USE_PREF_SIZE);
        // the unit is typed in the field; the box is for the mouse
        choice.setFocusTraversable(false);
        form.follow(() -> {
            choice.setValue(shown(path.get(form.model().setup())));
        });
        choice.valueProperty().addListener((property, old, unit) -> {
            EnteredQuantity now = path.get(form.model().setup());
            if (unit != null && unit != shown(now)) {
                form.model().set(path, now.withUnit(unit));
            }
        });
        return choice;
    }

    /** The unit that was typed behind the number, else the one chosen, else the usual one. */
    private Unit shown(EnteredQuantity typed) {
        Unit behind = typed.withUnitFromText().unit();
        if (units().contains(behind)) {
            return behind;
        }
        if (units().contains(typed.unit())) {
            return typed.unit();
        }
        // a number of a file without a unit is read in the first unit of its description
        return typed.isBlank()
                ? unit()
                : kind.range(form.model().setup(), typed).shown();
    }

    /** Connects a field to its place: what is typed goes in with the unit in use, other changes come back. */
    public void bind(TextField field) {
        field.setId(path.pointer());
        field.textProperty().addListener((property, old, text) -> {
            EnteredQuantity now = path.get(form.model().setup());
            if (!now.text().equals(text)) {
                form.model().set(path, new EnteredQuantity(text, unitOf(text, now)));
            }
        });
        form.follow(() -> {
            String text = path.get(form.model().setup()).text();
            if (!text.equals(field.getText())) {
                field.setText(text);
            }
        });
        HiddenText.follow(form, field, path.pointer());
    }

    /** None where it is typed behind the number, so that a file has it once; else the one in use. */
    private Unit unitOf(String text, EnteredQuantity now) {
        Unit behind = new EnteredQuantity(text, Unit.NONE).withUnitFromText().unit();
        if (behind != Unit.NONE && units().contains(behind)) {
            return Unit.NONE;
        }
        return now.unit() == Unit.NONE ? unit() : now.unit();
    }

    /** Two buttons for the two readings of an ambiguous number; no room otherwise. */
    Node readings() {
        HBox box = new HBox();
        box.getStyleClass().add("readings");
        form.follow(() -> {
            EnteredQuantity typed = path.get(form.model().setup());
            box.getChildren().clear();
            if (NumberText.read(typed.text()) instanceof NumberReading.Ambiguous twice) {
                box.getChildren()
                        .addAll(
                                reading(typed, twice.asDecimal(), twice.decimals()),
                                reading(typed, twice.asThousands(), 0));
            }
            box.setManaged(!box.getChildren().isEmpty());
            box.setVisible(!box.getChildren().isEmpty());
        });
        return box;
    }

    private Button reading(EnteredQuantity typed, double value, int decimals) {
        String text = form.numberText(value, decimals);
        Button button = new Button(text);
        button.setOnAction(event -> form.model().set(path, typed.withText(text)));
        return button;
    }

    private List<Unit> units() {
        return kind.units(form.model().setup());
    }

    /** The unit that is assumed while none is chosen. */
    Unit unit() {
        return units().get(0);
    }

    /**
     * The usual range in the unit in use. A line for each unit lies in one place, so that nothing moves when another unit is
     * typed.
     */
    StackPane hint() {
        StackPane lines = new StackPane();
        lines.setAlignment(Pos.CENTER_LEFT);
        for (Unit unit : units()) {
            Label line = new Label();
            line.getStyleClass().add("hint");
            form.follow(() -> {
                line.setText(usual(unit));
                line.setVisible(unit == shown(path.get(form.model().setup())));
            });
            lines.getChildren().add(line);
        }
        return lines;
    }

    /** Whether there is a usual range to show: not where nothing, or all but one number, is unusual. */
    boolean hasHint() {
        return !usual(unit()).isEmpty();
    }

    private String usual(Unit unit) {
        Range range = kind.range(form.model().setup(), EnteredQuantity.EMPTY.withUnit(unit));
        boolean limited = range.usual().low() > range.possible().low()
                || range.usual().high() < range.possible().high();
        ShownLimits limits = range.in(unit, range.usual());
        return !limited || range.usual().low() == range.usual().high()
                ? ""
                : form.words().text("form.usual", limits.low(), limits.high());
    }
}
