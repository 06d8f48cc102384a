package org.evenfall.page;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Calendar;
import java.util.GregorianCalendar;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.schema.DublinCoreSchema;
import org.apache.xmpbox.schema.PDFAIdentificationSchema;
import org.apache.xmpbox.schema.XMPBasicSchema;
import org.apache.xmpbox.type.BadFieldValueException;
import org.apache.xmpbox.xml.XmpSerializer;

/** Makes pages PDF/A-2b (ISO 19005-2): colour profile, equal information and metadata, language, title. */
final class Archive {

    private static final String PRODUCER = "Evenfall";

    private static final String UNIVERSAL_ACCESS = """
            <rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <pdfuaid:part>1</pdfuaid:part>
            </rdf:Description>
            <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" \
            xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
            <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
            <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
            <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
            <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
            <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>Part of ISO 14289 the file follows</pdfaProperty:description>
            </rdf:li></rdf:Seq></pdfaSchema:property>
            </rdf:li></rdf:Bag></pdfaExtension:schemas>
            </rdf:Description>
            """;

    private Archive() {}

    /**
     * Adds the colour profile, title, language and times.
     *
     * @param subject title without the program's name
     * @param language ISO 639 code
     * @param when time of creation; fractions of a second are dropped
     */
    static void mark(PDDocument document, String subject, String language, Instant when) throws IOException {
        Calendar created = GregorianCalendar.from(ZonedDateTime.ofInstant(when, ZoneOffset.UTC));
        created.set(Calendar.MILLISECOND, 0);
        String title = PRODUCER + ": " + subject;
        PDDocumentInformation info = document.getDocumentInformation();
        info.setTitle(title);
        info.setCreator(PRODUCER);
        info.setCreationDate(created);
        info.setModificationDate(created);
        document.getDocumentCatalog().setLanguage(language);
        PDViewerPreferences view = new PDViewerPreferences(new COSDictionary());
        view.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(view);
        document.getDocumentCatalog().addOutputIntent(colours(document));
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(xmp(title, language, created));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    private static PDOutputIntent colours(PDDocument document) throws IOException {
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo("sRGB IEC61966-2.1");
        intent.setOutputCondition("sRGB IEC61966-2.1");
        intent.setOutputConditionIdentifier("sRGB IEC61966-2.1");
        return intent;
    }

    /**
     * Adds the identification of PDF/UA-1 (ISO 14289-1) with the description of that property which PDF/A-2 requires. The
     * metadata library has no such schema.
     */
    private static String accessible(String xmp) {
        int end = xmp.lastIndexOf("</rdf:RDF>");
        return xmp.substring(0, end) + UNIVERSAL_ACCESS + xmp.substring(end);
    }

    private static byte[] xmp(String title, String language, Calendar created) throws IOException {
        try {
            XMPMetadata xmp = XMPMetadata.createXMPMetadata();
            PDFAIdentificationSchema archive = xmp.createAndAddPDFAIdentificationSchema();
            archive.setPart(2);
            archive.setConformance("B");
            DublinCoreSchema core = xmp.createAndAddDublinCoreSchema();
            core.setTitle(title);
            core.addLanguage(language);
            XMPBasicSchema basic = xmp.createAndAddXMPBasicSchema();
            basic.setCreatorTool(PRODUCER);
            basic.setCreateDate(created);
            basic.setModifyDate(created);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            new XmpSerializer().serialize(xmp, bytes, true);
            return accessible(bytes.toString(StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
        } catch (BadFieldValueException | TransformerException impossible) {
            throw new IOException("metadata cannot be written", impossible);
        }
    }
}
