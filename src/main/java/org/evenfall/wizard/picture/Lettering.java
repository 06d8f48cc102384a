package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;

/**
 * How a text is set.
 *
 * @param em size, in the picture's own text size
 * @param bold bold
 * @param colour colour
 */
record Lettering(double em, boolean bold, Color colour) {

    /** Height of a line, in the picture's own text size. */
    double lineEm() {
        return 1.25 * em;
    }

    Lettering in(Color other) {
        return new Lettering(em, bold, other);
    }

    Lettering heavy() {
        return new Lettering(em, true, colour);
    }
}
