package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.SetupModel;
import org.jspecify.annotations.Nullable;

/** The page of a prompt: its name and question, how or why, one line of caution, the entries, the way on without them. */
final class PromptPage extends VBox {

    /** With the number of the row and the button that removes it. */
    private static final int WIDE_COLUMNS = 5;

    private final Step step;
    private final Prompt prompt;
    private final Label how;
    private final @Nullable Node caution;

    /** @param model the setup, for what is skipped */
    PromptPage(SetupModel model, Sentences words, Step step, Prompt prompt) {
        this.step = step;
        this.prompt = prompt;
        String key = "prompt." + prompt.id();
        Label name = new Label(prompt.id());
        name.getStyleClass().add("prompt-name");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label question = new Label(words.text(key + ".question"));
        question.getStyleClass().add("question");
        question.setWrapText(true);
        HBox heading = new HBox(name, question);
        heading.getStyleClass().add("heading");
        how = new Label(words.text(key + ".how"));
        how.getStyleClass().add("why");
        how.setWrapText(true);
        getStyleClass().add("page");
        getChildren().addAll(heading, how);
        caution = prompt.mayHurt()
                ? caution(words.text("step." + step.name().toLowerCase(Locale.ROOT) + ".cautionLine"))
                : null;
        if (caution != null) {
            getChildren().add(caution);
        }
        Node entries = prompt.entries();
        entries.getStyleClass().add("entries");
        getChildren().add(entries);
        if (words.has(key + ".without")) {
            SkipLine skip = new SkipLine(model, words, prompt.id());
            getChildren().add(skip);
            model.follow(() -> offer(skip));
            offer(skip);
        }
    }

    /** Going on without is offered while nothing is typed here. */
    private void offer(SkipLine skip) {
        skip.setVisible(!typed());
        skip.setManaged(!typed());
    }

    private static Node caution(String sentence) {
        Label text = new Label(sentence);
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        HBox band = new HBox(FindingView.mark(FindingKind.WARNING), text);
        HBox.setHgrow(text, Priority.ALWAYS);
        band.getStyleClass().add("caution");
        return band;
    }

    /** In a hall only question and entries are here: how and the caution are at the foot. */
    void inHall(boolean hall) {
        if (!prompt.alone()) {
            getChildren().remove(how);
            getChildren().remove(caution);
            if (!hall) {
                if (caution != null) {
                    getChildren().add(1, caution);
                }
                getChildren().add(1, how);
            }
        }
    }

    /** Whether it has a table that needs the room of its picture where letters are large. */
    boolean isWide() {
        return lookupAll(".rows").stream()
                .anyMatch(table -> table instanceof GridPane grid && grid.getColumnCount() >= WIDE_COLUMNS);
    }

    /** How or why, in one sentence. */
    String how() {
        return how.getText();
    }

    /** The one line of caution of a prompt that may hurt. */
    Optional<Node> caution() {
        return Optional.ofNullable(caution);
    }

    Step step() {
        return step;
    }

    Prompt prompt() {
        return prompt;
    }

    /** Whether something is typed or chosen here, or there is nothing to type, or the prompt knows better. */
    boolean begun() {
        return prompt.answered().orElseGet(() -> ids(this).isEmpty() || typed());
    }

    /** Whether something is typed or chosen here. */
    boolean typed() {
        return typed(this);
    }

    private static boolean typed(Node node) {
        if (node instanceof TextInputControl field) {
            return !field.getText().isBlank();
        }
        if (node instanceof ToggleButton toggle) {
            // one that chooses what is shown is no answer
            return toggle.isSelected() && String.valueOf(toggle.getId()).startsWith("/");
        }
        if (node instanceof ScrollPane pane) {
            return pane.getContent() != null && typed(pane.getContent());
        }
        return node instanceof Parent parent
                && parent.getChildrenUnmodifiable().stream().anyMatch(PromptPage::typed);
    }

    /** Whether a place of the setup is typed on this page. */
    boolean holds(String pointer) {
        return prompt.holds(pointer)
                || ids(this).stream()
                        .anyMatch(id ->
                                pointer.equals(id) || pointer.startsWith(id + "/") || id.startsWith(pointer + "/"));
    }

    /** Places that are typed on this page, as it is now. */
    List<String> places() {
        return ids(this);
    }

    /** Whether a place is one of these, in one of them, or a group that one is in; a whole step is no such group. */
    static boolean isAbout(String field, List<String> places) {
        return places.stream().anyMatch(place -> isAbout(field, place));
    }

    private static boolean isAbout(String field, String entry) {
        return field.equals(entry)
                || field.startsWith(entry + "/")
                || (!isWholeStep(field) && entry.startsWith(field + "/"));
    }

    /** Whether a place is that of a whole step, or none. */
    private static boolean isWholeStep(String field) {
        return field.lastIndexOf('/') <= 0;
    }

    /** Pointers of the places that are typed below a node. */
    private static List<String> ids(Node node) {
        List<String> ids = new ArrayList<>();
        collect(node, ids);
        return ids;
    }

    private static void collect(Node node, List<String> ids) {
        if (node.getId() != null && node.getId().startsWith("/")) {
            ids.add(node.getId());
        }
        if (node instanceof ScrollPane pane) {
            if (pane.getContent() != null) {
                collect(pane.getContent(), ids);
            }
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, ids));
        }
    }
}
