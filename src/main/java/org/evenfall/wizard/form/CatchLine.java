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
import org.evenfall.setup.FieldSpec;

/**
 * A list of catches in a row, for one hand while others call out the numbers: type, Enter, next. A row or column pasted
 * from a spreadsheet fills the fields from the one it is pasted into.
 */
public final class CatchLine {

    private final Form form;
    private final String label;
    private final String pointer;
    private final EntryPath<List<EnteredQuantity>> list;
    private final FieldSpec spec;
    private final IntFunction<String> names;
    private final List<TextField> fields = new ArrayList<>();
    private final FlowPane line = new FlowPane();
    private final VBox box;

    /** Repeats: one blank field more than there are catches, at least two. */
    public CatchLine(Form form, String label, String pointer, EntryPath<List<EnteredQuantity>> list, FieldSpec spec) {
        this(form, label, pointer, list, spec, i -> "");
        form.follow(() -> fill(Math.max(2, list.get(form.model().setup()).size() + 1)));
    }

    /** A fixed number of fields, each under its own name. */
    public CatchLine(
            Form form,
            String label,
            String pointer,
            EntryPath<List<EnteredQuantity>> list,
            FieldSpec spec,
            int count,
            IntFunction<String> names) {
        this(form, label, pointer, list, spec, names);
        fill(count);
    }

    private CatchLine(
            Form form,
            String label,
            String pointer,
            EntryPath<List<EnteredQuantity>> list,
            FieldSpec spec,
            IntFunction<String> names) {
        this.form = form;
        this.label = label;
        this.pointer = pointer;
        this.list = list;
        this.spec = spec;
        this.names = names;
        Label above = VisibleWhen.sentence(form, "entry-label", this::title);
        line.getStyleClass().add("catch-line");
        box = new VBox(above, line, form.findingsOfCells(pointer, fields, this::cellName));
        box.getStyleClass().add("entry");
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
                .orElse(spec.base());
        return unit == Unit.NONE ? label : label + ", " + unit.symbol();
    }

    private String cellName(String cell) {
        for (int i = 0; i < fields.size(); i++) {
            if (cell.equals(pointer + "/" + i)) {
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
                Label above = new Label(name);
                above.getStyleClass().add("column-header");
                line.getChildren().add(new VBox(above, field));
            }
        }
    }

    private TextField field(int index) {
        TextField field = new TextField();
        field.setId(pointer + "/" + index);
        field.setPrefColumnCount(4);
        String name = names.apply(index);
        field.setAccessibleText(label + ", " + (name.isEmpty() ? Integer.toString(index + 1) : name));
        form.bind(field, EntryPath.item(list, index, EnteredQuantity.EMPTY), spec);
        field.addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, index));
        return field;
    }

    private void key(KeyEvent event, int index) {
        if (event.getCode() == KeyCode.ENTER) {
            event.consume();
            if (index + 1 < fields.size()) {
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
