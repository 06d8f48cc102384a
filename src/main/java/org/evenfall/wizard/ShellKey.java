package org.evenfall.wizard;

import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The keys of the frame: Alt with an arrow or a digit changes the step, Ctrl+Z undoes, Ctrl+Y or
 * with Shift redoes, F1 helps, Ctrl+K goes on without, Ctrl+H hides names and prices or shows them. */
enum ShellKey {
    NEXT,
    BACK,
    STEP,
    UNDO,
    REDO,
    HELP,
    SKIP,
    HIDE,
    NONE;

    /** What a key pressed asks for. */
    static ShellKey of(KeyEvent event) {
        if (event.isAltDown()) {
            if (event.getCode() == KeyCode.RIGHT) {
                return NEXT;
            }
            if (event.getCode() == KeyCode.LEFT) {
                return BACK;
            }
            return event.getCode().isDigitKey() ? STEP : NONE;
        }
        if (event.getCode() == KeyCode.F1) {
            return HELP;
        }
        if (event.isShortcutDown() && event.getCode() == KeyCode.K) {
            return SKIP;
        }
        if (event.isShortcutDown() && event.getCode() == KeyCode.H) {
            return HIDE;
        }
        if (event.isShortcutDown() && event.getCode() == KeyCode.Z) {
            return event.isShiftDown() ? REDO : UNDO;
        }
        if (event.isShortcutDown() && event.getCode() == KeyCode.Y) {
            return REDO;
        }
        return NONE;
    }

    /** The digit of a key. */
    static int digit(KeyEvent event) {
        return event.getCode().getCode() - KeyCode.DIGIT0.getCode();
    }
}
