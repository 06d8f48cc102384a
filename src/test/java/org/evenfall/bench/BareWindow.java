package org.evenfall.bench;

import java.util.List;
import java.util.stream.IntStream;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** Windows with nothing of the program, and what is done to any window; all on the thread of the windows. */
public final class BareWindow {

    /** Size of every window that is measured, px. */
    public static final double WIDTH = 1366;

    /** Size of every window that is measured, px. */
    public static final double HEIGHT = 768;

    private BareWindow() {}

    /** Shows two panes of so many labels in turn, in a window of this stage. */
    public static Work swapping(Stage stage, int labels) {
        List<VBox> panes = List.of(pane("left", labels), pane("right", labels));
        BorderPane root = new BorderPane(panes.get(0));
        show(stage, root);
        return () -> {
            root.setCenter(panes.get(root.getCenter().equals(panes.get(0)) ? 1 : 0));
            return arranged(stage.getScene());
        };
    }

    private static VBox pane(String word, int labels) {
        return new VBox(IntStream.range(0, labels)
                .mapToObj(i -> new Label(word + " " + i))
                .toArray(Node[]::new));
    }

    /** Types over the last digit of a text field, in a window of this stage. */
    public static Work typing(Stage stage) {
        TextField field = new TextField("16.4");
        show(stage, new BorderPane(field));
        field.requestFocus();
        return overDigit(stage.getScene(), field);
    }

    /** Types another digit over the fourth letter of the field that has the keyboard, until the window is laid out. */
    public static Work overDigit(Scene scene, TextField field) {
        return () -> {
            field.selectRange(3, 4);
            String digit = field.getSelectedText().equals("4") ? "5" : "4";
            fire(scene, KeyEvent.KEY_PRESSED, KeyEvent.CHAR_UNDEFINED);
            fire(scene, KeyEvent.KEY_TYPED, digit);
            fire(scene, KeyEvent.KEY_RELEASED, KeyEvent.CHAR_UNDEFINED);
            arranged(scene);
            if (!field.getText(3, 4).equals(digit)) {
                throw new IllegalStateException("not typed: " + field.getText());
            }
            return field.getText();
        };
    }

    private static void fire(Scene scene, EventType<KeyEvent> kind, String letter) {
        Event.fireEvent(
                scene.getFocusOwner(), new KeyEvent(kind, letter, "", KeyCode.UNDEFINED, false, false, false, false));
    }

    /** The window, styled and laid out as before a frame is drawn. */
    public static Object arranged(Scene scene) {
        do {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        } while (scene.getRoot().isNeedsLayout());
        return scene;
    }

    private static void show(Stage stage, BorderPane root) {
        stage.setScene(new Scene(root, WIDTH, HEIGHT));
        stage.show();
    }
}
