package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.ASN1Sequence;
import org.bouncycastle.asn1.BERSequence;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is done to a signed file is detected, wherever it is done. */
class PdfVerifierTest {

    private static SigningKey key;
    private static byte[] file;
    private static int[] range;

    @BeforeAll
    static void once() throws Exception {
        key = SigningKeys.make("A. Marlow", "farm manager", SamplePdf.WHEN);
        file = SamplePdf.signed(key);
        range = SamplePdf.range(file);
    }

    private static VerifyResult verify(byte[] bytes) throws IOException {
        return PdfVerifier.verify(bytes, Set.of(key.code()));
    }

    private static boolean unchanged(byte[] bytes) {
        try {
            return verify(bytes).unchanged();
        } catch (IOException damaged) {
            return false;
        }
    }

    @Test
    void aSignedFileIsUnchangedAndByAKnownKey() throws Exception {
        assertThat(verify(file))
                .isEqualTo(new VerifyResult(
                        true, true, false, "A. Marlow", "A. Marlow", key.code(), true, "2027-03-18T10:00:00Z"));
        assertThat(PdfVerifier.verify(file, Set.of()).knownKey()).isFalse();
        assertThat(verify(SamplePdf.unsigned())).isEqualTo(VerifyResult.UNSIGNED);
    }

    @Test
    void theSameFileKeyAndTimeGiveTheSameBytes() throws Exception {
        assertThat(SamplePdf.signed(key)).isEqualTo(file);
    }

    /** Every third byte of the signed parts, two bits in turn: every kind of place in the file. */
    @Test
    void aChangedByteIsDetectedWhereverItIsSigned() {
        for (int at = 0; at < file.length; at += 3) {
            if (at >= range[1] && at < range[2]) {
                continue;
            }
            byte[] changed = file.clone();
            changed[at] ^= (byte) (at % 2 == 0 ? 0x01 : 0x20);
            assertThat(unchanged(changed)).as("byte " + at).isFalse();
        }
    }

    @Test
    void whatIsAppendedIsDetected() throws Exception {
        for (String more : new String[] {"\n% one more comment\n", " ", "\0", "%%EOF\n"}) {
            byte[] longer = Arrays.copyOf(file, file.length + more.length());
            System.arraycopy(more.getBytes(StandardCharsets.US_ASCII), 0, longer, file.length, more.length());
            assertThat(verify(longer))
                    .isEqualTo(new VerifyResult(
                            true, false, true, "A. Marlow", "A. Marlow", key.code(), true, "2027-03-18T10:00:00Z"));
        }
        try (PDDocument document = Loader.loadPDF(file)) {
            document.getDocumentCatalog().setLanguage("de");
            document.getDocumentCatalog().getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream update = new ByteArrayOutputStream();
            document.saveIncremental(update);
            assertThat(verify(update.toByteArray())).matches(r -> !r.unchanged() && r.appended());
        }
    }

    /** Who alters a file and signs it again cannot hide that it had been signed before. */
    @Test
    void aSecondSignatureCountsAsAppended() throws Exception {
        SigningKey other = SigningKeys.make("B. Other", "", SamplePdf.WHEN);
        byte[] twice = PdfSigner.sign(file, other, "B. Other", SamplePdf.WHEN.plusSeconds(60));
        assertThat(PdfVerifier.verify(twice, Set.of(key.code(), other.code())))
                .matches(r -> r.signed()
                        && !r.unchanged()
                        && r.appended()
                        && r.keyName().equals("A. Marlow"));
    }

    @Test
    void aSwappedPageIsDetected() throws Exception {
        try (PDDocument document = Loader.loadPDF(file)) {
            PDPage first = document.getPage(0);
            document.removePage(0);
            document.addPage(first);
            ByteArrayOutputStream saved = new ByteArrayOutputStream();
            document.save(saved);
            assertThat(unchanged(saved.toByteArray())).isFalse();
        }
    }

    @Test
    void aFileCutShortIsNeverUnchanged() {
        for (int length = 0; length < file.length; length += 97) {
            assertThat(unchanged(Arrays.copyOf(file, length)))
                    .as("cut at " + length)
                    .isFalse();
        }
        assertThat(unchanged(Arrays.copyOf(file, file.length - 1))).isFalse();
        assertThatThrownBy(() -> verify(new byte[0])).isInstanceOf(IOException.class);
    }

    /** Another range in a file whose signature was not made again. */
    @Test
    void anAlteredRangeIsDetected() {
        for (String other : new String[] {
            "0 " + range[1] + " " + range[2] + " " + (range[3] - 1),
            "1 " + range[1] + " " + range[2] + " " + range[3],
            "0 10 " + range[2] + " " + range[3],
            "0 " + range[1] + " " + range[1] + " " + range[3],
            "0 0 0 0"
        }) {
            assertThat(unchanged(SamplePdf.withRange(file, other))).as(other).isFalse();
        }
    }

    /**
     * A file that leaves something out of its range and is properly signed over the rest: offsets from the true range. Only
     * the first is the whole file but for one hexadecimal string.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 0, true",
        "1, -1, 0, 0, false",
        "0, -1, 0, 0, false",
        "0, -40, 0, 0, false",
        "0, 1, 0, 0, false",
        "0, 0, 1, -1, false",
        "0, 0, 40, -40, false",
        "0, 0, -1, 1, false",
        "0, 0, 0, -1, false",
        "0, 0, 0, -40, false"
    })
    void aRangeThatLeavesSomethingOutIsRefused(int start, int length, int second, int rest, boolean whole)
            throws Exception {
        int[] other = {start, range[1] + length, range[2] + second, range[3] + rest};
        byte[] forged = SamplePdf.withRange(file, other[0] + " " + other[1] + " " + other[2] + " " + other[3]);
        byte[] covered = Arrays.copyOf(Arrays.copyOfRange(forged, other[0], other[0] + other[1]), other[1] + other[3]);
        System.arraycopy(forged, other[2], covered, other[1], other[3]);
        byte[] signed = SamplePdf.withSignature(forged, range, Cms.sign(covered, key));
        assertThat(unchanged(signed)).isEqualTo(whole);
    }

    /** Ranges that are none. Nothing is read outside the file, and nothing is taken for a signature. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 0 0 0",
                "0 -1 2 3",
                "0 10 11 20",
                "0 10 12 20",
                "0 10 5 20",
                "0 10 2147483600 100",
                "0 10 20 0",
                "0 10 20 -5",
                "0 10 20",
                "0 10 20 30 40",
                ""
            })
    void aRangeThatIsNoneIsASignatureThatDoesNotFit(String other) throws Exception {
        assertThat(verify(SamplePdf.withRange(file, other)))
                .isEqualTo(new VerifyResult(true, false, false, "A. Marlow", "", "", false, "2027-03-18T10:00:00Z"));
    }

    /** A range one byte longer than the file. */
    @Test
    void aRangeBeyondTheFileIsRefused() throws Exception {
        byte[] longer = SamplePdf.withRange(file, "0 " + range[1] + " " + range[2] + " " + (range[3] + 1));
        assertThat(verify(longer)).matches(r -> r.signed() && !r.unchanged() && !r.appended());
    }

    /** The signature of a curve leaves room, which is zeros: any other byte there could hide something. */
    @Test
    void onlyZerosMayFollowTheSignature() throws Exception {
        SigningKey curve = SamplePdf.foreign("EC", 256, "CN=Saltreed group");
        byte[] signed = SamplePdf.signed(curve);
        int[] place = SamplePdf.range(signed);
        assertThat(unchanged(signed)).isTrue();
        for (int back : new int[] {2, 3, 9}) {
            assertThat(signed[place[2] - back]).isEqualTo((byte) '0');
            byte[] changed = signed.clone();
            changed[place[2] - back] = '7';
            assertThat(unchanged(changed)).as("digit " + back + " from the end").isFalse();
        }
    }

    /** The same signature with an indefinite length (BER) is not the one that was written (DER). */
    @Test
    void anotherEncodingOfTheSignatureIsRefused() throws Exception {
        byte[] covered = new byte[range[1] + range[3]];
        System.arraycopy(file, 0, covered, 0, range[1]);
        System.arraycopy(file, range[2], covered, range[1], range[3]);
        byte[] der = Cms.sign(covered, key);
        byte[] ber = new BERSequence(ASN1Sequence.getInstance(der).toArray()).getEncoded(ASN1Encoding.BER);
        assertThat(ber).isNotEqualTo(der);
        assertThat(unchanged(SamplePdf.withSignature(file, range, der))).isTrue();
        assertThat(Cms.signer(covered, der)).isEqualTo(key.certificate());
        assertThat(Cms.signer(covered, ber)).isNull();
        assertThat(unchanged(SamplePdf.withSignature(file, range, ber))).isFalse();
    }

    /** A signature of another kind, or one that holds nothing, counts as changed and is no error of the program. */
    @ParameterizedTest
    @ValueSource(strings = {"3000", "020101", "308", "00", ""})
    void anEmptySignatureIsRefused(String hex) throws Exception {
        byte[] none = java.util.HexFormat.of().parseHex(hex.length() % 2 == 0 ? hex : hex + "0");
        try (PDDocument document = Loader.loadPDF(SamplePdf.unsigned());
                SignatureOptions options = new SignatureOptions()) {
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(COSName.getPDFName("ETSI.CAdES.detached"));
            options.setPreferredSignatureSize(100);
            document.addSignature(signature, data -> none, options);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.saveIncremental(bytes);
            assertThat(verify(bytes.toByteArray()))
                    .isEqualTo(new VerifyResult(true, false, false, "", "", "", false, ""));
        }
    }
}
