package org.evenfall.page;

import java.awt.Color;
import org.evenfall.page.Typefaces.Weight;

/**
 * How a text is set.
 *
 * @param weight weight of the typeface
 * @param size font size, points
 * @param colour colour
 */
public record TextStyle(Weight weight, double size, Color colour) {

    /** Smallest font size of what is read while driving, points. Assumption: legible at arm's length in a moving cab. */
    public static final double SMALLEST = 14;

    /** Running text. */
    public static final TextStyle BODY = new TextStyle(Weight.REGULAR, SMALLEST, Colours.INK);

    /** Running text that must be noticed. */
    public static final TextStyle STRONG = new TextStyle(Weight.BOLD, SMALLEST, Colours.INK);

    /** Heading of a section. */
    public static final TextStyle HEADING = new TextStyle(Weight.BOLD, SMALLEST, Colours.ACCENT);

    /** Title of the document. */
    public static final TextStyle TITLE = new TextStyle(Weight.BOLD, 20, Colours.ACCENT);

    /** Line distance divided by font size. */
    private static final double LEADING = 1.12;

    /** Distance from the baseline to the lower edge of its line, divided by font size. */
    private static final double DESCENT = 0.25;

    /** Distance of two baselines, points. */
    public double lineHeight() {
        return size * LEADING;
    }

    /** Distance from a baseline to the lower edge of its line, points. */
    double descent() {
        return size * DESCENT;
    }

    /** The same text in another size, points. */
    public TextStyle sized(double points) {
        return new TextStyle(weight, points, colour);
    }

    /** The same text in another colour. */
    public TextStyle in(Color other) {
        return new TextStyle(weight, size, other);
    }
}
