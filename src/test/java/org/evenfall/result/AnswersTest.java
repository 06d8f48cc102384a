package org.evenfall.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

class AnswersTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    private static List<String> texts(Setup setup) {
        return Answers.of(WORDS, setup).stream()
                .map(line -> line.text().replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void everyKindOfAnswerIsInWords() throws Exception {
        assertThat(texts(demo()))
                .contains(
                        "Farm: Thornmarsh Farm",
                        "Tramline width: 28 m",
                        "How the passes follow each other: Back and forth",
                        "Discs: no wear, no dents: Good")
                .anyMatch(line -> line.startsWith("Row 1: long vane, "))
                .anyMatch(line -> line.matches(".*: \\d+ cm( · \\d+ cm)+"));
        assertThat(texts(Setup.EMPTY)).hasSizeLessThanOrEqualTo(1);
    }

    /** Nothing that is typed is left out: each entry with a value is in a line at its place or at its row. */
    @Test
    void nothingTypedIsLeftOut() throws Exception {
        Setup demo = demo();
        List<String> pointers =
                Answers.of(WORDS, demo).stream().map(Answers.Line::pointer).toList();
        for (Entry<?, ?> entry : Entries.ALL) {
            typed(entry, demo)
                    .forEach(pointer -> assertThat(pointers)
                            .as(pointer)
                            .anyMatch(line -> pointer.equals(line)
                                    || pointer.startsWith(line + "/")
                                    || line.startsWith(pointer + "/")));
        }
    }

    private static <R, T> List<String> typed(Entry<R, T> entry, Setup setup) {
        return entry.places(setup)
                .filter(place -> !entry.isBlank(place.get(setup)))
                .map(place -> place.pointer())
                .toList();
    }
}
