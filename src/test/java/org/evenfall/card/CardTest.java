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
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.xml.DomXmpParser;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
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

    private static final Instant WHEN = Cards.WHEN;
    private static SigningKey key;
    private static Setup demo;

    @BeforeAll
    static void once() throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        key = SigningKeys.make("A. Marlow", "farm manager", WHEN);
        demo = Cards.demo();
    }

    private static CardContent content(Paper paper) throws Exception {
        return Cards.of(paper, CardLanguage.EN, key.code());
    }

    private static byte[] signed() throws Exception {
        return Cards.signed(key);
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

    /** Names in letters that the own face lacks, warnings, missing parts, a finding only: archivable and tagged all the same. */
    @Test
    void whateverStandsOnItIsArchivableAndTagged() throws Exception {
        Random random = new Random(19005);
        List<CardContent> contents = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            contents.add(CardLayoutTest.seeded(random));
        }
        Setup far = demo.withStart(demo.start().withTramlineWidth(new EnteredQuantity("54", Unit.M)));
        contents.add(Cards.of(far, key.code()));
        assertThat(contents.get(6).findingOnly()).isTrue();
        for (CardContent content : contents) {
            byte[] card = CardMaker.make(content, key, "A. Marlow", WHEN);
            for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFA_2_B, PDFAFlavour.PDFUA_1)) {
                ValidationResult result = validate(card, flavour);
                assertThat(result.isCompliant())
                        .as(flavour + " " + result.getTestAssertions())
                        .isTrue();
            }
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

    /** Title, program, times and language say the same in the document information and in the metadata (ISO 19005-2, 6.6). */
    @Test
    void informationAndMetadataAgree() throws Exception {
        try (PDDocument document = Loader.loadPDF(signed())) {
            PDDocumentInformation info = document.getDocumentInformation();
            XMPMetadata xmp = new DomXmpParser()
                    .parse(document.getDocumentCatalog().getMetadata().exportXMPMetadata());
            assertThat(xmp.getDublinCoreSchema().getTitle())
                    .isEqualTo(info.getTitle())
                    .contains("Granular urea");
            assertThat(xmp.getDublinCoreSchema().getLanguages())
                    .containsExactly(document.getDocumentCatalog().getLanguage());
            assertThat(xmp.getXMPBasicSchema().getCreatorTool()).isEqualTo(info.getCreator());
            assertThat(xmp.getXMPBasicSchema().getCreateDate().toInstant())
                    .isEqualTo(info.getCreationDate().toInstant())
                    .isEqualTo(WHEN);
            assertThat(xmp.getXMPBasicSchema().getModifyDate().toInstant())
                    .isEqualTo(info.getModificationDate().toInstant());
            assertThat(info.getProducer()).isNull();
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
                        .withNitrogenRate(
                                new org.evenfall.quantity.EnteredQuantity("64", org.evenfall.quantity.Unit.UNITS))
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
}
