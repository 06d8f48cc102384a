package org.evenfall.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Fills columns from the top down with pieces, one after the other; no piece is ever cut. */
public final class Flow {

    /** Content that is drawn whole in one column. */
    public interface Piece {
        /** Height in a column of this width, points. */
        double height(Pen pen, double width) throws IOException;

        /** Draws it from a top edge down. */
        void draw(Pen pen, double x, double top, double width) throws IOException;

        /** Space above it unless it begins a column, points. */
        default double gap() {
            return 0;
        }

        /** Whether it stays in one column with the piece that follows. */
        default boolean withNext() {
            return false;
        }
    }

    /**
     * A column to fill. Points, origin at the top left of the page.
     *
     * @param x left edge
     * @param top upper edge
     * @param width width
     * @param bottom lower edge
     */
    public record Column(double x, double top, double width, double bottom) {}

    /**
     * The result of filling columns.
     *
     * @param undrawn pieces for which there was no room
     * @param end lowest edge of what was drawn
     */
    public record Filled(List<Piece> undrawn, double end) {
        /** Copies the list. */
        public Filled {
            undrawn = List.copyOf(undrawn);
        }
    }

    private Flow() {}

    /** Draws as many pieces as fit into the columns. */
    public static Filled fill(Pen pen, List<Piece> pieces, List<Column> columns) throws IOException {
        List<Piece> left = new ArrayList<>(pieces);
        double end = columns.get(0).top();
        for (Column column : columns) {
            double y = column.top();
            while (!left.isEmpty()) {
                double gap = y > column.top() ? left.get(0).gap() : 0;
                if (y + gap + needed(pen, left, column) > column.bottom()) {
                    break;
                }
                y = draw(pen, left.remove(0), column.x(), y + gap, column.width());
            }
            end = Math.max(end, y);
        }
        return new Filled(left, end);
    }

    /** Draws pieces one below the other without gaps, whether they fit or not; gives the lower edge. */
    public static double stack(Pen pen, List<Piece> pieces, double x, double top, double width) throws IOException {
        double y = top;
        for (Piece piece : pieces) {
            y = draw(pen, piece, x, y, width);
        }
        return y;
    }

    private static double draw(Pen pen, Piece piece, double x, double top, double width) throws IOException {
        piece.draw(pen, x, top, width);
        return top + piece.height(pen, width);
    }

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
