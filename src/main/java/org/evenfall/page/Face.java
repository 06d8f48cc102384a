package org.evenfall.page;

/**
 * A rectangle of a sheet that is read as one face. Points, origin at the top left of the page.
 *
 * @param x left edge
 * @param y top edge
 * @param width width
 * @param height height
 */
public record Face(double x, double y, double width, double height) {

    /** Margin without print on all sides, points: 8 mm. Assumption: a laminated edge takes 5 to 7 mm. */
    public static final double MARGIN = 8 * 72 / 25.4;

    /** Diameter of the mark where a hole may be punched, points: 6 mm. */
    public static final double HOLE = 17;

    /** A face above this width has two columns of text, points. */
    private static final double WIDE = 480;

    /** Left edge of the print. */
    public double left() {
        return x + MARGIN;
    }

    /** Right edge of the print. */
    public double right() {
        return x + width - MARGIN;
    }

    /** Upper edge of the print. */
    public double top() {
        return y + MARGIN;
    }

    /** Lower edge of the print. */
    public double bottom() {
        return y + height - MARGIN;
    }

    /** Whether there is room for two columns of text. */
    public boolean wide() {
        return width > WIDE;
    }

    /** Number of text columns: 1 or 2. */
    public int columns() {
        return wide() ? 2 : 1;
    }

    /** Width of the print. */
    public double innerWidth() {
        return width - 2 * MARGIN;
    }
}
