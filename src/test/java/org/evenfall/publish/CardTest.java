package org.evenfall.publish;

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
import java.security.MessageDigest;
import java.security.Signature;
import java.security.cert.CertificateFactory;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.xml.DomXmpParser;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.ASN1OctetString;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.cms.ContentInfo;
import org.bouncycastle.asn1.cms.SignedData;
import org.bouncycastle.asn1.cms.SignerInfo;
import org.evenfall.card.CardContent;
import org.evenfall.card.CardPdf;
import org.evenfall.card.CardSamples;
import org.evenfall.page.PagePicture;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.sign.PdfVerifier;
import org.evenfall.sign.SigningKey;
import org.evenfall.sign.SigningKeys;
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

/** The signed card as other programs read it: validators of PDF/A, PDF/UA and signatures, a QR reader. */
class CardTest {

    private static final Instant WHEN = CardSamples.WHEN;
    private static SigningKey key;
    private static Setup demo;

    @BeforeAll
    static void once() throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        key = SigningKeys.make("A. Marlow", "farm manager", WHEN);
        demo = CardSamples.demo();
    }

    private static CardContent content(Paper paper) throws Exception {
        return CardSamples.of(paper, CardLanguage.EN, key.code());
    }

    private static byte[] signed() throws Exception {
        return SignedCards.of(Paper.A5_LANDSCAPE, key);
    }

    /** pdfsig of poppler-utils; CI installs it, and there the test fails without it. */
    @Test
    void popplerAgrees(@TempDir Path folder) throws Exception {
        boolean installed =
                new ProcessBuilder("sh", "-c", "command -v pdfsig").start().waitFor() == 0;
        if (System.getenv("CI") == null) {
            assumeTrue(installed, "SKIPPED: pdfsig is not installed; apt-get install poppler-utils runs this check");
        }
        assertThat(installed).as("pdfsig is installed in CI").isTrue();
        byte[] card = signed();
        assertThat(pdfsig(card, folder))
                .contains("Signature is Valid")
                .contains("ETSI.CAdES.detached")
                .contains("Total document signed");
        byte[] changed = card.clone();
        changed[900] ^= 1;
        assertThat(pdfsig(changed, folder)).doesNotContain("Signature is Valid");
    }

    /**
     * The same by the platform's own classes, without those that sign and verify here: the ranges are read from the bytes
     * by a pattern, the digest and the signature over the attributes are computed anew (RFC 5652, 5.4).
     */
    @Test
    void thePlatformAgrees() throws Exception {
        byte[] card = signed();
        assertThat(fits(card)).isTrue();
        byte[] changed = card.clone();
        changed[900] ^= 1;
        assertThat(fits(changed)).isFalse();
    }

    private static boolean fits(byte[] card) throws Exception {
        String text = new String(card, StandardCharsets.ISO_8859_1);
        Matcher range = Pattern.compile("/ByteRange \\[0 (\\d+) (\\d+) (\\d+)").matcher(text);
        assertThat(range.find()).isTrue();
        int gap = Integer.parseInt(range.group(1));
        int second = Integer.parseInt(range.group(2));
        assertThat(second + Integer.parseInt(range.group(3))).isEqualTo(card.length);
        SignedData signed = SignedData.getInstance(
                ContentInfo.getInstance(HexFormat.of().parseHex(text.substring(gap + 1, second - 1)))
                        .getContent());
        SignerInfo signer = SignerInfo.getInstance(signed.getSignerInfos().getObjectAt(0));
        Attribute digest = new AttributeTable(signer.getAuthenticatedAttributes()).get(CMSAttributes.messageDigest);
        MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
        sha256.update(card, 0, gap);
        sha256.update(card, second, card.length - second);
        boolean sameDigest = Arrays.equals(
                sha256.digest(),
                ASN1OctetString.getInstance(digest.getAttrValues().getObjectAt(0))
                        .getOctets());
        Signature rsa = Signature.getInstance("SHA256withRSA");
        rsa.initVerify(CertificateFactory.getInstance("X.509")
                .generateCertificate(new ByteArrayInputStream(signed.getCertificates()
                        .getObjectAt(0)
                        .toASN1Primitive()
                        .getEncoded())));
        rsa.update(signer.getAuthenticatedAttributes().getEncoded(ASN1Encoding.DER));
        return rsa.verify(signer.getEncryptedDigest().getOctets()) && sameDigest;
    }

    /** Wherever a byte of the card is changed in its signed parts; more places are tried in the tests of the room sign. */
    @Test
    void aChangedByteIsDetectedWhereverItIsSigned() throws Exception {
        byte[] card = signed();
        int[] range;
        try (PDDocument document = Loader.loadPDF(card)) {
            range = document.getSignatureDictionaries().get(0).getByteRange();
        }
        for (int at = 0; at < card.length; at += 411) {
            if (at < range[1] || at >= range[2]) {
                byte[] changed = card.clone();
                changed[at] ^= (byte) (at % 2 == 0 ? 0x01 : 0x20);
                assertThat(unchanged(changed)).as("byte " + at).isFalse();
            }
        }
        assertThat(unchanged(card)).isTrue();
    }

    private static boolean unchanged(byte[] card) {
        try {
            return PdfVerifier.verify(card, Set.of()).unchanged();
        } catch (IOException damaged) {
            return false;
        }
    }

    private static String pdfsig(byte[] card, Path folder) throws Exception {
        Path file = Files.write(folder.resolve("card.pdf"), card);
        Process process = new ProcessBuilder("pdfsig", file.toString())
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return output;
    }

    /** ISO 19005-2 level B, by the validation model of veraPDF; the same without its colour profile must fail. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void theSignedCardIsArchivable(Paper paper) throws Exception {
        byte[] card = SignedCards.of(paper, key);
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
        byte[] card = SignedCards.of(paper, key);
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

    /** Names in letters that the first font lacks, warnings, missing parts, a finding only: archivable and tagged all the same. */
    @Test
    void everyContentIsArchivableAndTagged() throws Exception {
        Random random = new Random(19005);
        List<CardContent> contents = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            contents.add(CardSamples.seeded(random));
        }
        Setup far = demo.withStart(demo.start().withTramlineWidth(new EnteredQuantity("54", Unit.M)))
                .withMatch(demo.match().withTrayTestOnly(YesNo.NO));
        contents.add(CardSamples.of(far, key.code()));
        assertThat(contents.get(6).sheet().findingOnly()).isTrue();
        for (CardContent content : contents) {
            byte[] card = SignedCards.of(content, key);
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

    /** Title, program, times and language are the same in the document information and in the metadata (ISO 19005-2, 6.6). */
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
                PagePicture.render(CardPdf.draw(content, WHEN), 100).get(1);
        String text = decode(page);
        assertThat(text).isEqualTo(content.code().text());
        assertThat(text).contains("Opening left: 27.5").contains("174 kg/ha");
    }

    /** As by a phone in a dim cab: blurred, turned by 7 degrees, darkened. */
    @Test
    void aPhoneReadsItTurnedBlurredAndInTheDark() throws Exception {
        CardContent content = content(Paper.A5_LANDSCAPE);
        BufferedImage page =
                PagePicture.render(CardPdf.draw(content, WHEN), 200).get(1);
        BufferedImage turned =
                new BufferedImage(page.getWidth() + 400, page.getHeight() + 400, BufferedImage.TYPE_INT_RGB);
        java.awt.Graphics2D pen = turned.createGraphics();
        pen.setColor(java.awt.Color.LIGHT_GRAY);
        pen.fillRect(0, 0, turned.getWidth(), turned.getHeight());
        pen.setRenderingHint(
                java.awt.RenderingHints.KEY_INTERPOLATION, java.awt.RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.rotate(Math.toRadians(7), turned.getWidth() / 2.0, turned.getHeight() / 2.0);
        pen.drawImage(page, 200, 200, null);
        pen.dispose();
        float[] blur = new float[9];
        Arrays.fill(blur, 1f / 9);
        BufferedImage blurred =
                new java.awt.image.ConvolveOp(new java.awt.image.Kernel(3, 3, blur)).filter(turned, null);
        BufferedImage dark = new java.awt.image.RescaleOp(0.35f, 5, null).filter(blurred, null);
        assertThat(decode(dark)).isEqualTo(content.code().text());
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
