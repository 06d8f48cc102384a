package org.evenfall.card;

import java.util.List;
import org.evenfall.setup.entry.Paper;

/**
 * Everything that is printed, already as words and values with their units, in reading order.
 *
 * @param sheet the sheet
 * @param heading title and the lines under it
 * @param figures what the driver sets, in the order in which it is set
 * @param warnings open warnings and remarks
 * @param proof what was measured
 * @param stops when to stop and measure again
 * @param cautions cautions
 * @param day what makes a day good or bad to spread
 * @param signature in full what is too long for the front, who measured, who signs, when, revision, code of the key
 * @param code content of the QR code
 * @param foot boxes for the pen and the last line
 */
public record CardContent(
        Sheet sheet,
        Heading heading,
        List<Figure> figures,
        List<String> warnings,
        Proof proof,
        Section stops,
        Section cautions,
        Day day,
        List<String> signature,
        Code code,
        Foot foot) {

    /** Copies the lists. */
    public CardContent {
        figures = List.copyOf(figures);
        warnings = List.copyOf(warnings);
        signature = List.copyOf(signature);
    }

    /**
     * The sheet.
     *
     * @param paper size of the paper
     * @param language ISO 639 code of the language of the words
     * @param findingOnly not a card: a one-page finding
     */
    public record Sheet(Paper paper, String language, boolean findingOnly) {
        /** Whether front and back may be on one side. */
        boolean isLarge() {
            return paper == Paper.A4 || paper == Paper.LETTER;
        }
    }

    /**
     * Title and the lines under it.
     *
     * @param title name of the product
     * @param lines how to recognise the product, and the job
     * @param unevenness that the field is not even enough, large and above all else, then the reason; empty where it is
     *     even enough
     */
    public record Heading(String title, List<String> lines, List<String> unevenness) {
        /** Copies the lists. */
        public Heading {
            unevenness = List.copyOf(unevenness);
            lines = List.copyOf(lines);
        }
    }

    /**
     * One large value.
     *
     * @param label what it is
     * @param value the value with its unit
     * @param withNext whether it is in one row with the next one
     */
    public record Figure(String label, String value, boolean withNext) {
        /** A value that may end a row. */
        public Figure(String label, String value) {
            this(label, value, false);
        }
    }

    /**
     * What was measured.
     *
     * @param title heading
     * @param bars each tray, % of the mean, from left to right; empty without a tray test
     * @param barsInWords the same in words, for a screen reader
     * @param lines CV with its interval, bucket mass with its band, bag
     */
    public record Proof(String title, List<Double> bars, String barsInWords, List<String> lines) {
        /** Copies the lists. */
        public Proof {
            bars = List.copyOf(bars);
            lines = List.copyOf(lines);
        }
    }

    /**
     * A list with a heading.
     *
     * @param title heading
     * @param lines items; no heading is printed when there are none
     */
    public record Section(String title, List<String> lines) {
        /** Copies the list. */
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /**
     * What makes a day good or bad to spread.
     *
     * @param title heading
     * @param lines the lines; empty on a finding
     * @param elsewhere where to read them, printed instead where there is no room
     */
    public record Day(String title, List<String> lines, String elsewhere) {
        /** Copies the list. */
        public Day {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Content of the QR code.
     *
     * @param text date, revision and settings as lines of text; empty for no code
     * @param inWords what the code holds, for a screen reader
     */
    public record Code(String text, String inWords) {}

    /**
     * The foot of the back.
     *
     * @param penLabels labels of the boxes for the pen
     * @param line last line
     */
    public record Foot(List<String> penLabels, String line) {
        /** Copies the list. */
        public Foot {
            penLabels = List.copyOf(penLabels);
        }
    }
}
