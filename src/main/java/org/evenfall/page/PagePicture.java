package org.evenfall.page;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pictures of the pages of a PDF file. */
public final class PagePicture {

    private PagePicture() {}

    /**
     * Every page as a picture.
     *
     * @param pdf bytes of the file
     * @param dpi dots per inch
     * @throws IOException when the bytes are no PDF file
     */
    public static List<BufferedImage> render(byte[] pdf, float dpi) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            removeLetterMaps(document);
            PDFRenderer renderer = new PDFRenderer(document);
            List<BufferedImage> pages = new ArrayList<>();
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                pages.add(renderer.renderImageWithDPI(i, dpi, ImageType.RGB));
            }
            return pages;
        }
    }

    /**
     * Removes the map from glyphs to letters: the picture does not depend on it, and the code that reads it keeps a table of
     * all 65 536 letters, 7 MB, until the program ends.
     */
    private static void removeLetterMaps(PDDocument document) {
        for (PDPage page : document.getPages()) {
            if (page.getResources().getCOSObject().getDictionaryObject(COSName.FONT) instanceof COSDictionary fonts) {
                for (COSName name : fonts.keySet()) {
                    if (fonts.getDictionaryObject(name) instanceof COSDictionary font) {
                        font.removeItem(COSName.TO_UNICODE);
                    }
                }
            }
        }
    }
}
