package org.evenfall.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.page.Pen;
import org.evenfall.page.TextStyle;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Row;

/**
 * Widths of the columns in which the boxes of one prompt are placed, by what is measured of labels, units and values.
 *
 * @param nameWidth width of the names of the rows, with the space after them
 * @param widths width of each column without the space after it, points
 * @param lines columns of each line, first and one past the last
 */
record Columns(double nameWidth, List<Double> widths, List<Span> lines) {

    /** Labels are wrapped to so many lines where a column may grow. */
    private static final int LABEL_LINES = 2;

    private static final double GROW = 2 * SheetStyle.MM;

    /** A column grows by so much where its label is then on one line. */
    private static final double GROW_FOR_ONE_LINE = 4 * SheetStyle.MM;

    /** Space on both sides of a value in its box. */
    private static final double INSIDE = 2 * SheetStyle.MM;

    /**
     * Columns of one line.
     *
     * @param from first column
     * @param to one past the last
     */
    record Span(int from, int to) {}

    static Columns of(Pen pen, Entries entries, double width) throws IOException {
        double name = 0;
        for (Row row : entries.rows()) {
            name = Math.max(name, pen.width(SheetStyle.LABEL, row.name()));
        }
        double names = name == 0 ? 0 : name + SheetStyle.GAP;
        List<Double> widths = new ArrayList<>();
        for (Row row : entries.rows()) {
            for (int i = 0; i < row.boxes().size(); i++) {
                int column = row.from() + i;
                while (widths.size() <= column) {
                    widths.add(0.0);
                }
                double needed = needed(pen, row.boxes().get(i), entries.unitsAbove(), entries.asSet(), width - names);
                widths.set(column, Math.max(widths.get(column), needed));
            }
        }
        return new Columns(names, List.copyOf(widths), lines(widths, width - names, entries.perLine()));
    }

    private static double needed(Pen pen, Box box, boolean unitsAbove, String asSet, double most) throws IOException {
        double unit = unitsAbove ? 0 : asideWidth(pen, box, asSet);
        double value = pen.width(SheetStyle.VALUE, box.value()) + INSIDE;
        double least = Math.max(box.wide() ? SheetStyle.WORDS_WIDTH : SheetStyle.BOX_WIDTH, value) + unit;
        double width = Math.min(least, most);
        String label = unitsAbove ? box.labelAndUnit() : box.label();
        while (width + GROW <= most && crowded(pen, width, label)) {
            width += GROW;
        }
        double oneLine = pen.width(SheetStyle.LABEL, label) + 0.1;
        boolean little = oneLine > width && oneLine <= Math.min(most, width + GROW_FOR_ONE_LINE);
        return little ? oneLine : width;
    }

    /** Whether a label needs more lines than it should, or a word of it is broken. */
    private static boolean crowded(Pen pen, double width, String label) throws IOException {
        if (pen.wrap(SheetStyle.LABEL, width, label).size() > LABEL_LINES) {
            return true;
        }
        return longestWord(pen, SheetStyle.LABEL, label) > width;
    }

    private static double longestWord(Pen pen, TextStyle style, String text) throws IOException {
        double longest = 0;
        for (String word : text.strip().split("\\s+", -1)) {
            longest = Math.max(longest, pen.width(style, word));
        }
        return longest;
    }

    /** Width of what is next to a box, with the space before it: its unit, or what is set now above a tick. */
    static double asideWidth(Pen pen, Box box, String asSet) throws IOException {
        if (!box.set().isEmpty()) {
            double tick = SheetStyle.TICK + SheetStyle.SMALL_GAP + pen.width(SheetStyle.LABEL, asSet);
            return Math.max(pen.width(SheetStyle.SET, box.set()), tick) + 1 + SheetStyle.SMALL_GAP;
        }
        return box.unit().isEmpty() ? 0 : pen.width(SheetStyle.LABEL, box.unit()) + SheetStyle.SMALL_GAP;
    }

    private static List<Span> lines(List<Double> widths, double room, int perLine) {
        List<Span> lines = new ArrayList<>();
        int from = 0;
        double used = 0;
        for (int i = 0; i < widths.size(); i++) {
            if (i > from && (used + widths.get(i) > room || i - from == perLine)) {
                lines.add(new Span(from, i));
                from = i;
                used = 0;
            }
            used += widths.get(i) + SheetStyle.BOX_GAP;
        }
        lines.add(new Span(from, widths.size()));
        return List.copyOf(lines);
    }

    /** Left edge of a column in its line, from the left edge of the row. */
    double left(int column, Span line) {
        double left = nameWidth;
        for (int i = line.from(); i < column; i++) {
            left += widths.get(i) + SheetStyle.BOX_GAP;
        }
        return left;
    }
}
