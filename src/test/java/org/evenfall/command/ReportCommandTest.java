package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command report: what it writes, and its exit codes. */
class ReportCommandTest {

    private static final String DEMO =
            Path.of("demo", "setup.json").toAbsolutePath().toString();

    @TempDir
    private Path folder;

    private Commands commands;

    @BeforeEach
    void fresh() {
        commands = new Commands(folder);
    }

    private static String text(PDDocument report) throws Exception {
        return new PDFTextStripper().getText(report).replace('\u00a0', ' ');
    }

    private PDDocument report() throws Exception {
        return Loader.loadPDF(Files.readAllBytes(folder.resolve("report.pdf")));
    }

    @Test
    void theReportOnA4WithoutOptions() throws Exception {
        Commands.Answer answer = commands.run("report", DEMO, "--out", "report.pdf");
        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("report.pdf");
        try (PDDocument report = report()) {
            assertThat(text(report))
                    .contains("Thornmarsh Farm", "Field CV about 4 % (2 to 8 %): even", "Findings still open");
            assertThat((double) report.getPage(0).getMediaBox().getHeight()).isBetween(841.0, 843.0);
        }
    }

    /** What is not done is reported too: exit code 0, since the report is written. */
    @Test
    void anUnfinishedSetupOnLetter() throws Exception {
        Files.writeString(folder.resolve("new.json"), "{\"evenfall\": 1}");
        Commands.Answer answer = commands.run("report", "new.json", "--out", "report.pdf", "--paper", "letter");
        assertThat(answer.code()).as(answer.err()).isZero();
        try (PDDocument report = report()) {
            assertThat(text(report)).contains("No card yet", "Nothing entered yet.");
            assertThat(report.getPage(0).getMediaBox().getHeight()).isEqualTo(792f);
        }
    }

    @Test
    void aWrongCallWritesNothingAndSaysWhyInOneLine() {
        wrong("report", DEMO, "--out", "report.pdf", "--paper", "a5");
        wrong("report", DEMO);
        wrong("report", "none.json", "--out", "report.pdf");
        assertThat(folder.resolve("report.pdf")).doesNotExist();
    }

    @Test
    void aFileThatCannotBeWrittenIsNamed() throws Exception {
        Files.writeString(folder.resolve("blocked"), "a file, no folder");
        Commands.Answer answer = wrong("report", DEMO, "--out", "blocked/report.pdf");
        assertThat(answer.err()).contains("report.pdf: cannot be written; nothing was changed");
    }

    private Commands.Answer wrong(String... args) {
        Commands.Answer answer = commands.run(args);
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.out()).isEmpty();
        return answer;
    }
}
