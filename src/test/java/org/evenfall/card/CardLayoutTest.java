package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.card.DrawnCards.Letters.withoutBlanks;

import java.awt.image.BufferedImage;
import java.util.stream.IntStream;
import org.evenfall.card.DrawnCards.Drawn;
import org.evenfall.card.DrawnCards.Letters;
import org.evenfall.card.DrawnCards.Letters.Box;
import org.evenfall.page.Face;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The layout of the card, measured on its pages: 200 seeded contents, three languages, four sheets. */
@ExtendWith(DrawnCards.Shared.class)
class CardLayoutTest {

    /** Linear light of each value of a channel, WCAG 2.2. */
    private static final double[] LINEAR = IntStream.range(0, 256)
            .mapToDouble(value -> value / 255.0)
            .map(c -> c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4))
            .toArray();

    /** Long names, many levers, warnings, missing parts: nothing leaves the page or gets smaller than 9 points. */
    @Test
    void nothingIsCutOffOrShrunk(DrawnCards cards) {
        for (Drawn card : cards.all()) {
            assertThat(card.letters().outside()).as(card.content().toString()).isEmpty();
            assertThat(card.letters().smallest()).isGreaterThanOrEqualTo(9f);
            String printed = card.letters().text();
            for (CardContent.Figure figure : card.content().figures()) {
                assertThat(printed).contains(withoutBlanks(figure.value()));
            }
            for (String warning : card.content().warnings()) {
                assertThat(printed).contains(withoutBlanks(warning));
            }
        }
    }

    @Test
    void noLetterCoversAnother(DrawnCards cards) {
        for (Drawn card : cards.all()) {
            assertThat(card.letters().overlaps()).as(card.content().toString()).isEmpty();
        }
    }

    /** Very long texts are split over pages: all of them can be read, none is an error. */
    @Test
    void veryLongTextsAreNotCut() throws Exception {
        String name = "Urea of a name that does not end ".repeat(40).strip();
        String unbroken = "Donaudampfschifffahrt".repeat(30);
        for (Paper paper : Paper.values()) {
            Setup setup = CardSamples.demo();
            CardContent content = CardSamples.of(
                    setup.withProduct(setup.product().withName(name).withDelivery(unbroken))
                            .withTrays(setup.trays().withBorderDevice(name))
                            .withCard(setup.card()
                                    .withPaper(paper)
                                    .withRemarks(name)
                                    .withMeasuredBy(name)
                                    .withSignedBy(unbroken)),
                    CardSamples.CODE);
            Letters letters = Letters.of(CardPdf.draw(content, CardSamples.WHEN));
            assertThat(letters.text()).contains(name.replace(" ", "")).contains(unbroken);
            assertThat(letters.outside()).isEmpty();
            assertThat(letters.smallest()).isGreaterThanOrEqualTo(9f);
            assertThat(letters.overlaps()).isEmpty();
        }
    }

    /** Values of 24 points and more, labels of 14. */
    @Test
    void valuesAreLarge(DrawnCards cards) {
        for (Drawn card : cards.all()) {
            for (CardContent.Figure figure : card.content().figures()) {
                assertThat(card.letters().large()).contains(withoutBlanks(figure.value()));
                assertThat(card.letters().readable()).contains(withoutBlanks(figure.label()));
            }
        }
    }

    /** On the rendered pages: every letter and digit at a contrast of 7 to 1 or more (WCAG 2.2, 1.4.6). */
    @Test
    void contrastIsHighOnTheRenderedPage(DrawnCards cards) {
        for (Drawn card : cards.pictured()) {
            for (Box box : card.letters().boxes()) {
                if (Character.isLetterOrDigit(box.letter())) {
                    assertThat(contrast(card.pictures().get(box.page() - 1), box))
                            .as(box.toString())
                            .isGreaterThanOrEqualTo(7);
                }
            }
        }
    }

    /** An edge of 8 mm for laminating stays free of ink. */
    @Test
    void theEdgeIsFree(DrawnCards cards) {
        int edge = (int) (Face.MARGIN * DrawnCards.DPI / 72) - 2;
        for (Drawn card : cards.pictured()) {
            for (BufferedImage page : card.pictures()) {
                int inked = 0;
                for (int y = 0; y < page.getHeight(); y++) {
                    for (int x = 0; x < page.getWidth(); x++) {
                        boolean inside =
                                x >= edge && y >= edge && x < page.getWidth() - edge && y < page.getHeight() - edge;
                        if (!inside && page.getRGB(x, y) != 0xFFFFFFFF) {
                            inked++;
                        }
                    }
                }
                assertThat(inked).isZero();
            }
        }
    }

    private static double contrast(BufferedImage page, Box box) {
        double scale = DrawnCards.DPI / 72;
        double light = 0;
        double dark = 1;
        for (int y = (int) (box.top() * scale); y <= box.bottom() * scale; y++) {
            for (int x = (int) (box.left() * scale); x <= box.right() * scale; x++) {
                double luminance = luminance(page.getRGB(x, y));
                light = Math.max(light, luminance);
                dark = Math.min(dark, luminance);
            }
        }
        return (light + 0.05) / (dark + 0.05);
    }

    /** Relative luminance, WCAG 2.2. */
    private static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    }

    private static double linear(int channel) {
        return LINEAR[channel & 0xFF];
    }
}
