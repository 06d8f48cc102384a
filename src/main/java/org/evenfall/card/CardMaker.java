package org.evenfall.card;

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

/** A signed card: the pages saved whole, then signed by an incremental update (PAdES baseline B, ETSI EN 319 142-1). */
public final class CardMaker {

    /** Signatures of an elliptic curve differ by a few bytes in length. */
    private static final int ROOM_TO_VARY = 16;

    private CardMaker() {}

    public static byte[] make(CardContent content, SigningKey key, String signedBy, Instant when) throws IOException {
        return sign(CardPdf.draw(content, when), key, signedBy, when);
    }

    static byte[] sign(byte[] pages, SigningKey key, String signedBy, Instant when) throws IOException {
        try (PDDocument document = Loader.loadPDF(pages);
                SignatureOptions options = new SignatureOptions()) {
            document.setDocumentId(when.getEpochSecond());
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(COSName.getPDFName("ETSI.CAdES.detached"));
            signature.setName(signedBy);
            signature.setSignDate(GregorianCalendar.from(ZonedDateTime.ofInstant(when, ZoneOffset.UTC)));
            options.setPreferredSignatureSize(room(key));
            document.addSignature(signature, data -> Cms.sign(data.readAllBytes(), key), options);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.saveIncremental(bytes);
            return bytes.toByteArray();
        }
    }

    /**
     * Exactly as much room as the signature takes: some validators refuse zeros behind it. Its length does not depend on
     * what is signed.
     */
    private static int room(SigningKey key) throws IOException {
        int length = Cms.sign(new byte[0], key).length;
        return key.privateKey().getAlgorithm().equals("RSA") ? length : length + ROOM_TO_VARY;
    }
}
