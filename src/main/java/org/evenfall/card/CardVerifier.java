package org.evenfall.card;

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

/** Checks the signature of a card against the file's own bytes. */
public final class CardVerifier {

    private CardVerifier() {}

    /**
     * @param file the PDF file's bytes
     * @param knownCodes short codes of the keys known here
     * @throws IOException when the bytes are no PDF that can be read
     */
    public static VerifyResult verify(byte[] file, Set<String> knownCodes) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            List<PDSignature> signatures = document.getSignatureDictionaries();
            if (signatures.isEmpty()) {
                return VerifyResult.UNSIGNED;
            }
            // a card is signed once; whatever comes after its first signature was added
            PDSignature first = signatures.stream()
                    .min(Comparator.comparingLong(CardVerifier::end))
                    .orElseThrow();
            return verify(file, first, knownCodes);
        } catch (RuntimeException broken) {
            throw new IOException("the file is damaged", broken);
        }
    }

    /** How far into the file a signature reaches; one without a proper range comes first, and fails. */
    private static long end(PDSignature signature) {
        int[] range = signature.getByteRange();
        return range == null || range.length != 4 ? -1 : (long) range[2] + range[3];
    }

    private static VerifyResult verify(byte[] file, PDSignature signature, Set<String> knownCodes) {
        int[] range = signature.getByteRange();
        byte[] contents = contents(file, range);
        X509Certificate signer = contents.length == 0 ? null : Cms.signer(signed(file, range), contents);
        boolean toTheEnd = contents.length > 0 && range[2] + range[3] == file.length;
        String name = signature.getName() == null ? "" : signature.getName();
        String when = signature.getSignDate() == null
                ? ""
                : signature.getSignDate().toInstant().toString();
        String code = signer == null ? "" : SigningKey.code(signer);
        return new VerifyResult(
                true,
                signer != null && toTheEnd,
                contents.length > 0 && !toTheEnd,
                name,
                signer == null ? "" : SigningKey.name(signer),
                code,
                knownCodes.contains(code),
                when);
    }

    /** The signature's bytes out of the gap between the two signed parts; empty when the gap is not as it must be. */
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
            return new byte[0];
        }
        try {
            String hex = new String(file, range[1] + 1, range[2] - range[1] - 2, StandardCharsets.US_ASCII);
            byte[] padded = HexFormat.of().parseHex(hex);
            int end = derLength(padded);
            for (int i = end; i < padded.length; i++) {
                if (padded[i] != 0) {
                    return new byte[0];
                }
            }
            return Arrays.copyOf(padded, end);
        } catch (IllegalArgumentException notHex) {
            return new byte[0];
        }
    }

    /** Length of the DER value that begins here, head included. */
    private static int derLength(byte[] der) {
        if (der.length < 6 || der[0] != 0x30) {
            throw new IllegalArgumentException("no signature");
        }
        int first = der[1] & 0xFF;
        if (first < 0x80) {
            return first + 2;
        }
        int bytes = first & 0x7F;
        long length = 0;
        for (int i = 0; i < bytes && i < 4; i++) {
            length = (length << 8) | (der[2 + i] & 0xFF);
        }
        if (bytes == 0 || bytes > 4 || length + 2 + bytes > der.length) {
            throw new IllegalArgumentException("no signature");
        }
        return (int) length + 2 + bytes;
    }

    private static byte[] signed(byte[] file, int[] range) {
        byte[] signed = new byte[range[1] + range[3]];
        System.arraycopy(file, 0, signed, 0, range[1]);
        System.arraycopy(file, range[2], signed, range[1], range[3]);
        return signed;
    }
}
