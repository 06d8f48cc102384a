package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A first signature stays found in the bytes, whatever a later update of the file does to hide it. */
class HiddenSignatureTest {

    private static SigningKey key;
    private static byte[] file;

    @BeforeAll
    static void once() throws Exception {
        key = SamplePdf.foreign("RSA", 2048, "CN=A. Marlow");
        file = SamplePdf.signed(key);
    }

    private static VerifyResult verify(byte[] bytes) throws IOException {
        return PdfVerifier.verify(bytes, Set.of(key.code()));
    }

    /** The signed file with an update that drops its form and paints over the first page. */
    private static byte[] hidden() throws Exception {
        try (PDDocument document = Loader.loadPDF(file)) {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.ACRO_FORM);
            document.getDocumentCatalog().getCOSObject().setNeedToBeUpdated(true);
            try (PDPageContentStream paint = new PDPageContentStream(
                    document, document.getPage(0), PDPageContentStream.AppendMode.APPEND, false)) {
                paint.addRect(0, 0, 200, 300);
                paint.fill();
            }
            document.getPage(0).getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.saveIncremental(bytes);
            assertThat(Arrays.equals(bytes.toByteArray(), 0, file.length, file, 0, file.length))
                    .isTrue();
            return bytes.toByteArray();
        }
    }

    private static VerifyResult added() {
        return new VerifyResult(true, false, true, "A. Marlow", "A. Marlow", key.code(), true, "2027-03-18T10:00:00Z");
    }

    @Test
    void anUpdateThatDropsTheFormIsAnAddition() throws Exception {
        byte[] hidden = hidden();
        try (PDDocument document = Loader.loadPDF(hidden)) {
            assertThat(document.getSignatureDictionaries()).isEmpty();
        }
        assertThat(verify(hidden)).isEqualTo(added());
    }

    @Test
    void aSecondSignatureOverTheUpdateHidesNothing() throws Exception {
        SigningKey other = SamplePdf.foreign("RSA", 2048, "CN=A. Marlow");
        byte[] twice = PdfSigner.sign(hidden(), other, "A. Marlow", SamplePdf.WHEN.plusSeconds(60));
        try (PDDocument document = Loader.loadPDF(twice)) {
            assertThat(document.getSignatureDictionaries()).hasSize(1);
        }
        assertThat(verify(twice)).isEqualTo(added());
    }

    /** A first signature that was broken before the second one is still in the form. */
    @Test
    void aBrokenFirstSignatureIsAnAddition() throws Exception {
        int[] range = SamplePdf.range(file);
        byte[] broken = file.clone();
        broken[range[1] + 9] = 'x';
        SigningKey other = SamplePdf.foreign("RSA", 2048, "CN=B. Other");
        byte[] twice = PdfSigner.sign(broken, other, "B. Other", SamplePdf.WHEN.plusSeconds(60));
        assertThat(verify(twice)).matches(r -> r.signed() && !r.unchanged() && r.appended());
    }

    private static byte[] titled(String title) throws Exception {
        try (PDDocument document = Loader.loadPDF(SamplePdf.unsigned())) {
            document.getDocumentInformation().setTitle(title);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        }
    }

    /** A text that only looks like a range does not make a signed file a changed one. */
    @Test
    void aTextLikeARangeIsNoSignature() throws Exception {
        for (String title : new String[] {
            "/ByteRange", "/ByteRange [", "/ByteRange [0 10 20 30]", "/ByteRange [0 1 2 3 4]", "%%EOF startxref"
        }) {
            byte[] unsigned = titled(title);
            assertThat(new String(unsigned, StandardCharsets.ISO_8859_1)).contains(title);
            assertThat(verify(PdfSigner.sign(unsigned, key, "A. Marlow", SamplePdf.WHEN)))
                    .as(title)
                    .matches(VerifyResult::unchanged);
        }
        assertThat(verify(titled("/ByteRange"))).isEqualTo(VerifyResult.UNSIGNED);
        byte[] hint = titled("/ByteRange [0 10 20 30]");
        assertThatThrownBy(() -> verify(hint)).isInstanceOf(IOException.class);
    }

    /** Time grows with the length of the file, not with the number of ranges times the length of what they leave out. */
    @Test
    void manyRangesTakeLinearTime() throws Exception {
        String gap = "<" + "A".repeat(9_000_000) + ">";
        StringBuilder text = new StringBuilder("%PDF-1.6\n").append(gap).append('\n');
        int start = 9;
        int end = start + gap.length();
        while (text.length() < 20_000_000) {
            text.append("/ByteRange [0 ")
                    .append(start)
                    .append(' ')
                    .append(end + 1)
                    .append(" 9]\n");
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.US_ASCII);
        Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertThat(SignatureRange.allIn(bytes)).isEmpty());
    }
}
