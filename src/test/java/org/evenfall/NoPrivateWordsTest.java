package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Names and comments use standard terms. These words were once used here in a sense of their own; texts in quotes (the
 * program's sentences, published keys) are left out.
 */
class NoPrivateWordsTest {

    /** Words that no name contains as one of its parts, and no comment as a word. */
    private static final Set<String> WORDS = Set.of(
            "told",
            "said",
            "unsaid",
            "stand",
            "stands",
            "standing",
            "stood",
            "beside",
            "besides",
            "lay",
            "lays",
            "laid",
            "mind",
            "minds",
            "luck",
            "teeth",
            "desk",
            "keeper",
            "sideways",
            "evennesses",
            "knife");

    /** Phrases of no comment: the four evidence grades say it. */
    private static final List<Pattern> PHRASES = List.of(
            Pattern.compile("\\(seen\\)"),
            Pattern.compile("(?<!Source \\()from memory"),
            Pattern.compile("common practice, no source"),
            Pattern.compile("goes on running|on a knife"));

    private static final Pattern QUOTED =
            Pattern.compile("\"\"\"[\\s\\S]*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"|'(?:[^'\\\\\\n]|\\\\.)'");

    private static final Pattern PART = Pattern.compile("[A-Z]?[a-z]+|[A-Z]+(?![a-z])");

    private static List<Path> files() throws Exception {
        List<Path> files = new ArrayList<>();
        for (String root : List.of("src/main/java", "src/test/java", "src/dss/java", "src/fuzz/java")) {
            try (Stream<Path> all = Files.walk(Path.of(root))) {
                all.filter(path -> path.toString().endsWith(".java"))
                        .filter(path -> !path.endsWith("NoPrivateWordsTest.java"))
                        .forEach(files::add);
            }
        }
        files.add(Path.of("DEVELOPERS.md"));
        return files;
    }

    /** File, line and word of each private word. */
    private static List<String> found(String name, String text) {
        List<String> found = new ArrayList<>();
        String[] lines = QUOTED.matcher(text)
                .replaceAll(quoted -> "\n".repeat((int)
                        quoted.group().chars().filter(c -> c == '\n').count()))
                .split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            String at = name + ":" + (i + 1) + " ";
            // "laid out" is the platform's own term
            Matcher part = PART.matcher(lines[i].replace("laid out", ""));
            while (part.find()) {
                if (WORDS.contains(part.group().toLowerCase(Locale.ROOT))) {
                    found.add(at + part.group());
                }
            }
            for (Pattern phrase : PHRASES) {
                if (phrase.matcher(lines[i]).find()) {
                    found.add(at + phrase);
                }
            }
        }
        return found;
    }

    @Test
    void namesAndCommentsUseStandardTerms() throws Exception {
        List<String> found = new ArrayList<>();
        for (Path file : files()) {
            found.addAll(found(file.toString(), Files.readString(file)));
        }
        assertThat(found).isEmpty();
    }

    @Test
    void aPrivateWordIsFoundInNamesAndCommentsOnly() {
        assertThat(found("A.java", "/** As told. */ void layOver(Layout layout, Standard s) { text(\"told\"); }"))
                .containsExactly("A.java:1 told", "A.java:1 lay");
        assertThat(found("A.java", "\n// from memory\n// Source (from memory): B. Author\n"))
                .hasSize(1);
    }
}
