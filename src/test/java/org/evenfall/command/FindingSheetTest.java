package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code card} writes where the width is out of reach and no tray test is wanted. */
class FindingSheetTest {

    @TempDir
    private Path folder;

    @Test
    void aWidthOutOfReachGivesAFindingSheet() throws Exception {
        ObjectNode far = (ObjectNode) new ObjectMapper().readTree(Files.readString(Path.of("demo", "setup.json")));
        ((ObjectNode) far.get("start")).put("tramlineWidth", "54 m");
        ((ObjectNode) far.get("match")).put("trayTestOnly", "NO");
        Files.writeString(folder.resolve("far.json"), far.toString());
        Commands.Answer answer = new Commands(folder).run("card", "far.json", "--out", "card.pdf");
        assertThat(answer.code()).as(answer.err()).isEqualTo(CommandFace.FOUND);
        assertThat(answer.err()).hasLineCount(1);
        assertThat(answer.out()).contains("card-finding.pdf");
        assertThat(folder.resolve("card.pdf")).doesNotExist();
        try (PDDocument sheet = Loader.loadPDF(Files.readAllBytes(folder.resolve("card-finding.pdf")))) {
            assertThat(sheet.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(sheet)).contains("A finding, not a cab card");
        }
    }
}
