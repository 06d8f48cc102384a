package org.evenfall.wizard;

import java.util.List;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;

/**
 * A window's size with that of its text.
 *
 * @param widthPx width
 * @param heightPx height
 * @param projector whether for a hall
 * @param percent size of the text
 */
record WindowSize(int widthPx, int heightPx, boolean projector, int percent) {

    static final WindowSize SMALLEST = new WindowSize(1024, 700, false, 100);
    static final WindowSize LAPTOP = new WindowSize(1366, 768, false, 100);
    static final WindowSize LARGE_TEXT = new WindowSize(1366, 768, false, 150);
    /** Screens of a hall. */
    static final List<WindowSize> HALLS = List.of(
            new WindowSize(1280, 720, true, 100),
            new WindowSize(1366, 768, true, 100),
            new WindowSize(1920, 1080, true, 100));

    /** The largest screen of a hall; larger than the one that tests have, so that a window of this size is not shown. */
    static final WindowSize LARGEST_HALL = new WindowSize(3840, 2160, true, 100);

    /** Gives it to a window; on the window's thread. */
    void set(WizardWindow window, Stage stage) {
        // shown anew: the headless screen does not like to be resized while it paints
        stage.hide();
        stage.setWidth(widthPx);
        stage.setHeight(heightPx);
        stage.show();
        window.projector(projector);
        press(window, KeyCode.DIGIT0);
        for (int step = 100; step < percent; step += 10) {
            press(window, KeyCode.PLUS);
        }
    }

    /** As a person does it: Ctrl and a key. */
    private static void press(WizardWindow window, KeyCode key) {
        Event.fireEvent(window.scene(), new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, true, false, false));
    }

    @Override
    public String toString() {
        return widthPx + "x" + heightPx + (projector ? " projector" : "")
                + (percent == 100 ? "" : " " + percent + " %");
    }
}
