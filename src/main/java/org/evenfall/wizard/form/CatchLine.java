package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityList;

/**
 * A list of catches in a row, for one hand while others call out the numbers: type, Enter, next. A row or column pasted
 * from a spreadsheet fills the fields from the one it is pasted into.
 */
public final class CatchLine {

    private final Form form;
    private final QuantityList<?> entry;
    private final String label;
    private final EntryPath<List<EnteredQuantity>> list;
    private final IntFunction<String> names;
    private final boolean grows;
    private final List<TextField> fields = new ArrayList<>();
    private final FlowPane line = new FlowPane();
    private final VBox box;

    private CatchLine(
            Form form,
            QuantityList<?> entry,
            EntryPath<List<EnteredQuantity>> list,
            IntFunction<String> names,
            boolean grows) {
        this.form = form;
        this.grows = grows;
        this.entry = entry;
        this.label = form.words().text(entry.labelKey());
        this.list = list;
        this.names = names;
        Label above = VisibleWhen.sentence(form, "entry-label", this::title);
        line.getStyleClass().add("catch-line");
        box = new VBox(above, line);
        form.mark(fields, this::cellName);
        box.setId(list.pointer());
        box.getStyleClass().add("entry");
    }

    /** Repeats of the record that is at a place: one blank field more than there are catches, at least two. */
    public static <R> CatchLine repeats(Form form, QuantityList<R> entry, EntryPath<R> record) {
        CatchLine line = new CatchLine(form, entry, entry.at(record), i -> "", true);
        form.follow(() ->
                line.fill(Math.max(2, line.list.get(form.model().setup()).size() + 1)));
        return line;
    }

    /** A fixed number of fields, each under its own name, of the record that is at a place. */
    public static <R> CatchLine named(
            Form form, QuantityList<R> entry, EntryPath<R> record, int count, IntFunction<String> names) {
        CatchLine line = new CatchLine(form, entry, entry.at(record), names, false);
        line.fill(count);
        return line;
    }

    /** The line with its label and its findings. */
    public Node node() {
        return box;
    }

    /** With the unit that was typed first, else the usual one. */
    private String title() {
        Unit unit = list.get(form.model().setup()).stream()
                .filter(typed -> !typed.isBlank() && typed.unit() != Unit.NONE)
                .map(EnteredQuantity::unit)
                .findFirst()
                .orElse(entry.units(form.model().setup()).get(0));
        return unit == Unit.NONE ? label : label + ", " + unit.symbol();
    }

    private String cellName(String cell) {
        for (int i = 0; i < fields.size(); i++) {
            if (cell.equals(fields.get(i).getId())) {
                return names.apply(i).isEmpty() ? form.words().text("form.item", Arg.count(i + 1L)) : names.apply(i);
            }
        }
        return "";
    }

    private void fill(int count) {
        for (int i = fields.size(); i < count; i++) {
            TextField field = field(i);
            fields.add(field);
            String name = names.apply(i);
            if (name.isEmpty()) {
                line.getChildren().add(field);
            } else {
                int index = i;
                Label above = new Label(name);
                form.follow(() -> above.setText(names.apply(index)));
                above.getStyleClass().add("column-header");
                line.getChildren().add(new VBox(above, field));
            }
        }
    }

    private TextField field(int index) {
        TextField field = new TextField();
        field.setPrefColumnCount(4);
        String name = names.apply(index);
        field.setAccessibleText(label + ", " + (name.isEmpty() ? Integer.toString(index + 1) : name));
        new QuantityField(form, entry, QuantityList.item(list, index)).bind(field);
        field.addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, index));
        return field;
    }

    private void key(KeyEvent event, int index) {
        if (event.getCode() == KeyCode.ENTER) {
            // after the last, or on an empty one that only waits for more, the frame goes on
            if (index + 1 < fields.size()
                    && !(grows && fields.get(index).getText().isBlank())) {
                event.consume();
                fields.get(index + 1).requestFocus();
            }
        } else if (event.isShortcutDown() && event.getCode() == KeyCode.V) {
            String pasted = Clipboard.getSystemClipboard().getString();
            if (pasted != null && pasted.strip().matches("(?s).*[\\t\\n].*")) {
                event.consume();
                paste(pasted.strip().split("[\\t\\r\\n]+", -1), index);
            }
        }
    }

    private void paste(String[] values, int from) {
        for (int i = 0; i < values.length; i++) {
            if (from + i < fields.size()) {
                fields.get(from + i).setText(values[i].strip());
            }
        }
    }
}
