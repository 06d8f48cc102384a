package org.evenfall.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

class PagePictureTest {

    private static final SheetSize SHEET = SheetSize.ofMm(127, 254);

    private static final int WHITE = 0xFFFFFFFF;

    /** A page of 5 in by 10 in at 40 dots an inch, with a square inch in its second and third inch; then an empty one. */
    @Test
    void thePictureIsThePage() throws Exception {
        List<BufferedImage> pages;
        try (PageDocument document = new PageDocument()) {
            document.page(SHEET, (pen, face) -> {
                pen.fill(72, 144, 72, 72, Colours.ACCENT);
                return face;
            });
            document.page(SHEET, (pen, face) -> face);
            pages = PagePicture.render(document.finish("Two pages", "en", Instant.EPOCH, 1), 40);
        }
        assertThat(pages).hasSize(2);
        BufferedImage first = pages.get(0);
        assertThat(first.getWidth()).isEqualTo(200);
        assertThat(first.getHeight()).isEqualTo(400);
        assertThat(first.getRGB(60, 100)).isEqualTo(Colours.ACCENT.getRGB());
        assertThat(first.getRGB(60, 70)).isEqualTo(WHITE);
        assertThat(first.getRGB(60, 130)).isEqualTo(WHITE);
        assertThat(first.getRGB(30, 100)).isEqualTo(WHITE);
        assertThat(pages.get(1).getRGB(60, 100)).isEqualTo(WHITE);
    }

    /** Which letter a shape is does not change how it is drawn: with it and without it the picture is the same. */
    @Test
    void everyLetterIsDrawn() throws Exception {
        byte[] pdf;
        try (PageDocument document = new PageDocument()) {
            document.page(SHEET, (pen, face) -> {
                pen.text(TextStyle.HEADING, 72, 72, "Größe 3.2 mm – Âé");
                return face;
            });
            pdf = document.finish("A page of letters", "en", Instant.EPOCH, 1);
        }
        BufferedImage drawn = PagePicture.render(pdf, 40).get(0);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage whole = new PDFRenderer(document).renderImageWithDPI(0, 40, ImageType.RGB);
            int dark = 0;
            for (int y = 0; y < whole.getHeight(); y++) {
                for (int x = 0; x < whole.getWidth(); x++) {
                    assertThat(drawn.getRGB(x, y)).isEqualTo(whole.getRGB(x, y));
                    dark += whole.getRGB(x, y) == WHITE ? 0 : 1;
                }
            }
            assertThat(dark).isGreaterThan(100);
        }
    }

    @Test
    void whatIsNoPdfIsRefused() {
        assertThatThrownBy(() -> PagePicture.render(new byte[] {1, 2, 3}, 40)).isInstanceOf(IOException.class);
    }

    @Test
    void aSheetHasSides() {
        assertThatThrownBy(() -> new SheetSize(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SheetSize(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(SHEET.widthPt()).isEqualTo(360f);
    }
}
