package org.evenfall.card;

/**
 * A rectangle of the sheet that is read as one face, in points from the top left of the page.
 *
 * @param x left edge
 * @param y top edge
 * @param width width
 * @param height height
 */
record Face(double x, double y, double width, double height) {

    /** Free of print all round: 8 mm, so that a laminated edge cuts nothing. */
    static final double MARGIN = 8 * 72 / 25.4;

    /** Diameter of the mark where a hole may be punched. */
    static final double HOLE = 17;

    double left() {
        return x + MARGIN;
    }

    double right() {
        return x + width - MARGIN;
    }

    double top() {
        return y + MARGIN;
    }

    double bottom() {
        return y + height - MARGIN;
    }

    boolean wide() {
        return width > 480;
    }

    /** Columns of its text. */
    int columns() {
        return wide() ? 2 : 1;
    }

    double innerWidth() {
        return width - 2 * MARGIN;
    }
}
