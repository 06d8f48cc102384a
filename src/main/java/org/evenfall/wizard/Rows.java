package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.FieldSpec;
import org.jspecify.annotations.Nullable;

/**
 * A table of repeats: type, Enter, next row. A column of numbers pasted from a spreadsheet fills the rows below. Always
 * one blank row at the end where the list may grow.
 *
 * @param <R> one row
 */
final class Rows<R> {

    /**
     * One column.
     *
     * @param <R> row
     * @param header its heading
     * @param cell makes the cell of a row
     */
    record Column<R>(String header, Cell<R> cell) {}

    /** Makes a cell for the row at a place in the setup. */
    @FunctionalInterface
    interface Cell<R> {
        Node of(EntryPath<R> row, String pointer);
    }

    private final Form form;
    private final EntryPath<List<R>> list;
    private final R blank;
    private final String pointer;
    private final List<Column<R>> columns;
    private final boolean grows;
    private final GridPane grid = new GridPane();
    private final VBox box = new VBox(new HorizontalScrollPane(grid));
    private int shown = -1;

    Rows(Form form, EntryPath<List<R>> list, R blank, String pointer, boolean grows, List<Column<R>> columns) {
        this.form = form;
        this.list = list;
        this.blank = blank;
        this.pointer = pointer;
        this.grows = grows;
        this.columns = columns;
        grid.getStyleClass().add("rows");
        box.getStyleClass().add("rows-box");
        box.getChildren().add(form.told(pointer));
        form.follow(this::rebuild);
    }

    Node node() {
        return box;
    }

    /** Cells follow the model by themselves; the table is only rebuilt when its length changes. */
    private void rebuild() {
        int size = list.get(form.model().setup()).size() + (grows ? 1 : 0);
        if (size == shown) {
            return;
        }
        int real = list.get(form.model().setup()).size();
        if (shown > 0 && size > shown) {
            // rows are only added below, so that the field being typed in stays
            if (grows) {
                remove(shown - 1);
            }
            for (int r = shown; r < size; r++) {
                row(r, r < real);
            }
            shown = size;
            return;
        }
        shown = size;
        Integer column = focusedColumn();
        Integer row = focusedRow();
        grid.getChildren().clear();
        for (int c = 0; c < columns.size(); c++) {
            Label header = new Label(columns.get(c).header());
            header.getStyleClass().add("column-header");
            header.setMinWidth(Region.USE_PREF_SIZE);
            grid.add(header, c + 1, 0);
        }
        for (int r = 0; r < size; r++) {
            row(r, r < real);
        }
        if (row != null && column != null) {
            focus(Math.min(row, size - 1), column);
        }
    }

    private void row(int r, boolean there) {
        Label number = new Label(Integer.toString(r + 1));
        number.getStyleClass().add("row-number");
        number.setMinWidth(Region.USE_PREF_SIZE);
        grid.add(number, 0, r + 1);
        EntryPath<R> place = EntryPath.item(list, r, blank);
        for (int c = 0; c < columns.size(); c++) {
            Node cell = columns.get(c).cell().of(place, pointer + "/" + r);
            int column = c;
            cell.addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, r, column));
            grid.add(cell, c + 1, r + 1);
        }
        if (grows && there) {
            remove(r);
        }
    }

    private void remove(int r) {
        Button remove = form.button(
                "form.removeShort",
                () -> form.model().change(setup -> {
                    List<R> rest = new ArrayList<>(list.get(setup));
                    rest.remove(r);
                    return list.set(setup, rest);
                }));
        remove.setAccessibleText(form.words().text("form.remove"));
        remove.setTooltip(new Tooltip(form.words().text("form.remove")));
        remove.getStyleClass().add("quiet");
        grid.add(remove, columns.size() + 1, r + 1);
    }

    private void key(KeyEvent event, int row, int column) {
        if (event.getCode() == KeyCode.ENTER) {
            event.consume();
            if (row + 1 < shown) {
                focus(row + 1, column);
            }
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.V) {
            String pasted = Clipboard.getSystemClipboard().getString();
            if (pasted != null && pasted.strip().contains("\n")) {
                event.consume();
                paste(pasted.strip().lines().toList(), row, column);
            }
        }
    }

    /** Each pasted line goes into the same column of the next row, as if it were typed. */
    private void paste(List<String> lines, int row, int column) {
        for (int i = 0; i < lines.size() && row + i < shown; i++) {
            if (at(row + i, column) instanceof TextField field) {
                field.setText(lines.get(i).split("\t", -1)[0].strip());
            }
        }
    }

    private void focus(int row, int column) {
        Platform.runLater(() -> {
            Node cell = at(row, column);
            if (cell != null) {
                cell.requestFocus();
                if (cell instanceof TextField field) {
                    field.end();
                }
            }
        });
    }

    private @Nullable Node at(int row, int column) {
        for (Node cell : grid.getChildren()) {
            if (GridPane.getRowIndex(cell) == row + 1 && GridPane.getColumnIndex(cell) == column + 1) {
                return cell;
            }
        }
        return null;
    }

    private @Nullable Integer focusedRow() {
        return focused() == null ? null : Integer.valueOf(GridPane.getRowIndex(focused()) - 1);
    }

    private @Nullable Integer focusedColumn() {
        return focused() == null ? null : Integer.valueOf(GridPane.getColumnIndex(focused()) - 1);
    }

    private @Nullable Node focused() {
        return grid.getChildren().stream().filter(Node::isFocused).findFirst().orElse(null);
    }

    /** A column of measured values. */
    static <R> Column<R> typed(
            Form form,
            String header,
            FieldSpec spec,
            String name,
            Function<R, EnteredQuantity> get,
            BiFunction<R, EnteredQuantity, R> with) {
        String unit = spec.base() == Unit.NONE ? "" : ", " + spec.base().symbol();
        return new Column<>(header + unit, (row, pointer) -> {
            TextField field = new TextField();
            field.setId(name.isEmpty() ? pointer : pointer + "/" + name);
            field.setPrefColumnCount(4);
            field.setMinWidth(Region.USE_PREF_SIZE);
            field.setAccessibleText(header);
            form.bind(field, row.then(get, with), spec);
            return field;
        });
    }

    /** A column of words. */
    static <R> Column<R> text(
            Form form, String header, String name, int width, Function<R, String> get, BiFunction<R, String, R> with) {
        return new Column<>(
                header, (row, pointer) -> form.textField(pointer + "/" + name, row.then(get, with), header, width));
    }

    /** A column of choices. */
    static <R, E extends Enum<E>> Column<R> choice(
            Form form, String header, Class<E> type, Function<R, E> get, BiFunction<R, E, R> with) {
        return new Column<>(header, (row, pointer) -> form.dropDown(row.then(get, with), type, header));
    }

    /** A list of plain values under one heading. */
    static Rows<EnteredQuantity> values(
            Form form, EntryPath<List<EnteredQuantity>> list, String pointer, String header, FieldSpec spec) {
        return new Rows<>(
                form,
                list,
                EnteredQuantity.EMPTY,
                pointer,
                true,
                List.of(typed(form, header, spec, "", t -> t, (old, t) -> t)));
    }
}
