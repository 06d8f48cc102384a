package org.evenfall.wizard;

import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.evenfall.store.Preferences;

/** Where the window is and how large: as it was left, where a screen still shows that; else sensible on any screen. */
final class WindowPlace {

    private static final double FIRST_WIDTH = 1366;
    private static final double FIRST_HEIGHT = 860;

    /** So much of the window must be on a screen, px. */
    private static final double LEAST_SEEN = 200;

    private WindowPlace() {}

    /** Puts a window that has no size yet to its place. */
    static void put(Stage stage, Preferences kept) {
        if (!Double.isNaN(stage.getWidth())) {
            return;
        }
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        Double x = kept.x();
        Double y = kept.y();
        Double width = kept.width();
        Double height = kept.height();
        boolean again = false;
        if (x != null && y != null && width != null && height != null && isSeen(x, y, width)) {
            again = true;
            stage.setX(x);
            stage.setY(y);
            stage.setWidth(width);
            stage.setHeight(height);
        }
        if (kept.maximised() || (!again && (screen.getWidth() <= FIRST_WIDTH || screen.getHeight() <= FIRST_HEIGHT))) {
            stage.setMaximized(true);
        } else if (!again) {
            stage.setWidth(FIRST_WIDTH);
            stage.setHeight(FIRST_HEIGHT);
        }
    }

    private static boolean isSeen(double x, double y, double width) {
        return !Screen.getScreensForRectangle(x + (width - LEAST_SEEN) / 2, y, LEAST_SEEN, LEAST_SEEN / 2)
                .isEmpty();
    }

    /** How a window is left; a maximised or full one keeps the place and size it had before. */
    static Preferences of(Stage stage, boolean dark, int textPercent, Preferences before) {
        boolean filled = stage.isMaximized() || stage.isFullScreen();
        return filled
                ? new Preferences(
                        before.x(),
                        before.y(),
                        before.width(),
                        before.height(),
                        stage.isMaximized(),
                        dark,
                        textPercent,
                        before.units())
                : new Preferences(
                        stage.getX(),
                        stage.getY(),
                        stage.getWidth(),
                        stage.getHeight(),
                        false,
                        dark,
                        textPercent,
                        before.units());
    }
}
