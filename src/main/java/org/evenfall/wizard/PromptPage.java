package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.SetupModel;
import org.jspecify.annotations.Nullable;

/**
 * The page of a prompt: its name and question, how or why, one line of caution, the entries, the way on without them. What
 * is on it is made when it is first needed, so that the window need not wait for pages that nobody sees yet.
 */
final class PromptPage extends VBox {

    /** With the number of the row and the button that removes it. */
    private static final int WIDE_COLUMNS = 5;

    private final SetupModel model;
    private final Sentences words;
    private final Step step;
    private final Prompt prompt;
    private Lazy<Content> content = new Lazy<>(this::fill);
    private @Nullable DroppedPage dropped;
    private boolean hall;

    /**
     * What is on the page.
     *
     * @param form ends with the page
     * @param always heading, entries and the way on without them
     * @param how put in and taken out as the window has room, as is the caution
     */
    private record Content(Form form, List<Node> always, Label how, Optional<Node> caution) {}

    /** @param model the setup, for what is skipped */
    PromptPage(SetupModel model, Sentences words, Step step, Prompt prompt) {
        this.model = model;
        this.words = words;
        this.step = step;
        this.prompt = prompt;
        getStyleClass().add("page");
    }

    /** Makes what is on the page, where that is not made yet; whether it was made now. */
    boolean make() {
        boolean now = content.ifMade().isEmpty();
        content.get();
        return now;
    }

    /** Makes what is on the page where nothing is known of it yet; whether it was made now. */
    boolean makeUnlessKnown() {
        return dropped == null && make();
    }

    /**
     * Drops what is on the page, which would take memory while it is not shown. It is made again as soon as it is needed; until
     * then the page remembers what was typed on it.
     */
    void drop() {
        Content made = content.ifMade().orElse(null);
        if (made == null) {
            return;
        }
        DroppedPage known = new DroppedPage(model.setup(), places(), typed());
        if (prompt.end()) {
            dropped = known;
            made.form().end();
            getChildren().removeAll(made.always());
            getChildren().remove(made.how());
            made.caution().ifPresent(getChildren()::remove);
            content = new Lazy<>(this::fill);
        }
    }

    /** What is known of the page while its content is dropped; empty where the page has to be made to know it. */
    private Optional<DroppedPage> known() {
        DroppedPage known = dropped;
        return content.ifMade().isEmpty() && known != null && known.isOf(model.setup())
                ? Optional.of(known)
                : Optional.empty();
    }

    private Content fill() {
        String key = key();
        Label name = new Label(prompt.id());
        name.getStyleClass().add("prompt-name");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label question = new Label(words.text(key + ".question"));
        question.getStyleClass().add("question");
        question.setWrapText(true);
        HBox heading = new HBox(name, question);
        heading.getStyleClass().add("heading");
        Label how = new Label(how());
        how.getStyleClass().add("why");
        how.setWrapText(true);
        Optional<Node> caution = prompt.mayHurt()
                ? Optional.of(caution(words.text("step." + step.name().toLowerCase(Locale.ROOT) + ".cautionLine")))
                : Optional.empty();
        Node entries = prompt.entries();
        entries.getStyleClass().add("entries");
        // the picture or the findings may be here already, at the end
        getChildren().addAll(0, List.of(heading, entries));
        Form form = new Form(model, words);
        List<Node> always = new ArrayList<>(List.of(heading, entries));
        Content made = new Content(form, always, how, caution);
        explain(made);
        if (words.has(key + ".without")) {
            SkipLine skip = new SkipLine(form, prompt.id());
            getChildren().add(getChildren().indexOf(entries) + 1, skip);
            always.add(skip);
            form.follow(() -> offer(skip));
        }
        return made;
    }

    private String key() {
        return "prompt." + prompt.id();
    }

    /** Going on without is offered while nothing is typed here. */
    private void offer(SkipLine skip) {
        boolean typed = PageEntries.typed(this);
        skip.setVisible(!typed);
        skip.setManaged(!typed);
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
    void inHall(boolean now) {
        hall = now;
        content.ifMade().ifPresent(this::explain);
    }

    private void explain(Content made) {
        if (prompt.alone() && getChildren().contains(made.how())) {
            return;
        }
        getChildren().remove(made.how());
        made.caution().ifPresent(getChildren()::remove);
        if (!hall || prompt.alone()) {
            made.caution().ifPresent(caution -> getChildren().add(1, caution));
            getChildren().add(1, made.how());
        }
    }

    /** Whether it has a table that needs the room of its picture where letters are large. */
    boolean isWide() {
        make();
        return lookupAll(".rows").stream()
                .anyMatch(table -> table instanceof GridPane grid && grid.getColumnCount() >= WIDE_COLUMNS);
    }

    /** How or why, in one sentence. */
    String how() {
        return words.text(key() + ".how");
    }

    /** The one line of caution of a prompt that may hurt. */
    Optional<Node> caution() {
        return content.get().caution();
    }

    Step step() {
        return step;
    }

    Prompt prompt() {
        return prompt;
    }

    /** Whether something is typed or chosen here, or there is nothing to type, or the prompt knows better. */
    boolean begun() {
        return prompt.answered().orElseGet(() -> places().isEmpty() || typed());
    }

    /** Whether something is typed or chosen here. */
    boolean typed() {
        Optional<DroppedPage> known = known();
        if (known.isPresent()) {
            return known.get().typed();
        }
        make();
        return PageEntries.typed(this);
    }

    /** Whether a place of the setup is typed on this page. */
    boolean holds(String pointer) {
        return prompt.holds(pointer)
                || places().stream()
                        .anyMatch(id ->
                                pointer.equals(id) || pointer.startsWith(id + "/") || id.startsWith(pointer + "/"));
    }

    /** Places that are typed on this page, as it is now. */
    List<String> places() {
        Optional<DroppedPage> known = known();
        if (known.isPresent()) {
            return known.get().places();
        }
        make();
        return PageEntries.places(this);
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
}
