package org.evenfall.wizard.form;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import org.controlsfx.control.SegmentedButton;
import org.evenfall.setup.path.EntryPath;

/**
 * An entry that is one of a few words.
 *
 * @param form the form it belongs to
 * @param path where it is kept
 * @param <E> the words
 */
public record Choices<E extends Enum<E>>(Form form, EntryPath<E> path) {

    /** Name of the choice that is no answer, in every kind of choice that has one. */
    private static final String UNANSWERED = "UNANSWERED";

    /** More choices than this wrap, fewer are one segmented button. */
    private static final int MOST_IN_A_ROW = 3;

    /** More letters in all than this wrap too. */
    private static final int MOST_LETTERS = 32;

    /** A button for each choice. */
    public Node buttons(List<E> choices) {
        List<ToggleButton> buttons = choices.stream().map(this::toggle).toList();
        form.follow(() -> buttons.forEach(button -> button.setSelected(
                Objects.equals(button.getUserData(), path.get(form.model().setup())))));
        keys(buttons);
        Pane holder;
        int letters =
                buttons.stream().mapToInt(button -> button.getText().length()).sum();
        if (buttons.size() > MOST_IN_A_ROW || letters > MOST_LETTERS) {
            holder = new FlowPane(6, 6);
            holder.getChildren().addAll(buttons);
        } else {
            holder = new HBox(new SegmentedButton(buttons.toArray(new ToggleButton[0])));
        }
        holder.setId(path.pointer());
        holder.setAccessibleRole(AccessibleRole.PARENT);
        return holder;
    }

    /** A digit or a letter chooses, and the keyboard goes to the chosen button. */
    private void keys(List<ToggleButton> buttons) {
        ChoiceKeys keys = new ChoiceKeys(
                buttons.stream().map(ToggleButton::getText).toList(),
                form.words().locale(),
                index -> {
                    buttons.get(index).requestFocus();
                    buttons.get(index).fire();
                });
        for (int i = 0; i < buttons.size(); i++) {
            int at = i;
            keys.listen(buttons.get(i), () -> at);
        }
    }

    private ToggleButton toggle(E choice) {
        ToggleButton button = new ToggleButton(form.words().choice(choice));
        button.setUserData(choice);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setId(path.pointer() + "/" + choice.name());
        button.setOnAction(event -> {
            // pressing the selected one again does not take the answer back
            button.setSelected(true);
            form.model().set(path, choice);
        });
        return button;
    }

    /** The cell of a table: a drop-down list of all words, also the one for no answer. */
    ChoiceBox<E> dropDown(Class<E> type, String label) {
        ChoiceBox<E> box = new ChoiceBox<>();
        box.setId(path.pointer());
        box.getItems().setAll(type.getEnumConstants());
        // short where nothing is answered: a table has little room
        box.setConverter(converter(
                choice -> choice.name().equals(UNANSWERED) ? "–" : form.words().choice(choice)));
        box.setAccessibleText(label);
        box.setMinWidth(Region.USE_PREF_SIZE);
        form.follow(() -> box.setValue(path.get(form.model().setup())));
        List<E> answers = box.getItems().stream()
                .filter(choice -> !choice.name().equals(UNANSWERED))
                .toList();
        new ChoiceKeys(
                        answers.stream().map(form.words()::choice).toList(),
                        form.words().locale(),
                        index -> box.setValue(answers.get(index)))
                .listen(box, () -> answers.indexOf(box.getValue()));
        box.valueProperty().addListener((property, old, value) -> {
            if (value != null && value != path.get(form.model().setup())) {
                form.model().set(path, value);
            }
        });
        return box;
    }

    /** Shows items by their text; for lists that are chosen from, never typed into. */
    public static <T> StringConverter<T> converter(Function<T, String> text) {
        return new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : text.apply(value);
            }

            @Override
            public T fromString(String typed) {
                throw new UnsupportedOperationException("chosen, not typed");
            }
        };
    }
}
