package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/** Wind arrows that point both ways, since only the strength is known; the stronger the wind, the more of them. */
final class WindMark {

    private WindMark() {}

    /** Draws it into a square box; dashed where the wind is not known. */
    static void draw(Brush brush, double left, double top, double side, WindLimits.@Nullable Strength strength) {
        Color colour = colour(brush.palette(), strength);
        if (strength == null) {
            brush.dashed(left, top + side / 2, left + side, top + side / 2, colour, 1.5);
            return;
        }
        int arrows = arrows(strength);
        Marks marks = new Marks(brush);
        for (int i = 0; i < arrows; i++) {
            double y = top + side * (0.5 + 0.27 * (i - (arrows - 1) / 2.0));
            marks.arrow(left + side / 2, y, left, y, colour, 1.5);
            marks.arrow(left + side / 2, y, left + side, y, colour, 1.5);
        }
    }

    private static int arrows(WindLimits.Strength strength) {
        return switch (strength) {
            case CALM -> 1;
            case NOTE -> 2;
            case WARN -> 3;
            case STOP -> 4;
        };
    }

    /** The colour that goes with a strength. */
    static Color colour(Palette palette, WindLimits.@Nullable Strength strength) {
        if (strength == null) {
            return palette.soft();
        }
        return switch (strength) {
            case CALM -> palette.good();
            case NOTE -> palette.accent();
            case WARN -> palette.warn();
            case STOP -> palette.stop();
        };
    }
}
