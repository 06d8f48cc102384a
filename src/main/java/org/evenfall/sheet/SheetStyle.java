package org.evenfall.sheet;

import java.awt.Color;
import org.evenfall.page.TextStyle;
import org.evenfall.page.Typefaces.Weight;

/** Letters, lines and measures of the sheets, points. Only black and greys, since a farm's printer may have no colour. */
final class SheetStyle {

    /** Points of one millimetre. */
    static final double MM = 72 / 25.4;

    /** Margin without print on all sides. */
    static final double MARGIN = 12 * MM;

    /** Least width and height of a box to write in. */
    static final double BOX_WIDTH = 18.3 * MM;

    static final double BOX_HEIGHT = 9.1 * MM;

    /** Least width of a box for words. */
    static final double WORDS_WIDTH = 40 * MM;

    /** Side of a small box to tick. */
    static final double TICK = 2.8 * MM;

    /** Space between two blocks, and between two columns of text. */
    static final double GAP = 3 * MM;

    /** Space between two boxes next to each other. */
    static final double BOX_GAP = 2.2 * MM;

    /** Space between a box and what belongs to it. */
    static final double SMALL_GAP = 0.7 * MM;

    /** Frame of a box that is needed. */
    static final Color BLACK = Color.BLACK;

    /** Frame of a box that can be skipped, and thin lines. */
    static final Color GREY = new Color(0xA0, 0xA0, 0xA0);

    /** What is known already, lighter than what is written by hand. */
    private static final Color KNOWN = new Color(0x55, 0x55, 0x55);

    static final double FRAME = 1.1;
    static final double GREY_FRAME = 0.9;

    static final TextStyle TITLE = new TextStyle(Weight.BOLD, 18, BLACK);
    static final TextStyle HEADING = new TextStyle(Weight.BOLD, 11, BLACK);
    static final TextStyle TEXT = new TextStyle(Weight.REGULAR, 9.5, BLACK);
    static final TextStyle LABEL = new TextStyle(Weight.REGULAR, 9, BLACK);
    static final TextStyle VALUE = new TextStyle(Weight.REGULAR, 10.5, KNOWN);
    static final TextStyle SET = new TextStyle(Weight.REGULAR, 9, KNOWN);
    static final TextStyle FOOT = new TextStyle(Weight.REGULAR, 9, BLACK);

    private SheetStyle() {}
}
