package org.evenfall.wizard.form;

import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.FieldSpec;

/**
 * One column of a table.
 *
 * @param name what its cells are called
 * @param header its heading, the name with the unit
 * @param key last part of the JSON pointer of its cells; empty when the row is the value itself
 * @param cell makes the cell of a row
 * @param <R> one row
 */
public record Column<R>(String name, String header, String key, Cell<R> cell) {

    /** Makes a cell for a row; the cell lasts as long as the form given. */
    @FunctionalInterface
    public interface Cell<R> {
        /** The cell of the row at a place in the setup; its id is its pointer. */
        Node of(Form form, EntryPath<R> row, String pointer);
    }

    /** The pointer of the cell in a row. */
    String pointer(String row) {
        return key.isEmpty() ? row : row + "/" + key;
    }

    /** A column of measured values. */
    public static <R> Column<R> typed(
            String name,
            FieldSpec spec,
            String key,
            Function<R, EnteredQuantity> get,
            BiFunction<R, EnteredQuantity, R> with) {
        String unit = spec.base() == Unit.NONE ? "" : ", " + spec.base().symbol();
        return new Column<>(name, name + unit, key, (form, row, pointer) -> {
            TextField field = new TextField();
            field.setId(pointer);
            field.setPrefColumnCount(4);
            field.setMinWidth(Region.USE_PREF_SIZE);
            field.setAccessibleText(name);
            form.bind(field, row.then(get, with), spec);
            return field;
        });
    }

    /** A column of words that are typed, so many letters wide. */
    public static <R> Column<R> text(
            String name, String key, int width, Function<R, String> get, BiFunction<R, String, R> with) {
        return new Column<>(
                name, name, key, (form, row, pointer) -> form.textField(pointer, row.then(get, with), name, width));
    }

    /** A column of choices. */
    public static <R, E extends Enum<E>> Column<R> choice(
            String name, String key, Class<E> type, Function<R, E> get, BiFunction<R, E, R> with) {
        return new Column<>(
                name,
                name,
                key,
                (form, row, pointer) -> new Choices<>(form, pointer, row.then(get, with)).dropDown(type, name));
    }
}
