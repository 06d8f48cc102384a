package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Size of the letters and number of pages of the cards of both demos, as the README states them. */
class CardSizesTest {

    /** The smallest font size of one page. */
    private static final class Smallest extends PDFTextStripper {

        private float points = Float.MAX_VALUE;

        static float of(PDDocument document, int page) throws IOException {
            Smallest smallest = new Smallest();
            smallest.setStartPage(page);
            smallest.setEndPage(page);
            smallest.getText(document);
            return smallest.points;
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            super.processTextPosition(letter);
            points = Math.min(points, letter.getFontSizeInPt());
        }
    }

    private static byte[] card(String name, Paper paper, CardLanguage language) throws Exception {
        Setup setup = new SetupJson().read(Files.readString(Path.of("demo", name + ".json")), name);
        return CardPdf.draw(
                CardSamples.of(setup.withCard(setup.card().withPaper(paper).withLanguage(language)), CardSamples.CODE),
                CardSamples.WHEN);
    }

    @ParameterizedTest
    @CsvSource({
        "setup, A5_LANDSCAPE, 2",
        "setup, A5_PORTRAIT, 2",
        "setup, A4, 1",
        "setup, LETTER, 1",
        "uneven, A5_LANDSCAPE, 2",
        "uneven, A5_PORTRAIT, 2"
    })
    void twoFacesOnA5AndOnePageOnLargerSheets(String name, Paper paper, int pages) throws Exception {
        for (CardLanguage language : new CardLanguage[] {CardLanguage.EN, CardLanguage.DE, CardLanguage.FR}) {
            try (PDDocument document = Loader.loadPDF(card(name, paper, language))) {
                // in other languages it may not fit on one page
                assertThat(document.getNumberOfPages())
                        .as(language.name())
                        .isBetween(pages, language == CardLanguage.EN ? pages : 2);
                if (document.getNumberOfPages() == 2) {
                    assertThat(Smallest.of(document, 1)).as("front").isGreaterThanOrEqualTo(12);
                }
                assertThat(Smallest.of(document, document.getNumberOfPages()))
                        .as("back")
                        .isGreaterThanOrEqualTo(9);
            }
        }
    }

    /** Where two faces are not enough, nothing gets smaller: all of it goes on further pages. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void fourteenPointsWhereItTakesMoreThanTwoFaces(Paper paper) throws Exception {
        Setup demo = CardSamples.demo();
        Setup setup = demo.withCard(demo.card().withPaper(paper).withRemarks("Mind the gate. ".repeat(1200)));
        try (PDDocument document =
                Loader.loadPDF(CardPdf.draw(CardSamples.of(setup, CardSamples.CODE), CardSamples.WHEN))) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertThat(Smallest.of(document, page)).isGreaterThanOrEqualTo(14);
            }
        }
    }
}
