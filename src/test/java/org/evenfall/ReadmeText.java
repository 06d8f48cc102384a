package org.evenfall;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page in Markdown as one text of its paragraphs, list items and rows, and the parts of it that claim something:
 * sentences and table cells. Code blocks, headings, pictures, the heads of tables and whole sections may be left out.
 *
 * @param text all that is kept, blocks apart by one blank, line breaks as blanks
 * @param parts places in it
 */
record ReadmeText(String text, List<Part> parts) {

    private static final Pattern FENCE = Pattern.compile("(?ms)^```.*?^```$");
    private static final Pattern SECTION = Pattern.compile("(?m)^(?=#+ )");
    /** A row and the line of dashes under it are the head of a table. */
    private static final Pattern TABLE_HEAD = Pattern.compile("(?m)^\\|.*\\|\\n\\|[-|: ]+\\|$");

    private static final Pattern PICTURE = Pattern.compile("(?m)^!\\[.*$");
    private static final Pattern BLOCK_END = Pattern.compile("\\n\\n+|\\n(?=\\* |\\|)");
    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.:?!]|[.:?!][)*”])\\s+(?=[*(“`]*\\p{Lu}|`)");
    private static final Pattern CELL_END = Pattern.compile("(?<!\\\\)\\|");

    /**
     * One sentence or cell.
     *
     * @param start place of its first letter in the text
     * @param end place behind its last letter
     */
    record Part(int start, int end) {}

    /** Splits a page, without the sections of these headings. */
    static ReadmeText of(String page, List<String> sectionsLeftOut) {
        StringBuilder text = new StringBuilder();
        List<Part> parts = new ArrayList<>();
        for (String section : SECTION.split(FENCE.matcher(page).replaceAll("\n"))) {
            String first = section.lines().findFirst().orElse("");
            String heading = first.startsWith("#") ? first : "";
            if (sectionsLeftOut.contains(heading.replaceFirst("^#+ ", "").strip())) {
                continue;
            }
            String body = section.substring(heading.length());
            body = TABLE_HEAD.matcher(body).replaceAll("\n");
            body = PICTURE.matcher(body).replaceAll("\n");
            for (String block : BLOCK_END.split(body)) {
                String line = block.strip().replaceAll("\\s+", " ");
                if (!line.isEmpty()) {
                    add(line, text.length(), parts);
                    text.append(line).append(' ');
                }
            }
        }
        return new ReadmeText(text.toString(), List.copyOf(parts));
    }

    private static void add(String block, int at, List<Part> parts) {
        Matcher end = (block.startsWith("|") ? CELL_END : SENTENCE_END).matcher(block);
        int from = 0;
        while (end.find()) {
            keep(block, from, end.start(), at, parts);
            from = end.end();
        }
        keep(block, from, block.length(), at, parts);
    }

    private static void keep(String block, int from, int to, int at, List<Part> parts) {
        if (block.substring(from, to).chars().anyMatch(Character::isLetterOrDigit)) {
            parts.add(new Part(at + from, at + to));
        }
    }

    /** The words of a part. */
    String of(Part part) {
        return text.substring(part.start(), part.end()).strip();
    }
}
