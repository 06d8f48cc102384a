package org.evenfall.store;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import org.evenfall.setup.entry.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * How the person likes the window: kept for the next time, not part of any setup.
 *
 * @param x left edge, px; null with {@code y}, {@code width} and {@code height} before the first time
 * @param y upper edge, px
 * @param width px
 * @param height px
 * @param maximised the window fills the screen
 * @param dark the dark view
 * @param textPercent size of the text, % of the usual size
 * @param units units that a new setup begins with
 */
@JsonIgnoreProperties(ignoreUnknown = true)
public record Preferences(
        @Nullable Double x,
        @Nullable Double y,
        @Nullable Double width,
        @Nullable Double height,
        boolean maximised,
        boolean dark,
        int textPercent,
        UnitSystem units) {

    /** Size of the text that is not changed, %. */
    public static final int USUAL_PERCENT = 100;

    /** Smallest size of the text, %. */
    public static final int LEAST_PERCENT = 80;

    /** Largest size of the text, %. */
    public static final int MOST_PERCENT = 200;

    /** Before the first time. */
    public static final Preferences FIRST =
            new Preferences(null, null, null, null, false, false, USUAL_PERCENT, UnitSystem.UNANSWERED);

    /** The same with other units. */
    public Preferences withUnits(UnitSystem other) {
        return new Preferences(x, y, width, height, maximised, dark, textPercent, other);
    }

    /** Keeps the size of the text within its limits, so that a changed file makes no window that cannot be read. */
    public Preferences {
        units = units == null ? UnitSystem.UNANSWERED : units;
        textPercent = textPercent == 0 ? USUAL_PERCENT : Math.max(LEAST_PERCENT, Math.min(MOST_PERCENT, textPercent));
    }
}
