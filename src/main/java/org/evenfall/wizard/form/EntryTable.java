package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityList;
import org.evenfall.setup.path.Rows;

/**
 * A table of repeats: type, Enter, next row. A column of numbers pasted from a spreadsheet fills the rows below. Always
 * one blank row at the end where the list may grow. What is found about a cell is shown below the table, and the cell is
 * marked.
 *
 * @param <R> one row
 */
public final class EntryTable<R> {

    private static final int LAST_OF_ONE_DIGIT = 9;

    private final Form form;
    private final EntryPath<List<R>> list;
    private final R blank;
    private final List<Column<R>> columns;
    private final boolean grows;
    private final GridPane grid = new GridPane();
    private final GridKeys keys;
    private final HorizontalScrollPane pane = new HorizontalScrollPane(grid);
    private final VBox box = new VBox(pane);
    private final List<Form> rows = new ArrayList<>();

    /**
     * @param form the form of the page around it
     * @param list the rows in the setup
     * @param blank a row in which nothing is typed
     * @param grows whether a row may be added and removed
     * @param columns the columns
     */
    EntryTable(Form form, EntryPath<List<R>> list, R blank, boolean grows, List<Column<R>> columns) {
        this.form = form;
        this.list = list;
        this.blank = blank;
        this.grows = grows;
        this.columns = List.copyOf(columns);
        this.keys = new GridKeys(grid, columns.size() > 1, this::remove);
        // columns of words give way before anything scrolls
        pane.setFitToWidth(true);
        grid.getStyleClass().add("rows");
        box.setId(list.pointer());
        box.getStyleClass().add("rows-box");
        form.follow(this::update);
        form.mark(grid.getChildren(), this::cellName);
    }

    /** A table of records, for a list that a setup has once. */
    public static <R> EntryTable<R> rows(Form form, Rows<?, R> entry, List<Column<R>> columns) {
        return new EntryTable<>(form, entry.path(), entry.blank(), true, columns);
    }

    /** A list of plain values under one heading, for a list that a setup has once. */
    public static EntryTable<EnteredQuantity> values(Form form, QuantityList<?> entry) {
        return values(form, entry, entry.path(), true);
    }

    /** A list of plain values of the record that is at a place. */
    public static <R> EntryTable<EnteredQuantity> values(Form form, QuantityList<R> entry, EntryPath<R> record) {
        return values(form, entry, entry.at(record), true);
    }

    /**
     * A list of plain values, kept in another way than as it is.
     *
     * @param grows whether a value may be added and removed
     */
    public static EntryTable<EnteredQuantity> values(
            Form form, QuantityList<?> entry, EntryPath<List<EnteredQuantity>> list, boolean grows) {
        return new EntryTable<>(form, list, EnteredQuantity.EMPTY, grows, List.of(Column.values(form, entry)));
    }

    /** The table with its findings. */
    public Node node() {
        return box;
    }

    private String cellName(String pointer) {
        for (Node cell : grid.getChildren()) {
            if (pointer.equals(cell.getId())) {
                return form.words()
                        .text(
                                "form.cell",
                                Arg.count(GridPane.getRowIndex(cell)),
                                Arg.text(columns.get(GridPane.getColumnIndex(cell) - 1)
                                        .name()));
            }
        }
        for (int r = 0; r < rows.size(); r++) {
            String row = row(r).pointer();
            if (pointer.equals(row) || pointer.startsWith(row + "/")) {
                return form.words().text("form.row", Arg.count(r + 1L));
            }
        }
        return "";
    }

    private EntryPath<R> row(int r) {
        return EntryPath.item(list, r, blank);
    }

    /** Cells follow the model by themselves; the table is only made anew when its length changes. */
    private void update() {
        int typed = list.get(form.model().setup()).size();
        int size = typed + (grows ? 1 : 0);
        if (size > rows.size() && !rows.isEmpty()) {
            // rows are only added below, so that the field being typed in stays
            if (grows) {
                removeButton(rows.size() - 1);
            }
            addRows(size, typed);
            // a field takes keys only once it is styled, and the next key may come before the next frame
            grid.applyCss();
        } else if (size != rows.size() || grid.getChildren().isEmpty()) {
            makeAnew(size, typed);
        }
    }

    private void makeAnew(int size, int typed) {
        Node focused =
                grid.getChildren().stream().filter(Node::isFocused).findFirst().orElse(null);
        rows.forEach(Form::end);
        rows.clear();
        grid.getChildren().clear();
        for (int c = 0; c < columns.size(); c++) {
            Label header = new Label(columns.get(c).header());
            header.getStyleClass().add("column-header");
            header.setWrapText(true);
            GridPane.setValignment(header, VPos.BOTTOM);
            grid.add(header, c + 1, 0);
        }
        addRows(size, typed);
        if (focused != null) {
            keys.focus(Math.min(GridPane.getRowIndex(focused) - 1, size - 1), GridPane.getColumnIndex(focused) - 1);
        }
    }

    private void addRows(int size, int typed) {
        for (int r = rows.size(); r < size; r++) {
            Form own = form.part();
            rows.add(own);
            addRow(own, r);
            if (grows && r < typed) {
                removeButton(r);
            }
        }
    }

    private void addRow(Form own, int r) {
        Label number = new Label(Integer.toString(r + 1));
        number.getStyleClass().add("row-number");
        if (r + 1 > LAST_OF_ONE_DIGIT) {
            number.getStyleClass().add("two-digits");
        }
        grid.add(number, 0, r + 1);
        for (int c = 0; c < columns.size(); c++) {
            keys.add(columns.get(c).cell().of(own, row(r)), r, c);
        }
    }

    private void remove(int r) {
        if (grows && r < list.get(form.model().setup()).size()) {
            form.model().remove(setup -> {
                List<R> rest = new ArrayList<>(list.get(setup));
                rest.remove(r);
                return list.set(setup, rest);
            });
        }
    }

    private void removeButton(int r) {
        Button remove = form.button("form.removeShort", () -> remove(r));
        // by the mouse, or by Ctrl+Delete in the row
        remove.setFocusTraversable(false);
        remove.setAccessibleText(form.words().text("form.remove"));
        remove.setTooltip(new Tooltip(form.words().text("form.remove")));
        remove.getStyleClass().add("quiet");
        grid.add(remove, columns.size() + 1, r + 1);
    }
}
