package org.evenfall.wizard.form;

import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.Choice;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.Text;

/**
 * One column of a table.
 *
 * @param name what its cells are called
 * @param header its heading, the name with the unit
 * @param cell makes the cell of a row
 * @param <R> one row
 */
public record Column<R>(String name, String header, Cell<R> cell) {

    /** Makes a cell for a row; the cell lasts as long as the form given. */
    @FunctionalInterface
    public interface Cell<R> {
        /** The cell of the row at a place in the setup; its id is its pointer. */
        Node of(Form form, EntryPath<R> row);
    }

    /** A column of measured values. */
    public static <R> Column<R> quantity(Form form, Quantity<R> entry) {
        String name = form.words().text(entry.labelKey());
        return new Column<>(name, header(form, name, entry), (own, row) -> field(own, name, entry, entry.at(row)));
    }

    /** The only column of a list of measured values: the row is the value. */
    static Column<EnteredQuantity> values(Form form, QuantityList<?> entry) {
        String name = form.words().text(entry.labelKey());
        return new Column<>(name, header(form, name, entry), (own, row) -> field(own, name, entry, row));
    }

    private static String header(Form form, String name, Measured kind) {
        Unit unit = kind.units(form.model().setup()).get(0);
        return unit == Unit.NONE ? name : name + ", " + unit.symbol();
    }

    private static TextField field(Form form, String name, Measured kind, EntryPath<EnteredQuantity> path) {
        TextField field = TypedField.number();
        field.setPrefColumnCount(3);
        field.setMinWidth(Region.USE_PREF_SIZE);
        field.setAccessibleText(name);
        new QuantityField(form, kind, path).bind(field);
        return field;
    }

    /** A column of words that are typed, so many letters wide. */
    public static <R> Column<R> text(Form form, Text<R> entry, int width) {
        String name = form.words().text(entry.labelKey());
        return new Column<>(name, name, (own, row) -> TextEntry.field(own, name, entry.at(row), width));
    }

    /** A column of choices. */
    public static <R, E extends Enum<E>> Column<R> choice(Form form, Choice<R, E> entry) {
        String name = form.words().text(entry.labelKey());
        Class<E> type = entry.answers().get(0).getDeclaringClass();
        return new Column<>(name, name, (own, row) -> new Choices<>(own, entry.at(row)).dropDown(type, name));
    }
}
