package org.evenfall.sheet;

import java.util.List;

/**
 * Everything that is printed on the sheets, as words in their order.
 *
 * @param parts sheets, each of which begins on a page of its own
 * @param foot what is at the foot of each page
 * @param language ISO 639 code of the words
 */
public record SheetContent(List<Part> parts, Foot foot, String language) {

    /** Copies the list. */
    public SheetContent {
        parts = List.copyOf(parts);
    }

    /**
     * A sheet of its own.
     *
     * @param title its title
     * @param legend what the frames mean
     * @param blocks content from the top down
     */
    public record Part(String title, String legend, List<Block> blocks) {
        /** Copies the list. */
        public Part {
            blocks = List.copyOf(blocks);
        }

        /** All boxes in their order. */
        public List<Box> boxes() {
            return blocks.stream()
                    .filter(Entries.class::isInstance)
                    .flatMap(block -> ((Entries) block).rows().stream())
                    .flatMap(row -> row.boxes().stream())
                    .toList();
        }
    }

    /**
     * The foot of each page.
     *
     * @param line which setup, which revision, which day
     * @param pagePattern page number and number of pages, with the places {0} and {1}
     */
    public record Foot(String line, String pagePattern) {
        /** The page number in words. */
        String page(int page, int pages) {
            return pagePattern.replace("{0}", Integer.toString(page)).replace("{1}", Integer.toString(pages));
        }
    }

    /** What is printed one below the other. */
    public sealed interface Block permits Notice, Checklist, Names, Entries, Choices, Plan {}

    /**
     * Sentences in a frame.
     *
     * @param heading heading
     * @param lines sentences
     */
    public record Notice(String heading, List<String> lines) implements Block {
        /** Copies the list. */
        public Notice {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Things to tick off.
     *
     * @param heading heading
     * @param lines one thing each
     */
    public record Checklist(String heading, List<String> lines) implements Block {
        /** Copies the list. */
        public Checklist {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Lines to write names on.
     *
     * @param labels whose name
     */
    public record Names(List<String> labels) implements Block {
        /** Copies the list. */
        public Names {
            labels = List.copyOf(labels);
        }
    }

    /**
     * What heads the boxes of one prompt.
     *
     * @param promptId id of the prompt
     * @param name its name
     * @param notes sentences below it
     * @param typedIn label of the small box to tick when all is typed in
     */
    public record Heading(String promptId, String name, List<String> notes, String typedIn) {
        /** Copies the list. */
        public Heading {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The boxes of one prompt.
     *
     * @param heading heading
     * @param rows boxes in the order in which they are typed
     * @param perLine most boxes in one line
     * @param unitsAbove whether units are written after the label, else after the box
     * @param asSet label of the tick next to a box that has what is set now
     * @param withNext whether it stays on one page with the block that follows
     */
    public record Entries(
            Heading heading, List<Row> rows, int perLine, boolean unitsAbove, String asSet, boolean withNext)
            implements Block {
        /** Copies the list. */
        public Entries {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Things to look at, each with an answer to tick.
     *
     * @param heading heading
     * @param first what is looked at first, by itself
     * @param others everything else
     */
    public record Choices(Heading heading, Choice first, List<Choice> others) implements Block {
        /** Copies the list. */
        public Choices {
            others = List.copyOf(others);
        }
    }

    /**
     * One thing to look at.
     *
     * @param label what it is
     * @param answers labels of its ticks
     */
    public record Choice(String label, List<String> answers) {
        /** Copies the list. */
        public Choice {
            answers = List.copyOf(answers);
        }
    }

    /**
     * Boxes next to each other.
     *
     * @param name what they have in common; may be empty
     * @param from column of the first box, from 0
     * @param boxes the boxes
     */
    public record Row(String name, int from, List<Box> boxes) {
        /** Copies the list. */
        public Row {
            boxes = List.copyOf(boxes);
        }
    }

    /**
     * A box to write in.
     *
     * @param promptId id of the prompt that asks for it
     * @param label what is written in it
     * @param unit unit as it is written after a number; may be empty
     * @param skippable whether one can go on without it
     * @param value what is known already, printed in it; may be empty
     * @param set what is set now, printed next to it with a tick for "as set"; may be empty
     * @param wide whether words are written in it, not a number
     */
    public record Box(
            String promptId, String label, String unit, boolean skippable, String value, String set, boolean wide) {
        /** The same box with what is set now, in words with its unit. */
        Box withSet(String words) {
            return new Box(promptId, label, unit, skippable, value, words, wide);
        }

        /** The label with the unit after it. */
        String labelAndUnit() {
            return unit.isEmpty() ? label : label + ", " + unit;
        }
    }

    /**
     * Trays and passes, drawn.
     *
     * @param heading heading; its notes have the distances
     * @param traysM places of the trays, negative left, m
     * @param passesM places of the passes, m
     * @param forward direction of each pass, true upwards
     * @param passLabels name of each pass
     * @param windLabel label of the box for the arrow of the wind
     */
    public record Plan(
            Heading heading,
            List<Double> traysM,
            List<Double> passesM,
            List<Boolean> forward,
            List<String> passLabels,
            String windLabel)
            implements Block {
        /** Copies the lists. */
        public Plan {
            traysM = List.copyOf(traysM);
            passesM = List.copyOf(passesM);
            forward = List.copyOf(forward);
            passLabels = List.copyOf(passLabels);
        }
    }
}
