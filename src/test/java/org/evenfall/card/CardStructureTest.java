package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a screen reader reaches (ISO 14289-1, 7.1: all real content is tagged); veraPDF does not check this. */
class CardStructureTest {

    private static final String REMARK =
            "Keep to the lower gate while the upper one is wet, and do not cross the ditch. ";

    /** Remarks that continue on further pages: every letter of every page belongs to the structure tree, in its order. */
    @ParameterizedTest
    @CsvSource({
        "A5_LANDSCAPE, 1",
        "A5_LANDSCAPE, 10",
        "A5_LANDSCAPE, 40",
        "A5_PORTRAIT, 10",
        "A5_PORTRAIT, 40",
        "A4, 40",
        "LETTER, 40"
    })
    void everyLetterIsInTheStructureTree(Paper paper, int times) throws Exception {
        Setup demo = CardSamples.demo();
        String remarks = REMARK.repeat(times).strip();
        CardContent content =
                CardSamples.of(demo.withCard(demo.card().withPaper(paper).withRemarks(remarks)), CardSamples.CODE);
        StructureTree tree = StructureTree.of(CardPdf.draw(content, CardSamples.WHEN));
        assertThat(tree.missing()).isEqualTo(Collections.nCopies(tree.pages(), 0));
        assertThat(tree.read()).contains(remarks.replace(" ", ""));
    }
}
