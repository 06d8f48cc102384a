package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo on a computer without a display: a short page to read, and a card. */
class DemoCommandTest {

    private static final int WIDEST = 80;

    /** A page that a terminal shows at once. */
    private static final int MOST_LINES = 40;

    @TempDir
    private Path folder;

    private Commands commands;
    private Commands.Answer answer;
    private String page;

    @BeforeEach
    void run() {
        commands = new Commands(folder);
        answer = commands.run("demo");
        page = answer.out().replace('\u00a0', ' ').replace(System.lineSeparator(), "\n");
    }

    /** All but the paths, which are one line each to be copied. */
    private List<String> lines() {
        return page.lines().filter(line -> !line.contains(folder.toString())).toList();
    }

    @Test
    void itIsShortAndWrapped() {
        assertThat(answer.code()).isZero();
        assertThat(answer.err().strip()).isEqualTo("No window here.");
        assertThat(page.lines().count()).isLessThanOrEqualTo(MOST_LINES);
        assertThat(lines()).allMatch(line -> line.length() <= WIDEST);
        assertThat(page).doesNotContain("null", "{0}");
    }

    @Test
    void itSaysWhatItIsAndThatItIsInvented() {
        assertThat(page).startsWith("Evenfall, the demo\n");
        assertThat(page.replaceAll("\\s+", " "))
                .contains(
                        "Everything in the demo is invented: the farm, the people, the machine, the products",
                        "The machine’s handbook, local codes and licensed practice come first.");
    }

    @Test
    void theMainResultsHaveUnitsAndIntervals() {
        assertThat(page.replaceAll("\\s+", " "))
                .contains(
                        "Thornmarsh Farm · Long Reach · winter wheat · Granular urea, treated · 28 m",
                        "Density 0.76 kg/L",
                        "between 3.0 and 3.3 mm",
                        "Product 174 kg/ha · Nitrogen 80 kg/ha",
                        "Good is 15.4 to 17.0 kg",
                        "Field CV about 4 % (2 to 8 %): even",
                        "Keep the settings",
                        "A card can be made.",
                        "its 90 % interval");
    }

    /** The files that it names are there, and the commands that it names run on them. */
    @Test
    void itNamesTheCardAndWhatToRunNext() {
        List<String> paths = page.lines()
                .filter(line -> line.contains(folder.toString()))
                .map(String::strip)
                .toList();
        assertThat(paths).hasSize(2);
        assertThat(Path.of(paths.get(0))).exists().hasFileName("evenfall-demo-card.pdf");
        assertThat(Path.of(paths.get(1))).exists();
        assertThat(page).contains("assess SETUP.json", "verify evenfall-demo-card.pdf");
        assertThat(commands.run("assess", paths.get(1)).code()).isZero();
        assertThat(commands.run("sheet", paths.get(1), "--out", "sheet.pdf").code())
                .isZero();
        assertThat(commands.run("report", paths.get(1), "--out", "report.pdf").code())
                .isZero();
        assertThat(commands.run("verify", "evenfall-demo-card.pdf").code()).isZero();
    }
}
