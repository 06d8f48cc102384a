package org.evenfall.wizard;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.wizard.form.Keyboard;

/** The foot of the window: what the step means, a notice, undo and the way to the steps before and after. */
final class Foot extends HBox {

    private final Sentences words;
    private final Label meaning = new Label();
    private final Label notice = new Label();
    private final Label hidden = new Label();
    private final Button undo;
    private final Button help;
    private final Button back;
    private final Button next;

    Foot(Sentences words, Runnable undoing, Runnable helping, Runnable goingBack, Runnable goingOn) {
        this.words = words;
        undo = button("shell.undo", undoing);
        undo.getStyleClass().add("quiet");
        undo.setFocusTraversable(false);
        help = button("shell.help", helping);
        help.getStyleClass().add("quiet");
        help.setFocusTraversable(false);
        back = button("shell.back", goingBack);
        next = button("shell.next", goingOn);
        next.getStyleClass().add("primary");
        meaning.setWrapText(true);
        meaning.getStyleClass().add("meaning");
        notice.setWrapText(true);
        notice.getStyleClass().add("notice");
        notice.setManaged(false);
        hidden.setText(words.text("shell.namesHidden"));
        hidden.setWrapText(true);
        hidden.getStyleClass().add("notice");
        showHidden(false);
        VBox sentences = new VBox(meaning, notice, hidden);
        sentences.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(sentences, Priority.ALWAYS);
        getChildren().setAll(sentences, undo, help, back, next);
        setAlignment(Pos.CENTER_LEFT);
        getStyleClass().add("foot");
    }

    private Button button(String key, Runnable action) {
        Button button = new Button(words.text(key));
        button.setId(key);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** What the step in front means, and which buttons do something. */
    void update(String sentence, boolean canUndo, boolean canGoBack, boolean canGoOn) {
        meaning.setText(sentence);
        undo.setDisable(!canUndo);
        back.setDisable(!canGoBack);
        next.setDisable(!canGoOn);
    }

    /** The way on leads to the next prompt, or back to one of this id. */
    void nameWayOn(String back) {
        next.setText(back.isEmpty() ? words.text("shell.next") : words.text("shell.backTo", Arg.text(back)));
    }

    /** Whether there is a way on and back from here; on the first page there is none. */
    void showWays(boolean shown) {
        for (Node node : List.of(meaning, help, back, next)) {
            node.setVisible(shown);
            node.setManaged(shown);
        }
    }

    /** Puts the keyboard on the button that goes on. */
    void focusNext() {
        Keyboard.to(next);
    }

    /** A sentence below the meaning; an empty one takes no room. */
    void showNotice(String sentence) {
        notice.setText(sentence);
        notice.setManaged(!sentence.isEmpty());
        notice.setVisible(!sentence.isEmpty());
    }

    /** Says that names and prices are hidden, and how to show them. */
    void showHidden(boolean shown) {
        hidden.setManaged(shown);
        hidden.setVisible(shown);
    }

    /** Size of the window's plain text, px. */
    double fontSize() {
        return notice.getFont().getSize();
    }
}
