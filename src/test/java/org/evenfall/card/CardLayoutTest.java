package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;

/** How the card looks, measured from its pages: 200 seeded contents, three languages, four sheets. */
class CardLayoutTest {

    /** Long names, many levers, warnings, missing parts: nothing leaves the page or shrinks below its size. */
    @Test
    void nothingIsCutOffOrShrunk() throws Exception {
        Random random = new Random(148);
        for (int i = 0; i < 200; i++) {
            CardContent content = seeded(random);
            byte[] pdf = CardPdf.draw(content, Cards.WHEN);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                Boxes boxes = new Boxes();
                boxes.getText(document);
                assertThat(boxes.outside).as(content.toString()).isEmpty();
                assertThat(boxes.smallest).isGreaterThanOrEqualTo(14f);
                String printed = boxes.text.toString().replaceAll("[\\s\u00a0]", "");
                for (CardContent.Figure figure : content.figures()) {
                    assertThat(printed).contains(figure.value().replaceAll("[\\s\u00a0]", ""));
                }
                for (String warning : content.warnings()) {
                    assertThat(printed).contains(warning.replaceAll("[\\s\u00a0]", ""));
                }
                assertThat(boxes.overlaps()).as(content.toString()).isEmpty();
            }
        }
    }

    /** Texts longer than anybody expects are dealt out over pages: all of them can be read, none is an error. */
    @Test
    void absurdlyLongTextsAreNotCut() throws Exception {
        String name = "Urea of a name that does not end ".repeat(40).strip();
        String unbroken = "Donaudampfschifffahrt".repeat(30);
        for (Paper paper : Paper.values()) {
            Setup setup = Cards.demo();
            CardContent content = Cards.of(
                    setup.withProduct(setup.product().withName(name).withDelivery(unbroken))
                            .withTrays(setup.trays().withBorderDevice(name))
                            .withCard(setup.card()
                                    .withPaper(paper)
                                    .withRemarks(name)
                                    .withMeasuredBy(name)
                                    .withSignedBy(unbroken)),
                    "F474 2625 AE76 3002");
            try (PDDocument document = Loader.loadPDF(CardPdf.draw(content, Cards.WHEN))) {
                Boxes boxes = new Boxes();
                boxes.getText(document);
                String printed = boxes.text.toString().replaceAll("[\\s\u00a0]", "");
                assertThat(printed).contains(name.replace(" ", "")).contains(unbroken);
                assertThat(boxes.outside).isEmpty();
                assertThat(boxes.smallest).isGreaterThanOrEqualTo(14f);
                assertThat(boxes.overlaps()).isEmpty();
            }
        }
    }

    /** Key figures of 24 points and more; that no label is under 14 is seen above. */
    @Test
    void keyFiguresAreLarge() throws Exception {
        Random random = new Random(24);
        for (int i = 0; i < 30; i++) {
            CardContent content = seeded(random);
            try (PDDocument document = Loader.loadPDF(CardPdf.draw(content, Cards.WHEN))) {
                Boxes boxes = new Boxes();
                boxes.getText(document);
                String large = boxes.large.toString().replaceAll("[\\s\u00a0]", "");
                for (CardContent.Figure figure : content.figures()) {
                    assertThat(large).contains(figure.value().replaceAll("[\\s\u00a0]", ""));
                }
            }
        }
    }

    /** From the rendered pages: every letter and digit at 7 to 1 and more against what is around it (WCAG 2.2, 1.4.6). */
    @Test
    void contrastIsHighOnTheRenderedPage() throws Exception {
        Random random = new Random(7);
        for (int i = 0; i < 12; i++) {
            byte[] pdf = CardPdf.draw(seeded(random), Cards.WHEN);
            List<BufferedImage> pages = CardPicture.render(pdf, DPI);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                Boxes boxes = new Boxes();
                boxes.getText(document);
                for (int k = 0; k < boxes.boxes.size(); k++) {
                    float[] box = boxes.boxes.get(k);
                    if (Character.isLetterOrDigit(boxes.letters.get(k))) {
                        assertThat(contrast(pages.get((int) box[0] - 1), box))
                                .as(boxes.letters.get(k) + " at " + box[1] + ", " + box[4])
                                .isGreaterThanOrEqualTo(7);
                    }
                }
            }
        }
    }

    /** A laminated edge of 8 mm stays free of ink. */
    @Test
    void theEdgeIsFree() throws Exception {
        Random random = new Random(8);
        for (int i = 0; i < 12; i++) {
            for (BufferedImage page : CardPicture.render(CardPdf.draw(seeded(random), Cards.WHEN), DPI)) {
                int edge = (int) (Face.MARGIN * DPI / 72) - 2;
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

    /** The settings fit version 12 at level M, whatever they are called; a phone reads them at 100 dots an inch. */
    @Test
    void theCodeIsSmallEnoughAndReadable() throws Exception {
        Random random = new Random(12);
        for (int i = 0; i < 200; i++) {
            CardContent content = seeded(random);
            String text = content.title() + "\n" + content.qr() + "\n" + words(random, random.nextInt(60));
            assertThat(QrCode.code(text).getVersion().getVersionNumber()).isLessThanOrEqualTo(12);
            assertThat(QrCode.code(text).getECLevel()).isEqualTo(ErrorCorrectionLevel.M);
        }
    }

    private static final float DPI = 200;

    private static double contrast(BufferedImage page, float[] box) {
        double light = 0;
        double dark = 1;
        for (int y = (int) (box[2] * DPI / 72); y <= box[4] * DPI / 72; y++) {
            for (int x = (int) (box[1] * DPI / 72); x <= box[3] * DPI / 72; x++) {
                double luminance = luminance(page.getRGB(x, y));
                light = Math.max(light, luminance);
                dark = Math.min(dark, luminance);
            }
        }
        return (light + 0.05) / (dark + 0.05);
    }

    /** Relative luminance, WCAG 2.2. */
    private static double luminance(int rgb) {
        double sum = 0;
        double[] weights = {0.2126, 0.7152, 0.0722};
        for (int k = 0; k < 3; k++) {
            double c = ((rgb >> (16 - 8 * k)) & 0xFF) / 255.0;
            sum += weights[k] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    static CardContent seeded(Random random) throws Exception {
        CardContent base = Cards.of(
                Paper.values()[random.nextInt(4)], CardLanguage.values()[1 + random.nextInt(3)], "F474 2625 AE76 3002");
        List<CardContent.Figure> figures = new ArrayList<>(base.figures());
        for (int n = random.nextInt(7); n > 0; n--) {
            figures.add(
                    3,
                    new CardContent.Figure(words(random, 1 + random.nextInt(6)), words(random, 1 + random.nextInt(3))));
        }
        for (int n = random.nextInt(5); n > 0; n--) {
            figures.remove(random.nextInt(figures.size()));
        }
        List<String> warnings = new ArrayList<>();
        for (int n = random.nextInt(9); n > 0; n--) {
            warnings.add(words(random, 5 + random.nextInt(25)));
        }
        return new CardContent(
                base.paper(),
                base.language(),
                words(random, 1 + random.nextInt(7)),
                List.of(words(random, 6), words(random, 9)),
                figures,
                base.proofTitle(),
                random.nextBoolean() ? base.bars() : List.of(),
                base.barsTold(),
                base.proof(),
                warnings,
                base.stopTitle(),
                base.stops(),
                base.cautionTitle(),
                base.cautions(),
                base.signature(),
                base.timeLabel(),
                base.penLabels(),
                base.footer(),
                base.qr(),
                base.qrTold(),
                false);
    }

    private static String words(Random random, int count) {
        String[] some = {
            "long",
            "vane",
            "setting",
            "Broadcasterlever",
            "ø",
            "12.5",
            "żółw",
            "left",
            "outer",
            "drop",
            "position",
            "åben"
        };
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(i == 0 ? "" : " ").append(some[random.nextInt(some.length)]);
        }
        return text.toString();
    }

    /** Every letter's box, to see that it lies inside the margin and on no other. */
    private static final class Boxes extends PDFTextStripper {

        private final List<String> outside = new ArrayList<>();
        private final List<float[]> boxes = new ArrayList<>();
        private final List<Character> letters = new ArrayList<>();
        private final StringBuilder text = new StringBuilder();
        private final StringBuilder large = new StringBuilder();
        private float smallest = Float.MAX_VALUE;

        Boxes() {
            setSortByPosition(false);
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            super.processTextPosition(letter);
            float width = getCurrentPage().getMediaBox().getWidth();
            float height = getCurrentPage().getMediaBox().getHeight();
            float margin = (float) Face.MARGIN - 0.5f;
            text.append(letter.getUnicode());
            if (letter.getFontSizeInPt() >= 24) {
                large.append(letter.getUnicode());
            }
            smallest = Math.min(smallest, letter.getFontSizeInPt());
            float top = letter.getY() - letter.getFontSizeInPt() * 0.70f;
            if (!letter.getUnicode().isBlank()) {
                letters.add(letter.getUnicode().charAt(0));
                boxes.add(new float[] {
                    getCurrentPageNo(), letter.getX(), top, letter.getX() + letter.getWidth(), letter.getY()
                });
                if (letter.getX() < margin
                        || letter.getX() + letter.getWidth() > width - margin
                        || top < margin
                        || letter.getY() > height - margin) {
                    outside.add(letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY());
                }
            }
        }

        List<String> overlaps() {
            List<String> found = new ArrayList<>();
            for (int i = 0; i < boxes.size(); i++) {
                for (int j = i + 1; j < boxes.size(); j++) {
                    float[] a = boxes.get(i);
                    float[] b = boxes.get(j);
                    float across = Math.min(a[3], b[3]) - Math.max(a[1], b[1]);
                    float down = Math.min(a[4], b[4]) - Math.max(a[2], b[2]);
                    if (a[0] == b[0] && across > 1 && down > 1) {
                        found.add("page " + a[0] + " at " + a[1] + ", " + a[4]);
                    }
                }
            }
            return found;
        }
    }
}
