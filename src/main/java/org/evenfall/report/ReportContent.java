package org.evenfall.report;

import java.util.List;

/**
 * Everything that is printed in a report, as words in their order.
 *
 * @param title its title
 * @param blocks content from the top down
 * @param foot the line at the foot of each page
 * @param pagePattern page number and number of pages, with the places {0} and {1}
 * @param language ISO 639 code of the words
 */
public record ReportContent(String title, List<Block> blocks, String foot, String pagePattern, String language) {

    /** Copies the list. */
    public ReportContent {
        blocks = List.copyOf(blocks);
    }

    /** The page number in words. */
    String page(int page, int pages) {
        return pagePattern.replace("{0}", Integer.toString(page)).replace("{1}", Integer.toString(pages));
    }

    /** What is printed one below the other. */
    public sealed interface Block permits Heading, Notice, Pair, Text, Item, Table, Chart {}

    /** How high a heading is in the order of headings. */
    public enum Level {
        /** Title of the report. */
        TITLE,
        /** A step, or a list for all steps. */
        SECTION,
        /** A part of a step. */
        PART
    }

    /**
     * A heading, which stays with what follows.
     *
     * @param level its level
     * @param text its words
     */
    public record Heading(Level level, String text) implements Block {}

    /**
     * Sentences in a frame.
     *
     * @param lines sentences
     */
    public record Notice(List<String> lines) implements Block {
        /** Copies the list. */
        public Notice {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A label with its value next to it.
     *
     * @param label what it is
     * @param value figure, word or sentence
     */
    public record Pair(String label, String value) implements Block {}

    /**
     * A paragraph.
     *
     * @param text one or more sentences
     */
    public record Text(String text) implements Block {}

    /**
     * One of a list.
     *
     * @param number its number; empty for a bullet
     * @param text one or more sentences
     */
    public record Item(String number, String text) implements Block {}

    /**
     * A table.
     *
     * @param rows rows of as many cells each, the first has the headings
     */
    public record Table(List<List<String>> rows) implements Block {
        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException without a row, or for rows of different length
         */
        public Table {
            rows = List.copyOf(rows);
            if (rows.isEmpty()) {
                throw new IllegalArgumentException("rows must not be empty");
            }
            int columns = rows.get(0).size();
            if (rows.stream().anyMatch(row -> row.size() != columns)) {
                throw new IllegalArgumentException("rows must be of one length: " + rows);
            }
        }
    }

    /**
     * The trays of a test as bars at their places.
     *
     * @param trays the trays from left to right
     * @param bands distance of the dashed lines from the mean, %
     * @param axis what is written below the axis
     * @param inWords the same in words, for a screen reader
     */
    public record Chart(List<Tray> trays, List<Double> bands, String axis, String inWords) implements Block {
        /**
         * Copies the lists.
         *
         * @throws IllegalArgumentException without a tray
         */
        public Chart {
            trays = List.copyOf(trays);
            bands = List.copyOf(bands);
            if (trays.isEmpty()) {
                throw new IllegalArgumentException("trays must not be empty");
            }
        }
    }

    /**
     * A tray.
     *
     * @param placeM its place across the tramline, m, negative left
     * @param percent its catch, % of the mean
     * @param label its place in words
     */
    public record Tray(double placeM, double percent, String label) {}
}
