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
        double left = height - height(brush, width, lettering);
        brush.paragraph(
                text, width / 2, left + EDGE_EM * brush.em(), wide(brush, width), lettering, TextAlignment.CENTER);
        return left;
    }

    /** Height that it takes with its free edges, px. */
    double height(Brush brush, double width, Lettering lettering) {
        int lines = brush.wrapped(text, wide(brush, width), lettering).size();
        return (lines * lettering.lineEm() + EDGE_EM + 0.5) * brush.em();
    }

    private static double wide(Brush brush, double width) {
        return width - 2 * EDGE_EM * brush.em();
    }
}
