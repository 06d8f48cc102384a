package org.evenfall.wizard;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The lines of walk.txt, whose first lines say what they mean. */
final class PaperRecord {

    private static final Pattern ENTRY = Pattern.compile("(choose |pick \\d )?(/\\S+(?: \\S+)*?) = ?(.*)");

    private PaperRecord() {}

    /** What is done next. */
    sealed interface Line {}

    /** The prompt that must be in front. */
    record At(String prompt) implements Line {}

    /**
     * A value at a place.
     *
     * @param key what chooses it: a blank for Space, or a digit; empty where it is typed
     */
    record Entry(String pointer, String value, String key) implements Line {}

    /** A single key, as "alt+Right". */
    record Key(String name) implements Line {}

    /** All lines. */
    static List<Line> lines() throws IOException {
        try (InputStream file = Objects.requireNonNull(PaperRecord.class.getResourceAsStream("walk.txt"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(PaperRecord::line)
                    .toList();
        }
    }

    private static Line line(String line) {
        Matcher entry = ENTRY.matcher(line);
        if (entry.matches()) {
            String how = entry.group(1) == null ? "" : entry.group(1).strip();
            String key = how.isEmpty() ? "" : how.equals("choose") ? " " : how.substring(how.length() - 1);
            return new Entry(entry.group(2), entry.group(3), key);
        }
        if (line.startsWith("at ")) {
            return new At(line.substring(3));
        }
        if (line.startsWith("key ")) {
            return new Key(line.substring(4));
        }
        throw new IllegalArgumentException("no line of a paper record: " + line);
    }
}
