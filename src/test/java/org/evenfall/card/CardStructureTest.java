package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.PageDocument;
import org.evenfall.page.SheetSize;
import org.evenfall.page.TextStyle;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

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
        allIsTagged(tree);
        assertThat(tree.read()).contains(remarks.replace(" ", ""));
    }

    private static void allIsTagged(StructureTree tree) {
        assertThat(tree.missing()).isEqualTo(Collections.nCopies(tree.pages(), ""));
        assertThat(tree.invented()).isEqualTo(Collections.nCopies(tree.pages(), ""));
    }

    /** Names and levers so long that the front continues too; every language and sheet. */
    @ParameterizedTest
    @CsvSource({"A5_LANDSCAPE, DE", "A5_PORTRAIT, FR", "A4, EN", "LETTER, DE"})
    void longNamesAreInTheStructureTree(Paper paper, CardLanguage language) throws Exception {
        Setup demo = CardSamples.demo();
        String name = "Urea of a name that does not end ".repeat(40).strip();
        CardContent content = CardSamples.of(
                demo.withProduct(demo.product().withName(name).withDelivery("Donaudampfschifffahrt".repeat(30)))
                        .withTrays(demo.trays().withBorderDevice(name))
                        .withCard(demo.card()
                                .withPaper(paper)
                                .withLanguage(language)
                                .withSignedBy(name)
                                .withRemarks(REMARK.repeat(20))),
                CardSamples.CODE);
        StructureTree tree = StructureTree.of(CardPdf.draw(content, CardSamples.WHEN));
        assertThat(tree.pages()).isGreaterThan(2);
        allIsTagged(tree);
        assertThat(tree.read())
                .contains(name.replace(" ", ""))
                .contains(DrawnCards.Letters.withoutBlanks(content.foot().line()))
                .contains(DrawnCards.Letters.withoutBlanks(content.day().title()))
                .contains(DrawnCards.Letters.withoutBlanks(
                        content.foot().penLabels().get(3)));
    }

    /** The demo's card and the one-page finding, as they are printed. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void theDemoAndAFindingAreInTheStructureTree(Paper paper) throws Exception {
        for (CardLanguage language : new CardLanguage[] {CardLanguage.EN, CardLanguage.DE, CardLanguage.FR}) {
            CardContent card = CardSamples.of(paper, language, CardSamples.CODE);
            allIsTagged(StructureTree.of(CardPdf.draw(card, CardSamples.WHEN)));
        }
        Setup demo = CardSamples.demo();
        Setup far = demo.withStart(demo.start().withTramlineWidth(EnteredQuantity.parse("54 m")))
                .withMatch(demo.match().withTrayTestOnly(YesNo.NO))
                .withCard(demo.card().withPaper(paper));
        CardContent finding = CardSamples.of(far, CardSamples.CODE);
        assertThat(finding.sheet().findingOnly()).isTrue();
        assertThat(finding.heading().lines()).anyMatch(line -> line.contains("54\u00a0m tramlines"));
        allIsTagged(StructureTree.of(CardPdf.draw(finding, CardSamples.WHEN)));
    }

    /** The comparison itself: a word without a tag is found. */
    @Test
    void aWordWithoutATagIsFound() throws Exception {
        byte[] pdf;
        try (PageDocument document = new PageDocument()) {
            document.page(SheetSize.ofMm(148, 210), (pen, face) -> {
                pen.marked(StandardStructureTypes.P, TextStyle.BODY, 30, 30, 200, "tagged");
                pen.text(TextStyle.BODY, 30, 90, "bare");
                return face;
            });
            pdf = document.finish("Two words", "en", CardSamples.WHEN, 1);
        }
        StructureTree tree = StructureTree.of(pdf);
        assertThat(tree.missing()).containsExactly("aber");
        assertThat(tree.read()).isEqualTo("tagged");
    }
}
