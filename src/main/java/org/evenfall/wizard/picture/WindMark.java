package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;
import org.evenfall.trays.WindLimits;
import org.jspecify.annotations.Nullable;

/** A wind arrow that points both ways, since only the strength is known; the stronger the wind, the thicker it is. */
final class WindMark {

    private WindMark() {}

    /** Draws it into a square box; dashed where the wind is not known. */
    static void draw(Brush brush, double left, double top, double side, WindLimits.@Nullable Strength strength) {
        double y = top + side / 2;
        Color colour = colour(brush.palette(), strength);
        brush.ring(left + side / 2, y, side / 2, side / 2, brush.palette().line(), 1.5);
        if (strength == null) {
            brush.dashed(left + 0.1 * side, y, left + 0.9 * side, y, colour, 1.5);
            return;
        }
        double thick = 1.5 + 1.2 * strength.ordinal();
        Marks marks = new Marks(brush);
        marks.arrow(left + side / 2, y, left + 0.03 * side, y, colour, thick);
        marks.arrow(left + side / 2, y, left + 0.97 * side, y, colour, thick);
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
