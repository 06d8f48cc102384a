package org.evenfall.wizard.picture;

import javafx.scene.text.TextAlignment;

/**
 * The sentence under a drawing.
 *
 * @param text the sentence, wrapped where it is too long; empty without one
 */
record Caption(String text) {

    /** Free edge on each side and over the sentence, em. */
    private static final double EDGE_EM = 0.8;

    /** Draws it along the lower edge in the colour of the text; gives the height that is left for the drawing. */
    double draw(Brush brush, double width, double height) {
        return draw(brush, width, height, brush.body());
    }

    /** The same in another lettering. */
    double draw(Brush brush, double width, double height, Lettering lettering) {
        if (text.isEmpty()) {
            return height;
        }
        double em = brush.em();
        double wide = width - 2 * EDGE_EM * em;
        double high = brush.wrapped(text, wide, lettering).size() * lettering.lineEm() * em;
        double top = height - high - 0.5 * em;
        brush.paragraph(text, width / 2, top, wide, lettering, TextAlignment.CENTER);
        return top - EDGE_EM * em;
    }
}
