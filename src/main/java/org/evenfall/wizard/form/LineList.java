package org.evenfall.wizard.form;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.Text;

/** Entries that are filled in already, one a line with its label at the left: Enter accepts a line, typing replaces it. */
public final class LineList extends GridPane {

    private static final int NUMBER_COLUMNS = 4;
    private static final int TEXT_COLUMNS = 11;

    private final Form form;

    /** @param form the form of the page around it */
    public LineList(Form form) {
        this.form = form;
        getStyleClass().add("line-list");
        ColumnConstraints labels = new ColumnConstraints();
        labels.setHgrow(Priority.SOMETIMES);
        labels.setMinWidth(0);
        ColumnConstraints entries = new ColumnConstraints();
        entries.setMinWidth(Region.USE_PREF_SIZE);
        getColumnConstraints().setAll(labels, entries);
    }

    /** Two lists of equal width, or one under the other where there is no room. */
    public static Node sideBySide(Node left, Node right) {
        return new Halves(left, right);
    }

    /** A measured value of the record that is at a place. */
    public <R> LineList quantity(Quantity<R> entry, EntryPath<R> record) {
        return quantity(form.words().text(entry.labelKey(form.model().setup())), entry, entry.at(record));
    }

    /** A measured value under a name that the owner of the machine gave it. */
    public LineList quantity(String label, Measured kind, EntryPath<EnteredQuantity> path) {
        HBox box = new QuantityField(form, kind, path).box(label);
        TextField field = (TextField) box.getChildren().get(0);
        field.setPrefColumnCount(NUMBER_COLUMNS);
        return line(label, box, field);
    }

    /** A line of text, or a date, of the record that is at a place. */
    public <R> LineList text(Text<R> entry, EntryPath<R> record) {
        String label = form.words().text(entry.labelKey());
        EntryPath<String> path = entry.at(record);
        Node node =
                entry.isDate() ? new DateField(form, label, path) : TextEntry.field(form, label, path, TEXT_COLUMNS);
        return line(label, node, node);
    }

    private LineList line(String label, Node node, Node marked) {
        Label name = Wrapped.label(label, "line-label");
        name.setLabelFor(marked);
        addRow(getRowCount(), name, node);
        form.mark(List.of(marked), each -> "");
        return this;
    }
}
