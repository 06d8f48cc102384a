package org.evenfall.sign;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;

/** Signs a PDF file by an incremental update (PAdES baseline B, ETSI EN 319 142-1). */
public final class PdfSigner {

    /** Signatures of an elliptic curve differ by a few bytes in length, since DER drops leading zeros. */
    private static final int EC_VARIATION_BYTES = 16;

    private PdfSigner() {}

    /**
     * The signed file. The same file, RSA key and time give the same bytes.
     *
     * @param pdf bytes of the file
     * @param key key
     * @param signedBy name written into the signature
     * @param when time written into the signature
     * @throws IOException when the bytes are no PDF file or the key cannot sign
     */
    public static byte[] sign(byte[] pdf, SigningKey key, String signedBy, Instant when) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf);
                SignatureOptions options = new SignatureOptions()) {
            document.setDocumentId(when.getEpochSecond());
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(COSName.getPDFName("ETSI.CAdES.detached"));
            signature.setName(signedBy);
            signature.setSignDate(GregorianCalendar.from(ZonedDateTime.ofInstant(when, ZoneOffset.UTC)));
            options.setPreferredSignatureSize(reservedBytes(key));
            document.addSignature(signature, data -> Cms.sign(data.readAllBytes(), key), options);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.saveIncremental(bytes);
            return bytes.toByteArray();
        }
    }

    /**
     * Room for the signature, exactly as much as it takes where that is known: some validators refuse zeros behind it. The
     * length does not depend on the data.
     */
    private static int reservedBytes(SigningKey key) throws IOException {
        int length = Cms.sign(new byte[0], key).length;
        return key.privateKey().getAlgorithm().equals("RSA") ? length : length + EC_VARIATION_BYTES;
    }
}
