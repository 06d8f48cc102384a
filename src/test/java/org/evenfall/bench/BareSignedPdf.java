package org.evenfall.bench;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;

/** The least a signed page takes with the libraries of the card: one line of text, signed as in their examples. */
final class BareSignedPdf {

    private BareSignedPdf() {}

    static byte[] of(PrivateKey key, X509Certificate certificate) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        // an update can be signed, a new file cannot
        try (PDDocument document = Loader.loadPDF(page())) {
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(PDSignature.SUBFILTER_ADBE_PKCS7_DETACHED);
            document.addSignature(signature, data -> sign(data, key, certificate));
            document.saveIncremental(bytes);
        }
        return bytes.toByteArray();
    }

    private static byte[] page() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                stream.beginText();
                stream.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 14);
                stream.newLineAtOffset(30, 200);
                stream.showText("one line of text");
                stream.endText();
            }
            document.save(bytes);
        }
        return bytes.toByteArray();
    }

    private static byte[] sign(InputStream data, PrivateKey key, X509Certificate certificate) {
        try {
            CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
            generator.addSignerInfoGenerator(
                    new JcaSignerInfoGeneratorBuilder(new JcaDigestCalculatorProviderBuilder().build())
                            .build(new JcaContentSignerBuilder("SHA256withRSA").build(key), certificate));
            generator.addCertificates(new JcaCertStore(List.of(certificate)));
            return generator
                    .generate(new CMSProcessableByteArray(data.readAllBytes()), false)
                    .getEncoded();
        } catch (Exception broken) {
            throw new IllegalStateException(broken);
        }
    }
}
