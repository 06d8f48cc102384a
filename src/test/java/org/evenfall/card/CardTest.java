package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class CardTest {

    private static final Instant WHEN = Instant.parse("2027-03-18T10:00:00Z");
    private static SigningKey key;
    private static Setup demo;

    @BeforeAll
    static void once() throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        key = SigningKeys.make("A. Marlow", "farm manager", WHEN);
        demo = new SetupJson()
                .read(Files.readString(Path.of("demo", "setup.json")), "demo")
                .setup();
    }

    private static CardContent content(Paper paper) {
        return content(paper, CardLanguage.UNANSWERED);
    }

    private static CardContent content(Paper paper, CardLanguage language) {
        Setup setup = demo.withCard(demo.card().withPaper(paper).withLanguage(language));
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        return CardContents.of(setup, Assessor.assess(setup), words, key.code());
    }

    /** The demo's card for other tests of this room. */
    static CardContent demoContent(String code) throws Exception {
        Setup setup = new SetupJson()
                .read(Files.readString(Path.of("demo", "setup.json")), "demo")
                .setup();
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        return CardContents.of(setup, Assessor.assess(setup), words, code);
    }

    private static byte[] signed() throws IOException {
        return CardMaker.make(content(Paper.A5_LANDSCAPE), key, "A. Marlow", WHEN);
    }

    @Test
    void aSignedCardIsUnchangedAndByAKnownKey() throws Exception {
        VerifyResult result = CardVerifier.verify(signed(), Set.of(key.code()));
        assertThat(result)
                .isEqualTo(new VerifyResult(
                        true, true, false, "A. Marlow", "A. Marlow", key.code(), true, "2027-03-18T10:00:00Z"));
        assertThat(CardVerifier.verify(signed(), Set.of()).knownKey()).isFalse();
        assertThat(CardVerifier.verify(CardPdf.draw(content(Paper.A4), WHEN), Set.of()))
                .isEqualTo(VerifyResult.UNSIGNED);
    }

    @Test
    void aChangedByteShowsWhereverItIs() throws Exception {
        byte[] card = signed();
        int[] range;
        try (PDDocument document = Loader.loadPDF(card)) {
            range = document.getSignatureDictionaries().get(0).getByteRange();
        }
        for (int at = 0; at < card.length; at += 97) {
            if (at >= range[1] && at < range[2]) {
                // the signature itself, which no signature can cover
                continue;
            }
            byte[] changed = card.clone();
            changed[at] ^= 0x04;
            boolean unchanged;
            try {
                unchanged = CardVerifier.verify(changed, Set.of()).unchanged();
            } catch (IOException damaged) {
                unchanged = false;
            }
            assertThat(unchanged).as("byte " + at).isFalse();
        }
    }

    @Test
    void whatIsAppendedShows() throws Exception {
        byte[] card = signed();
        byte[] longer = Arrays.copyOf(card, card.length + 20);
        System.arraycopy("\n% one more comment\n".getBytes(StandardCharsets.US_ASCII), 0, longer, card.length, 20);
        assertThat(CardVerifier.verify(longer, Set.of())).matches(r -> !r.unchanged() && r.appended());
        try (PDDocument document = Loader.loadPDF(card)) {
            document.getDocumentCatalog().setLanguage("de");
            document.getDocumentCatalog().getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream update = new ByteArrayOutputStream();
            document.saveIncremental(update);
            assertThat(CardVerifier.verify(update.toByteArray(), Set.of()))
                    .matches(r -> !r.unchanged() && r.appended());
        }
    }

    @Test
    void aSwappedPageShows() throws Exception {
        try (PDDocument document = Loader.loadPDF(signed())) {
            PDPage first = document.getPage(0);
            document.removePage(0);
            document.addPage(first);
            ByteArrayOutputStream saved = new ByteArrayOutputStream();
            document.save(saved);
            assertThat(CardVerifier.verify(saved.toByteArray(), Set.of()).unchanged())
                    .isFalse();
        }
    }

    /** Second opinion: pdfsig of poppler-utils, where it is installed (CI installs it). */
    @Test
    void popplerAgrees(@TempDir Path folder) throws Exception {
        assumeTrue(new ProcessBuilder("sh", "-c", "command -v pdfsig").start().waitFor() == 0, "pdfsig is not here");
        byte[] card = signed();
        assertThat(pdfsig(card, folder))
                .contains("Signature is Valid")
                .contains("ETSI.CAdES.detached")
                .contains("Total document signed");
        byte[] changed = card.clone();
        changed[900] ^= 1;
        assertThat(pdfsig(changed, folder)).doesNotContain("Signature is Valid");
    }

    private static String pdfsig(byte[] card, Path folder) throws Exception {
        Path file = Files.write(folder.resolve("card.pdf"), card);
        Process process = new ProcessBuilder("pdfsig", file.toString())
                .redirectErrorStream(true)
                .start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return told;
    }

    /** ISO 19005-2 level B, by the validation model of veraPDF; the same without its colour profile must fail. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void theSignedCardIsArchivable(Paper paper) throws Exception {
        byte[] card = CardMaker.make(content(paper), key, "A. Marlow", WHEN);
        ValidationResult result = validate(card);
        assertThat(result.isCompliant())
                .as(String.valueOf(result.getTestAssertions()))
                .isTrue();
        try (PDDocument document = Loader.loadPDF(card)) {
            document.getDocumentCatalog().setOutputIntents(List.of());
            ByteArrayOutputStream spoilt = new ByteArrayOutputStream();
            document.save(spoilt);
            assertThat(validate(spoilt.toByteArray()).isCompliant()).isFalse();
        }
    }

    /** ISO 14289-1 (PDF/UA-1) as far as a machine can judge it; the same without its structure must fail. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void aScreenReaderCanFollowTheCard(Paper paper) throws Exception {
        byte[] card = CardMaker.make(content(paper), key, "A. Marlow", WHEN);
        ValidationResult result = validate(card, PDFAFlavour.PDFUA_1);
        assertThat(result.isCompliant())
                .as(String.valueOf(result.getTestAssertions()))
                .isTrue();
        try (PDDocument document = Loader.loadPDF(card)) {
            document.getDocumentCatalog().setStructureTreeRoot(null);
            ByteArrayOutputStream spoilt = new ByteArrayOutputStream();
            document.save(spoilt);
            assertThat(validate(spoilt.toByteArray(), PDFAFlavour.PDFUA_1).isCompliant())
                    .isFalse();
        }
    }

    private static ValidationResult validate(byte[] pdf) throws Exception {
        return validate(pdf, PDFAFlavour.PDFA_2_B);
    }

    private static ValidationResult validate(byte[] pdf, PDFAFlavour flavour) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser);
        }
    }

    @Test
    void theSameContentTimeAndKeyGiveTheSameBytes() throws Exception {
        assertThat(CardPdf.draw(content(Paper.A4), WHEN)).isEqualTo(CardPdf.draw(content(Paper.A4), WHEN));
        assertThat(signed()).isEqualTo(signed());
    }

    @Test
    void aPhoneReadsTheSettingsFromThePage() throws Exception {
        CardContent content = content(Paper.A5_LANDSCAPE);
        BufferedImage page =
                CardPicture.render(CardPdf.draw(content, WHEN), 100).get(1);
        String text = decode(page);
        assertThat(text).isEqualTo(QrCode.fitted(content.qr()));
        assertThat(text).contains("Opening left: 27.5").contains("174 kg/ha");
    }

    /** A rate typed in units or pounds an acre stands on the card as typed, with its basis and kg/ha. */
    @Test
    void aRatePerAcreStandsWithItsBasis() {
        Setup units = demo.withRate(demo.rate()
                .withPlan(demo.rate()
                        .plan()
                        .withBasis(org.evenfall.setup.entry.RateBasis.NITROGEN)
                        .withNitrogenRate(new org.evenfall.quantity.Typed("64", org.evenfall.quantity.Unit.UNITS))
                        .withUnitsBasis(org.evenfall.rate.UnitsBasis.HUNDREDTH_OF_HUNDREDWEIGHT_PER_ACRE)));
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        List<String> proof = CardContents.of(units, Assessor.assess(units), words, "").proof().stream()
                .map(line -> line.replace('\u00a0', ' '))
                .toList();
        assertThat(proof).contains("Nitrogen 64 units (1/100 hundredweight per acre) is 80 kg/ha");
    }

    /** As from a phone held askew in a dim cab: blurred, turned by 7 degrees, darkened. */
    @Test
    void aPhoneReadsItAskewBlurredAndInTheDark() throws Exception {
        CardContent content = content(Paper.A5_LANDSCAPE);
        BufferedImage page =
                CardPicture.render(CardPdf.draw(content, WHEN), 200).get(1);
        BufferedImage askew =
                new BufferedImage(page.getWidth() + 400, page.getHeight() + 400, BufferedImage.TYPE_INT_RGB);
        java.awt.Graphics2D pen = askew.createGraphics();
        pen.setColor(java.awt.Color.LIGHT_GRAY);
        pen.fillRect(0, 0, askew.getWidth(), askew.getHeight());
        pen.setRenderingHint(
                java.awt.RenderingHints.KEY_INTERPOLATION, java.awt.RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.rotate(Math.toRadians(7), askew.getWidth() / 2.0, askew.getHeight() / 2.0);
        pen.drawImage(page, 200, 200, null);
        pen.dispose();
        float[] blur = new float[9];
        Arrays.fill(blur, 1f / 9);
        BufferedImage blurred =
                new java.awt.image.ConvolveOp(new java.awt.image.Kernel(3, 3, blur)).filter(askew, null);
        BufferedImage dark = new java.awt.image.RescaleOp(0.35f, 5, null).filter(blurred, null);
        assertThat(decode(dark)).isEqualTo(QrCode.fitted(content.qr()));
    }

    private static String decode(BufferedImage image) throws Exception {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        BinaryBitmap bitmap = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
        return new QRCodeReader()
                .decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    /** Long names, many levers, warnings, missing parts: nothing leaves the page or shrinks below its size. */
    @Test
    void nothingIsCutOffOrShrunk() throws Exception {
        Random random = new Random(148);
        for (int i = 0; i < 200; i++) {
            CardContent content = seeded(random);
            byte[] pdf = CardPdf.draw(content, WHEN);
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

    private static CardContent seeded(Random random) {
        CardContent base = content(Paper.values()[random.nextInt(4)], CardLanguage.values()[1 + random.nextInt(3)]);
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
        private final StringBuilder text = new StringBuilder();
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
            smallest = Math.min(smallest, letter.getFontSizeInPt());
            float top = letter.getY() - letter.getFontSizeInPt() * 0.70f;
            if (!letter.getUnicode().isBlank()) {
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
