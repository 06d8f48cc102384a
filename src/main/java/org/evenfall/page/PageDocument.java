package org.evenfall.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** A tagged PDF/A-2b document (ISO 19005-2, ISO 14289-1), drawn page by page. The same drawing gives the same bytes. */
public final class PageDocument implements AutoCloseable {

    private final PDDocument document = new PDDocument();
    private final Typefaces typefaces = new Typefaces(document);
    private final Tags tags = new Tags(document);

    /**
     * Draws one page.
     *
     * @param <R> what the drawing gives back, for example the content that did not fit
     */
    @FunctionalInterface
    public interface Drawing<R> {
        /** Draws with the pen inside the face, which is the whole page. */
        R on(Pen pen, Face face) throws IOException;
    }

    /** Adds a page and draws on it; gives back what the drawing gives. */
    public <R> R page(SheetSize sheet, Drawing<R> drawing) throws IOException {
        PDPage page = new PDPage(sheet.box());
        // tab order follows the structure (ISO 14289-1, 7.18.3)
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        document.addPage(page);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            return drawing.on(
                    new Pen(stream, typefaces, tags, page), new Face(0, 0, sheet.widthPt(), sheet.heightPt()));
        }
    }

    /**
     * The finished file; to be called once, after the last page.
     *
     * @param title title of the document
     * @param language ISO 639 code of its language
     * @param created time of creation
     * @param seed number from which the identifier of the file is made; the same content must give the same number
     */
    public byte[] finish(String title, String language, Instant created, long seed) throws IOException {
        document.setDocumentId(seed);
        tags.close();
        Archive.mark(document, title, language, created);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes, CompressParameters.NO_COMPRESSION);
        return bytes.toByteArray();
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
