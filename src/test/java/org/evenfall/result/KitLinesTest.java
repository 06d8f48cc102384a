package org.evenfall.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.Test;

class KitLinesTest {

    private static final Sentences WORDS =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    @Test
    void numbersAreGivenWhereTheSetupSaysThem() throws Exception {
        Setup demo = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
        assertThat(KitLines.of(WORDS, Assessor.assess(demo)))
                .hasSize(10)
                .anyMatch(line -> line.startsWith("7 trays"))
                .anyMatch(line -> line.matches("About \\d+.kg of product for 3 tray tests.*"));
        assertThat(KitLines.of(WORDS, Assessor.assess(Setup.EMPTY)))
                .hasSize(10)
                .noneMatch(line -> line.matches(".*\\{\\d.*"))
                .anyMatch(line -> line.startsWith("Trays"));
    }
}
