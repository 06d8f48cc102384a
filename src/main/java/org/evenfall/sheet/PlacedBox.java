package org.evenfall.sheet;

import org.evenfall.sheet.SheetContent.Box;

/**
 * A box where it was drawn. Points, origin at the top left of the page.
 *
 * @param page number of the page, from 1
 * @param box what is written in it
 * @param x left edge
 * @param top upper edge
 * @param width width
 * @param height height
 */
record PlacedBox(int page, Box box, double x, double top, double width, double height) {

    /** Is given every box as it is drawn. */
    @FunctionalInterface
    interface Drawn {
        /** A box at its place on the page that is drawn now. */
        void at(Box box, double x, double top, double width, double height);
    }
}
