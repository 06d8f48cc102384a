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

/** The command sheet: what it writes, and its exit codes. */
class SheetCommandTest {

    private static final String DEMO =
            Path.of("demo", "setup.json").toAbsolutePath().toString();

    @TempDir
    private Path folder;

    private Commands commands;

    @BeforeEach
    void fresh() {
        commands = new Commands(folder);
    }

    private PDDocument sheet() throws Exception {
        return Loader.loadPDF(Files.readAllBytes(folder.resolve("sheet.pdf")));
    }

    @Test
    void bothSheetsOnA4WithoutOptions() throws Exception {
        Commands.Answer answer = commands.run("sheet", DEMO, "--out", "sheet.pdf");
        assertThat(answer.code()).as(answer.err()).isZero();
        assertThat(answer.out()).contains("sheet.pdf");
        try (PDDocument sheet = sheet()) {
            assertThat(new PDFTextStripper().getText(sheet)).contains("Yard sheet", "Field sheet", "First move");
            assertThat((double) sheet.getPage(0).getMediaBox().getHeight()).isBetween(841.0, 843.0);
        }
    }

    @Test
    void onePartOnLetter() throws Exception {
        assertThat(commands.run("sheet", DEMO, "--out", "sheet.pdf", "--part", "yard", "--paper", "letter")
                        .code())
                .isZero();
        try (PDDocument sheet = sheet()) {
            assertThat(new PDFTextStripper().getText(sheet))
                    .contains("Yard sheet")
                    .doesNotContain("Field sheet");
            assertThat(sheet.getPage(0).getMediaBox().getHeight()).isEqualTo(792f);
        }
        assertThat(commands.run("sheet", DEMO, "--out", "sheet.pdf", "--part", "field")
                        .code())
                .isZero();
        try (PDDocument sheet = sheet()) {
            assertThat(new PDFTextStripper().getText(sheet))
                    .contains("Field sheet")
                    .doesNotContain("Yard sheet");
        }
    }

    @Test
    void aWrongCallWritesNothingAndSaysWhyInOneLine() {
        wrong("sheet", DEMO, "--out", "sheet.pdf", "--part", "barn");
        wrong("sheet", DEMO, "--out", "sheet.pdf", "--paper", "a5");
        wrong("sheet", DEMO);
        wrong("sheet", "none.json", "--out", "sheet.pdf");
        assertThat(folder.resolve("sheet.pdf")).doesNotExist();
    }

    @Test
    void aFileThatCannotBeWrittenIsNamed() throws Exception {
        Files.writeString(folder.resolve("blocked"), "a file, no folder");
        Commands.Answer answer = wrong("sheet", DEMO, "--out", "blocked/sheet.pdf");
        assertThat(answer.err()).contains("sheet.pdf: cannot be written; nothing was changed");
    }

    private Commands.Answer wrong(String... args) {
        Commands.Answer answer = commands.run(args);
        assertThat(answer.code()).isEqualTo(2);
        assertThat(answer.err().lines()).hasSize(1);
        assertThat(answer.out()).isEmpty();
        return answer;
    }
}
