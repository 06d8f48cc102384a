package org.evenfall.sign;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.cert.X509Certificate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.ASN1InputStream;
import org.bouncycastle.asn1.ASN1Primitive;

/** Checks the signature of a PDF file against the file's own bytes. */
public final class PdfVerifier {

    private static final byte[] NONE = new byte[0];

    private PdfVerifier() {}

    /**
     * Whether the file is as it was signed, and by which key. Of several signatures the first counts: a file is signed
     * once here, and whatever follows its first signature was added.
     *
     * @param file bytes of the PDF file
     * @param knownCodes short codes of the keys known here
     * @throws IOException when the bytes are no PDF file that can be read
     */
    public static VerifyResult verify(byte[] file, Set<String> knownCodes) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            List<PDSignature> signatures = document.getSignatureDictionaries();
            if (signatures.isEmpty()) {
                return VerifyResult.UNSIGNED;
            }
            PDSignature first = signatures.stream()
                    .min(Comparator.comparingLong(PdfVerifier::end))
                    .orElseThrow();
            return verify(file, first, knownCodes);
        } catch (RuntimeException broken) {
            throw new IOException("the file is damaged", broken);
        }
    }

    /** End of the signed bytes; -1 for a signature without a proper range, which then comes first and fails. */
    private static long end(PDSignature signature) {
        int[] range = signature.getByteRange();
        return range == null || range.length != 4 ? -1 : (long) range[2] + range[3];
    }

    private static VerifyResult verify(byte[] file, PDSignature signature, Set<String> knownCodes) throws IOException {
        byte[] contents = contents(file, signature.getByteRange());
        boolean readable = contents.length > 0;
        X509Certificate signer = readable ? Cms.signer(signature.getSignedContent(file), contents) : null;
        boolean toTheEnd = readable && end(signature) == file.length;
        String code = signer == null ? "" : SigningKey.code(signer);
        return new VerifyResult(
                true,
                signer != null && toTheEnd,
                readable && !toTheEnd,
                signature.getName() == null ? "" : signature.getName(),
                signer == null ? "" : SigningKey.name(signer),
                code,
                knownCodes.contains(code),
                signature.getSignDate() == null
                        ? ""
                        : signature.getSignDate().toInstant().toString());
    }

    /**
     * The signature between the two signed parts; empty unless the parts are the whole file up to their end, without
     * exactly one hexadecimal string between them.
     */
    private static byte[] contents(byte[] file, int[] range) {
        if (range == null
                || range.length != 4
                || range[0] != 0
                || range[1] <= 0
                || range[2] <= range[1] + 2
                || range[3] <= 0
                || (long) range[2] + range[3] > file.length
                || file[range[1]] != '<'
                || file[range[2] - 1] != '>') {
            return NONE;
        }
        try {
            String hex = new String(file, range[1] + 1, range[2] - range[1] - 2, StandardCharsets.US_ASCII);
            return withoutPadding(HexFormat.of().parseHex(hex));
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
