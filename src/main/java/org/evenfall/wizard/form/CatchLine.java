package org.evenfall.wizard.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.QuantityList;

/**
 * A list of catches in rows of seven, for one hand while others call out the numbers: type, Enter, next. Arrows go between
 * the fields. Numbers pasted from a message or a spreadsheet fill the fields from the one they are pasted into.
 */
public final class CatchLine {

    /** As many as a row of the field sheet has. */
    private static final int IN_A_ROW = 7;

    private final Form form;
    private final QuantityList<?> entry;
    private final String label;
    private final EntryPath<List<EnteredQuantity>> list;
    private final IntFunction<String> names;
    private final boolean grows;
    private final List<TextField> fields = new ArrayList<>();
    private final GridPane line = new GridPane();
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

    /** Runs with the number of the field that gets the keyboard, from 0, and with −1 when none of them has it. */
    public CatchLine onFocus(IntConsumer at) {
        for (int i = 0; i < fields.size(); i++) {
            int index = i;
            fields.get(i).focusedProperty().subscribe(focused -> at.accept(focused ? index : -1));
        }
        return this;
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
            VBox cell = new VBox();
            if (!names.apply(i).isEmpty()) {
                int index = i;
                Label above = new Label();
                form.follow(() -> above.setText(names.apply(index)));
                above.getStyleClass().add("column-header");
                cell.getChildren().add(above);
            }
            cell.getChildren().add(field);
            line.add(cell, i % IN_A_ROW, i / IN_A_ROW);
        }
    }

    private TextField field(int index) {
        TextField field = TypedField.number();
        field.setPrefColumnCount(4);
        String name = names.apply(index);
        field.setAccessibleText(label + ", " + (name.isEmpty() ? Integer.toString(index + 1) : name));
        new QuantityField(form, entry, QuantityList.item(list, index)).bind(field);
        field.addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, index));
        field.addEventFilter(KeyEvent.KEY_TYPED, event -> goOnAfterPlus(field));
        return field;
    }

    /** What waits for a further amount is not replaced by it. */
    private static void goOnAfterPlus(TextField field) {
        if (field.getText().endsWith(Measured.PLUS) && field.getSelectedText().equals(field.getText())) {
            field.end();
        }
    }

    private void key(KeyEvent event, int index) {
        TextField field = fields.get(index);
        boolean handled = switch (event.getCode()) {
            // after the last, or on an empty one that only waits for more, the frame goes on
            case ENTER -> !(grows && field.getText().isBlank()) && focus(index + 1);
            case UP -> focus(index - IN_A_ROW);
            case DOWN -> focus(index + IN_A_ROW);
            case LEFT -> field.getCaretPosition() == 0 && focus(index - 1);
            case RIGHT -> field.getCaretPosition() == field.getLength() && focus(index + 1);
            case V -> event.isShortcutDown() && pasted(index);
            default -> false;
        };
        if (handled || event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN) {
            event.consume();
        }
    }

    /** At once, so that no key overtakes it; false where there is none. */
    private boolean focus(int index) {
        if (index < 0 || index >= fields.size()) {
            return false;
        }
        Keyboard.to(fields.get(index));
        fields.get(index).selectAll();
        return true;
    }

    private boolean pasted(int from) {
        String text = Clipboard.getSystemClipboard().getString();
        if (text == null || !text.strip().matches("(?s).*[\\s;].*")) {
            return false;
        }
        List<String> values = new ArrayList<>();
        for (String word : text.strip().split("[\\s;]+", -1)) {
            if (values.isEmpty() || word.chars().anyMatch(Character::isDigit)) {
                values.add(word);
            } else {
                // a unit belongs to the number before it
                values.set(values.size() - 1, values.get(values.size() - 1) + " " + word);
            }
        }
        for (int i = 0; i < values.size() && from + i < fields.size(); i++) {
            fields.get(from + i).setText(values.get(i));
        }
        return true;
    }
}
