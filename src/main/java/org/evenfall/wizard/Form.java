package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.controlsfx.control.SegmentedButton;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Severity;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.FieldSpec;

/**
 * Makes the entries of a step: a label above, the unit inside at the right, the usual range as a hint, and beneath it in
 * words what there is to tell of what was typed. Every entry writes into the model as it is typed and follows it when it
 * changes elsewhere.
 */
final class Form {

    /** More choices than this wrap instead of standing in one row. */
    private static final int MOST_IN_A_ROW = 3;

    private final SetupModel model;
    private final Sentences words;

    Form(SetupModel model, Sentences words) {
        this.model = model;
        this.words = words;
    }

    SetupModel model() {
        return model;
    }

    Sentences words() {
        return words;
    }

    /** A heading with its entries beneath. */
    VBox group(String titleKey, Node... entries) {
        Label title = new Label(words.text(titleKey));
        title.getStyleClass().add("group-title");
        VBox box = new VBox(title);
        box.getChildren().addAll(entries);
        box.getStyleClass().add("group");
        return box;
    }

    /** Entries side by side, wrapped where there is no room. */
    FlowPane row(Node... entries) {
        FlowPane row = new FlowPane(entries);
        row.getStyleClass().add("entry-row");
        return row;
    }

    /** A plain sentence between entries. */
    Label sentence(String key) {
        Label label = new Label(words.text(key));
        label.setWrapText(true);
        label.getStyleClass().add("sentence");
        return label;
    }

    Button button(String key, Runnable action) {
        Button button = new Button(words.text(key));
        button.setId(key);
        button.setOnAction(event -> action.run());
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    /** A measured value with its unit. */
    Node typed(String labelKey, FieldSpec spec, String pointer, EntryPath<EnteredQuantity> place) {
        return typedNamed(words.text(labelKey), spec, pointer, place);
    }

    /** The same under a name of the owner's own. */
    Node typedNamed(String label, FieldSpec spec, String pointer, EntryPath<EnteredQuantity> place) {
        QuantityField entry = new QuantityField(this, spec, place);
        VBox box = labelled(label, pointer, hint(spec), entry.box(pointer, label));
        box.getChildren().add(entry.readings());
        return box;
    }

    /** Ties a field to a place: what is typed goes in with the unit in use, what changes elsewhere comes back. */
    void bind(TextField field, EntryPath<EnteredQuantity> place, FieldSpec spec) {
        new QuantityField(this, spec, place).bind(field);
    }

    Node text(String labelKey, String pointer, EntryPath<String> place) {
        return labelled(words.text(labelKey), pointer, "", textField(pointer, place, words.text(labelKey), 18));
    }

    TextField textField(String pointer, EntryPath<String> place, String label, int columns) {
        TextField field = new TextField();
        field.setId(pointer);
        field.setPrefColumnCount(columns);
        field.setMinWidth(6 * 9);
        field.setAccessibleText(label);
        field.textProperty().addListener((seen, old, text) -> {
            if (!place.get(model.setup()).equals(text)) {
                model.set(place, text);
            }
        });
        follow(() -> {
            if (!place.get(model.setup()).equals(field.getText())) {
                field.setText(place.get(model.setup()));
            }
        });
        return field;
    }

    /** One of a few words, side by side, under its label. */
    <E extends Enum<E>> Node choice(String labelKey, String pointer, EntryPath<E> place, List<E> choices) {
        return labelled(words.text(labelKey), pointer, "", bareChoice(pointer, place, choices));
    }

    /** One of a few words, side by side. */
    <E extends Enum<E>> Node bareChoice(String pointer, EntryPath<E> place, List<E> choices) {
        List<ToggleButton> buttons =
                choices.stream().map(choice -> toggle(pointer, place, choice)).toList();
        follow(() -> buttons.forEach(
                button -> button.setSelected(Objects.equals(button.getUserData(), place.get(model.setup())))));
        Pane holder = buttons.size() > MOST_IN_A_ROW ? new FlowPane(6, 6) : new HBox();
        if (buttons.size() > MOST_IN_A_ROW) {
            holder.getChildren().addAll(buttons);
        } else {
            holder.getChildren().add(new SegmentedButton(buttons.toArray(new ToggleButton[0])));
        }
        holder.setId(pointer);
        holder.setAccessibleRole(AccessibleRole.PARENT);
        return holder;
    }

    private <E extends Enum<E>> ToggleButton toggle(String pointer, EntryPath<E> place, E choice) {
        ToggleButton button = new ToggleButton(words.choice(choice));
        button.setUserData(choice);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setId(pointer + "/" + choice.name());
        button.setOnAction(event -> {
            button.setSelected(true);
            model.set(place, choice);
        });
        return button;
    }

    /** All words of a choice but the unanswered one. */
    static <E extends Enum<E>> List<E> answers(Class<E> type) {
        return Arrays.stream(type.getEnumConstants())
                .filter(word -> !word.name().equals("UNANSWERED"))
                .toList();
    }

    /** A choice in a table: a drop-down. */
    <E extends Enum<E>> ChoiceBox<E> dropDown(EntryPath<E> place, Class<E> type, String label) {
        ChoiceBox<E> box = new ChoiceBox<>();
        box.getItems().setAll(type.getEnumConstants());
        box.setConverter(converter(words::choice));
        box.setAccessibleText(label);
        box.setMinWidth(Region.USE_PREF_SIZE);
        follow(() -> box.setValue(place.get(model.setup())));
        box.valueProperty().addListener((seen, old, value) -> {
            if (value != null && value != place.get(model.setup())) {
                model.set(place, value);
            }
        });
        return box;
    }

    static <T> StringConverter<T> converter(Function<T, String> shown) {
        return new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : shown.apply(value);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("chosen, not typed");
            }
        };
    }

    /** A button that stands beside entries with labels, at their height. */
    VBox beside(Button button) {
        Label blank = new Label(" ");
        blank.getStyleClass().add("entry-label");
        VBox box = new VBox(blank, button);
        box.getStyleClass().add("entry");
        return box;
    }

    /** An entry that is kept nowhere in the setup, under its label. */
    VBox labelledNode(String labelKey, Node entry) {
        return labelled(words.text(labelKey), "/none", "", entry);
    }

    private VBox labelled(String label, String pointer, String hint, Node entry) {
        Label above = new Label(label);
        above.getStyleClass().add("entry-label");
        above.setLabelFor(entry);
        VBox box = new VBox(above, entry);
        box.getStyleClass().add("entry");
        if (!hint.isEmpty()) {
            Label usual = new Label(hint);
            usual.getStyleClass().add("hint");
            box.getChildren().add(usual);
        }
        box.getChildren().add(told(pointer));
        HBox.setHgrow(box, Priority.SOMETIMES);
        return box;
    }

    private String hint(FieldSpec spec) {
        boolean told = spec.usualLow() > spec.low() || spec.usualHigh() < spec.high();
        return !told || spec.usualLow() == spec.usualHigh()
                ? ""
                : words.text(
                        "form.usual",
                        Arg.number(spec.usualLow(), decimals(spec.usualLow()), Unit.NONE),
                        Arg.number(spec.usualHigh(), decimals(spec.usualHigh()), spec.base()));
    }

    private static int decimals(double limit) {
        if (limit == Math.rint(limit)) {
            return 0;
        }
        return limit * 10 == Math.rint(limit * 10) ? 1 : 2;
    }

    /** What there is to tell of one entry, beneath it. */
    VBox told(String pointer) {
        VBox box = new VBox();
        box.getStyleClass().add("told");
        follow(() -> {
            List<Node> lines = new ArrayList<>();
            for (Finding finding : model.assessment().findings()) {
                if (finding.field().equals(pointer) && finding.severity() != Severity.MISSING) {
                    lines.add(FindingView.line(words, finding));
                }
            }
            boolean any = !lines.isEmpty();
            box.getChildren().setAll(lines);
            box.setManaged(any);
            box.setVisible(any);
        });
        return box;
    }

    /** Runs now and after every change of the setup. */
    void follow(Runnable update) {
        model.setupProperty().addListener((seen, old, fresh) -> update.run());
        update.run();
    }

    /** A setting without more decimals than it needs, as it would be typed. */
    String plain(double value) {
        return NumberFormats.decimals(value, value == Math.rint(value) ? 0 : 1, words.locale());
    }
}
