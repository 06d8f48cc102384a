package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;

/**
 * The colours of the moment, light or dark.
 *
 * @param paper behind everything
 * @param ink lines and words that matter
 * @param soft secondary text
 * @param line thin lines that only help the eye
 * @param accent what is wanted or expected
 * @param straw the product
 * @param good in order
 * @param warn to be minded
 * @param stop not so
 */
record Palette(
        Color paper, Color ink, Color soft, Color line, Color accent, Color straw, Color good, Color warn, Color stop) {

    /** The same colour, so far see-through. */
    static Color faint(Color colour, double opacity) {
        return Color.color(colour.getRed(), colour.getGreen(), colour.getBlue(), opacity);
    }
}
