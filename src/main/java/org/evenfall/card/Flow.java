package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Pieces of a page that fill columns from the top down, one after the other; none is ever cut. */
final class Flow {

    /** A piece that stands whole in one column. */
    interface Piece {
        double height(Pen pen, double width) throws IOException;

        void draw(Pen pen, double x, double top, double width) throws IOException;

        /** Room above it, unless it begins a column. */
        default double gap() {
            return 0;
        }

        /** Stays in one column with the piece that follows. */
        default boolean withNext() {
            return false;
        }
    }

    /**
     * Where pieces may stand.
     *
     * @param x left edge
     * @param top upper edge
     * @param width width
     * @param bottom lower edge
     */
    record Column(double x, double top, double width, double bottom) {}

    private Flow() {}

    /** Draws as many pieces as find room; returns the others, and where the last column used ends. */
    static Remainder fill(Pen pen, List<Piece> pieces, List<Column> columns) throws IOException {
        List<Piece> left = new ArrayList<>(pieces);
        double end = columns.get(0).top();
        for (Column column : columns) {
            double y = column.top();
            while (!left.isEmpty()) {
                double gap = y > column.top() ? left.get(0).gap() : 0;
                if (y + gap + needed(pen, left, column) > column.bottom()) {
                    break;
                }
                y += gap;
                left.get(0).draw(pen, column.x(), y, column.width());
                y += left.get(0).height(pen, column.width());
                left.remove(0);
            }
            end = Math.max(end, y);
        }
        return new Remainder(List.copyOf(left), end);
    }

    /**
     * What found no room.
     *
     * @param pieces pieces
     * @param end lower edge of what was drawn
     */
    record Remainder(List<Piece> pieces, double end) {}

    /** Height of what has to stay together; of the next piece alone where that is more than any column holds. */
    private static double needed(Pen pen, List<Piece> left, Column column) throws IOException {
        double needed = 0;
        for (Piece piece : left) {
            needed += (needed == 0 ? 0 : piece.gap()) + piece.height(pen, column.width());
            if (!piece.withNext()) {
                break;
            }
        }
        return needed > column.bottom() - column.top() ? left.get(0).height(pen, column.width()) : needed;
    }
}
