package org.evenfall.wizard.form;

import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Subscription;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.setup.path.Choice;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.Measured;
import org.evenfall.setup.path.Quantity;
import org.evenfall.setup.path.Text;

/**
 * Makes the entries of a page: a label above, the unit at the right, the usual range as a hint, and below it the findings
 * about what was typed. Every entry writes into the model as it is typed and follows it when it changes elsewhere. What
 * is made with a {@link #part} stops following when that part is ended.
 */
public final class Form {

    private final SetupModel model;
    private final Sentences words;
    private final Lifetime lifetime;

    /** A form for the whole page, as long as the window. */
    public Form(SetupModel model, Sentences words) {
        this(model, words, new Lifetime());
    }

    private Form(SetupModel model, Sentences words, Lifetime lifetime) {
        this.model = model;
        this.words = words;
        this.lifetime = lifetime;
    }

    /** A form for a part of the page that may be removed before the rest; whoever removes it calls {@link #end}. */
    public Form part() {
        return new Form(model, words, lifetime.child());
    }

    /** Ends all that was made with this form: it no longer follows the model. */
    public void end() {
        lifetime.end();
    }

    /** The setup that the entries write into. */
    public SetupModel model() {
        return model;
    }

    /** The sentences of the page. */
    public Sentences words() {
        return words;
    }

    /** Runs now and after every change of the setup, until this form is ended. */
    public void follow(Runnable update) {
        lifetime.add(model.follow(() -> {
            // ended by an earlier update of the same change: nothing more to show
            if (!lifetime.ended()) {
                update.run();
            }
        }));
        update.run();
    }

    /** A subscription to something else than the model, which ends with this form. */
    void until(Subscription subscription) {
        lifetime.add(subscription);
    }

    /** A number as the reader would type it, with so many decimals. */
    public String numberText(double value, int decimals) {
        return NumberFormats.decimals(value, decimals, words.locale());
    }

    /** A heading with its entries below. */
    public VBox group(String titleKey, Node... entries) {
        Label title = new Label(words.text(titleKey));
        title.getStyleClass().add("group-title");
        VBox box = new VBox(title);
        box.getChildren().addAll(entries);
        box.getStyleClass().add("group");
        return box;
    }

    /** Entries in a row, wrapped where there is no room. */
    public FlowPane row(Node... entries) {
        FlowPane row = new FlowPane(entries);
        row.getStyleClass().add("entry-row");
        if (entries.length == 1) {
            row.getStyleClass().add("single");
        }
        return row;
    }

    /** A plain sentence between entries. */
    public Label sentence(String key) {
        Label label = new Label(words.text(key));
        label.setWrapText(true);
        label.getStyleClass().add("sentence");
        return label;
    }

    /** A button; its id is the key of its text. */
    public Button button(String key, Runnable action) {
        Button button = new Button(words.text(key));
        button.setId(key);
        button.setOnAction(event -> action.run());
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    /** A button at the height of entries with labels. */
    public VBox alignedButton(Button button) {
        Label blank = new Label(" ");
        blank.getStyleClass().add("entry-label");
        VBox box = new VBox(blank, button);
        box.getStyleClass().add("entry");
        return box;
    }

    /** A measured value with its unit, for an entry that a setup has once. */
    public Node quantity(Quantity<?> entry) {
        return quantity(words.text(entry.labelKey(model.setup())), entry, entry.path());
    }

    /** A measured value of the record that is at a place; a label that depends on the setup is that of now. */
    public <R> Node quantity(Quantity<R> entry, EntryPath<R> record) {
        return quantity(words.text(entry.labelKey(model.setup())), entry, entry.at(record));
    }

    /** A measured value under a name that the owner of the machine gave it. */
    public Node quantity(String label, Measured kind, EntryPath<EnteredQuantity> path) {
        QuantityField entry = new QuantityField(this, kind, path);
        VBox box = labelled(label, path.pointer(), entry.box(label));
        if (entry.hasHint()) {
            box.getChildren().add(entry.hint());
        }
        box.getChildren().add(entry.readings());
        return box;
    }

    /** A line of text, or a date with its calendar, for an entry that a setup has once. */
    public Node text(Text<?> entry) {
        return text(words.text(entry.labelKey()), entry.path(), entry.isDate());
    }

    /** A line of text of the record that is at a place. */
    public <R> Node text(Text<R> entry, EntryPath<R> record) {
        return text(words.text(entry.labelKey()), entry.at(record), entry.isDate());
    }

    /** A line of text under a name of its own, for one of several places of a list. */
    public Node text(String label, EntryPath<String> path) {
        return text(label, path, false);
    }

    private Node text(String label, EntryPath<String> path, boolean date) {
        Node entry = date ? new DateField(this, label, path) : TextEntry.field(this, label, path, TextEntry.COLUMNS);
        return labelled(label, path.pointer(), entry);
    }

    /** One of a few words, in a row of buttons, for an entry that a setup has once. */
    public <E extends Enum<E>> Node choice(Choice<?, E> entry) {
        return choice(entry, entry.path());
    }

    /** The same, kept in another way than as it is; for an entry whose change changes others. */
    public <E extends Enum<E>> Node choice(Choice<?, E> entry, EntryPath<E> path) {
        return labelled(
                words.text(entry.labelKey()), path.pointer(), new Choices<>(this, path).buttons(entry.answers()));
    }

    /** One of a few words of the record that is at a place. */
    public <R, E extends Enum<E>> Node choiceIn(Choice<R, E> entry, EntryPath<R> record) {
        return choice(entry, entry.at(record));
    }

    /** An entry that is not kept in the setup, under its label. */
    public VBox labelledNode(String labelKey, Node entry) {
        return labelled(words.text(labelKey), "", entry);
    }

    private VBox labelled(String label, String pointer, Node entry) {
        Label above = new Label(label);
        above.getStyleClass().add("entry-label");
        above.setLabelFor(entry);
        VBox box = new VBox(above, entry);
        box.getStyleClass().add("entry");
        if (!pointer.isEmpty()) {
            mark(List.of(field(entry, pointer)), each -> "");
        }
        HBox.setHgrow(box, Priority.SOMETIMES);
        return box;
    }

    /** The node that is marked: the field inside an entry with its unit, else the entry. */
    private static Node field(Node entry, String pointer) {
        return entry instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .filter(child -> pointer.equals(child.getId()))
                        .findFirst()
                        .orElse(entry)
                : entry;
    }

    /** The findings about one place, to be placed below a group; takes no room without any. */
    public VBox findings(String pointer) {
        return PlaceFindings.of(this, pointer);
    }

    /**
     * Marks entries by the findings about them; the words are where the keyboard is ({@link FocusedFindings}).
     *
     * @param entries the entries, a live list; the id of each is its pointer
     * @param name what the entry of a pointer is called in a sentence; empty where its label says it
     */
    public void mark(List<? extends Node> entries, Function<String, String> name) {
        PlaceFindings.mark(this, entries, name);
    }
}
