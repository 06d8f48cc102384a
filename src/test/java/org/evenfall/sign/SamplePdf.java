package org.evenfall.sign;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Instant;
import java.util.Date;
import java.util.HexFormat;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** A small file of two pages, and invented keys of all kinds to sign it with. */
final class SamplePdf {

    static final Instant WHEN = Instant.parse("2027-03-18T10:00:00Z");

    private SamplePdf() {}

    static byte[] unsigned() throws Exception {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(1L);
            for (int page = 1; page <= 2; page++) {
                PDPage added = new PDPage(PDRectangle.A6);
                document.addPage(added);
                try (PDPageContentStream stream = new PDPageContentStream(document, added)) {
                    stream.beginText();
                    stream.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 14);
                    stream.newLineAtOffset(30, 200);
                    stream.showText("Opening 27.5, page " + page);
                    stream.endText();
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    static byte[] signed(SigningKey key) throws Exception {
        return PdfSigner.sign(unsigned(), key, "A. Marlow", WHEN);
    }

    static int[] range(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getSignatureDictionaries().get(0).getByteRange();
        }
    }

    /** The signed file with another text for its byte range, of the same length; the signature is not made again. */
    static byte[] withRange(byte[] pdf, String range) {
        String text = new String(pdf, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf("/ByteRange");
        int end = text.indexOf(']', at) + 1;
        // the room that was reserved for larger numbers
        while (text.charAt(end) == ' ') {
            end++;
        }
        String other = "/ByteRange [" + range + "]";
        int pad = end - at - other.length();
        if (pad < 0) {
            throw new IllegalArgumentException("no room for the range " + range);
        }
        return (text.substring(0, at) + other + " ".repeat(pad) + text.substring(end))
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    /** The file with other bytes for its signature, as hexadecimal digits filled up with zeros. */
    static byte[] withSignature(byte[] pdf, int[] place, byte[] signature) {
        byte[] changed = pdf.clone();
        byte[] hex = HexFormat.of().withUpperCase().formatHex(signature).getBytes(StandardCharsets.US_ASCII);
        int room = place[2] - place[1] - 2;
        if (hex.length > room) {
            throw new IllegalArgumentException("no room for the signature");
        }
        for (int i = 0; i < room; i++) {
            changed[place[1] + 1 + i] = i < hex.length ? hex[i] : (byte) '0';
        }
        return changed;
    }

    /** A key that was not made here. */
    static SigningKey foreign(String algorithm, int bits, String subject) throws Exception {
        KeyPairGenerator generator = KeyPairGenerator.getInstance(algorithm);
        if (algorithm.equals("EC")) {
            generator.initialize(new ECGenParameterSpec("secp" + bits + "r1"));
        } else {
            generator.initialize(bits);
        }
        KeyPair pair = generator.generateKeyPair();
        X509Certificate certificate = certificate(pair, algorithm, subject);
        return new SigningKey(pair.getPrivate(), certificate, List.of(certificate));
    }

    static X509Certificate certificate(KeyPair pair, String algorithm, String subject) throws Exception {
        X500Name name = new X500Name(subject);
        return new JcaX509CertificateConverter()
                .getCertificate(new JcaX509v3CertificateBuilder(
                                name,
                                BigInteger.TEN,
                                Date.from(WHEN),
                                Date.from(WHEN.plusSeconds(9_000_000)),
                                name,
                                pair.getPublic())
                        .build(new JcaContentSignerBuilder(algorithm.equals("EC") ? "SHA256withECDSA" : "SHA256withRSA")
                                .build(pair.getPrivate())));
    }
}
