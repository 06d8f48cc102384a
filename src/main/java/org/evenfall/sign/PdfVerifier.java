package org.evenfall.sign;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.security.cert.X509Certificate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.ASN1InputStream;
import org.bouncycastle.asn1.ASN1Primitive;
import org.jspecify.annotations.Nullable;

/**
 * Checks the signature of a PDF file against the file's own bytes. Signatures are looked for in the bytes, not only in the
 * form of the document: a later update of the file can drop the form, but not the bytes that were signed.
 */
public final class PdfVerifier {

    private static final byte[] NONE = new byte[0];

    /** The digits as a signature is written. */
    private static final HexFormat DIGITS = HexFormat.of().withUpperCase();

    private PdfVerifier() {}

    /**
     * Whether the file is as it was signed, and by which key. Of several signatures the first counts: a file is signed
     * once here, and whatever follows its first signature was added.
     *
     * @param file bytes of the PDF file
     * @param knownCodes short codes of the keys known here
     * @throws IOException when the bytes are no whole PDF file that can be read
     */
    public static VerifyResult verify(byte[] file, Set<String> knownCodes) throws IOException {
        if (!PdfBytes.begins(file)) {
            throw new IOException("the file is no PDF file");
        }
        if (PdfBytes.hasTooManyObjects(file)) {
            throw new IOException("the file has more objects than a card");
        }
        try {
            List<SignatureRange> ranges = SignatureRange.allIn(file);
            return ranges.isEmpty() ? withoutRange(file) : first(file, ranges.get(0), knownCodes);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError broken) {
            // the reader of PDF files fails in these ways on files that are built to overload it
            throw new IOException("the file is damaged", broken);
        }
    }

    /** A file without a sound range: not signed when it is whole and nothing hints at a signature. */
    private static VerifyResult withoutRange(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            List<PDSignature> signatures = SignatureFields.of(document);
            if (!PdfBytes.ends(file)) {
                throw new IOException("the file was cut short");
            }
            if (!signatures.isEmpty()) {
                return result(signatures.get(0), null, false, false, Set.of());
            }
            if (SignatureFields.nameOne(document) || !RangeText.allIn(file).isEmpty()) {
                throw new IOException("the file has a part of a signature");
            }
            return VerifyResult.UNSIGNED;
        }
    }

    /** The answer of the range that ends first, and of the file as it was up to there. */
    private static VerifyResult first(byte[] file, SignatureRange range, Set<String> knownCodes) throws IOException {
        boolean more = range.end() < file.length;
        byte[] revision = more ? Arrays.copyOf(file, range.end()) : file;
        try (PDDocument document = Loader.loadPDF(revision)) {
            List<PDSignature> signatures = SignatureFields.of(document);
            PDSignature own = signatures.stream()
                    .filter(signature -> range.matches(signature.getByteRange()))
                    .findFirst()
                    .orElse(null);
            byte[] contents = contents(range.digits(file));
            X509Certificate signer = contents.length == 0 ? null : Cms.signer(range.signedBytes(file), contents);
            boolean appended = more || signatures.size() > 1;
            return result(own, signer, own != null && !more, appended, knownCodes);
        }
    }

    private static VerifyResult result(
            @Nullable PDSignature signature,
            @Nullable X509Certificate signer,
            boolean toTheEnd,
            boolean appended,
            Set<String> knownCodes) {
        String code = signer == null ? "" : SigningKey.code(signer);
        return new VerifyResult(
                true,
                signer != null && toTheEnd && !appended,
                appended,
                signature == null || signature.getName() == null ? "" : signature.getName(),
                signer == null ? "" : SigningKey.name(signer),
                code,
                knownCodes.contains(code),
                signature == null || signature.getSignDate() == null
                        ? ""
                        : signature.getSignDate().toInstant().toString());
    }

    /** The bytes of a signature; empty unless they are written in capital digits. */
    private static byte[] contents(String digits) {
        try {
            byte[] padded = DIGITS.parseHex(digits);
            return DIGITS.formatHex(padded).equals(digits) ? withoutPadding(padded) : NONE;
        } catch (IOException | IllegalArgumentException noValue) {
            return NONE;
        }
    }

    /**
     * The one DER value at the begin; empty when anything but zeros follows it, or when it has another encoding than DER
     * (ETSI EN 319 142-1, 5.1).
     */
    private static byte[] withoutPadding(byte[] padded) throws IOException {
        ByteArrayInputStream bytes = new ByteArrayInputStream(padded);
        ASN1Primitive value = new ASN1InputStream(bytes, padded.length).readObject();
        int end = padded.length - bytes.available();
        for (byte behind : bytes.readAllBytes()) {
            if (behind != 0) {
                return NONE;
            }
        }
        byte[] contents = Arrays.copyOf(padded, end);
        return value != null && Arrays.equals(contents, value.getEncoded(ASN1Encoding.DER)) ? contents : NONE;
    }
}
