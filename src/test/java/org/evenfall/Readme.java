package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** What README.md claims in a form that tests can compare with the program. */
public final class Readme {

    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    private Readme() {}

    /** The lines of the file. */
    public static List<String> lines() throws IOException {
        return Files.readAllLines(Path.of("README.md"));
    }

    /** The text from one phrase up to another, each stretch of blanks and line breaks as one blank. */
    public static String between(String from, String to) throws IOException {
        String text = String.join(" ", lines()).replaceAll("\\s+", " ");
        int start = text.indexOf(from);
        int end = text.indexOf(to, start + from.length());
        assertThat(start).as(from).isNotNegative();
        assertThat(end).as(to).isNotNegative();
        return text.substring(start, end);
    }

    /** The pieces of code in a text. */
    public static List<String> code(String text) {
        return CODE.matcher(text).results().map(code -> code.group(1)).toList();
    }

    /** The words in capitals in the pieces of code of a text, as constants are written. */
    public static List<String> constants(String text) {
        return words(String.join(" ", code(text)), "\\b[A-Z][A-Z_]+\\b");
    }

    /** The keys in quotation marks in a text, as JSON has them. */
    public static List<String> keys(String text) {
        return words(text, "(?<=\")\\w+(?=\")");
    }

    private static List<String> words(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .toList();
    }
}
