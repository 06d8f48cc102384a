package org.evenfall.wizard.picture;

import javafx.scene.text.TextAlignment;

/**
 * The source of what a picture shows, in small letters along its lower edge, where there is room.
 *
 * @param text the line, wrapped where it is too long; empty without a source
 */
record SourceNote(String text) {

    /** Free edge on each side, em. */
    private static final double EDGE_EM = 0.4;

    /** Assumption: of a picture that is too low for it the drawing matters more; the page has the source as well. */
    private static final double MOST_SHARE = 0.2;

    private static double wide(Brush brush, double width) {
        return width - 2 * EDGE_EM * brush.em();
    }

    /** Height that the line takes, px; none without a text. */
    private double height(Brush brush, double width) {
        return text.isEmpty()
                ? 0
                : brush.wrapped(text, wide(brush, width), brush.note()).size()
                        * brush.note().lineEm()
                        * brush.em();
    }

    /** Draws it above the lower edge, unless it takes more than its share; gives the height that is left for the picture. */
    double draw(Brush brush, double width, double height) {
        double left = height - height(brush, width);
        if (left < height * (1 - MOST_SHARE)) {
            return height;
        }
        if (!text.isEmpty()) {
            brush.paragraph(text, width / 2, left, wide(brush, width), brush.note(), TextAlignment.CENTER);
        }
        return left;
    }
}
