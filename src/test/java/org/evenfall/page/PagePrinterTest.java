package org.evenfall.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.GraphicsEnvironment;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.print.DocFlavor;
import javax.print.StreamPrintServiceFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.evenfall.card.CardPdf;
import org.evenfall.card.CardSamples;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a printer is sent, by the system's own PostScript printer to a stream: every page, on a sheet of its own size. */
class PagePrinterTest {

    /** Source (from memory): ISO 216 and ANSI/ASME Y14.1, sizes in points, upright as they are in the printer's tray. */
    @ParameterizedTest
    @CsvSource({"A5_LANDSCAPE, 419.5, 595.3", "A5_PORTRAIT, 419.5, 595.3", "A4, 595.3, 841.9", "LETTER, 612, 792"})
    void everyPageGoesToASheetOfItsSize(Paper paper, double width, double height) throws Exception {
        byte[] pages = CardPdf.draw(CardSamples.of(paper, CardLanguage.EN, ""), CardSamples.WHEN);
        ByteArrayOutputStream sent = new ByteArrayOutputStream();
        int count;
        try (PDDocument document = Loader.loadPDF(pages)) {
            count = document.getNumberOfPages();
            PrinterJob job = PagePrinter.job(document, "card");
            job.setPrintService(StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
                    DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0]
                    .getPrintService(sent));
            job.print();
        }
        String postscript = sent.toString(StandardCharsets.ISO_8859_1);
        assertThat(Pattern.compile("%%Page: ").matcher(postscript).results().count())
                .isEqualTo(count);
        Matcher size = Pattern.compile("/PageSize \\[([0-9.]+) ([0-9.]+)]").matcher(postscript);
        assertThat(size.find()).isTrue();
        assertThat(Double.parseDouble(size.group(1))).isCloseTo(width, within(0.1));
        assertThat(Double.parseDouble(size.group(2))).isCloseTo(height, within(0.1));
    }

    /** Without a display there is no dialog to choose a printer in. */
    @Test
    void withoutADisplayNothingIsPrinted() {
        assertThat(GraphicsEnvironment.isHeadless())
                .as("the tests run without a display")
                .isTrue();
        assertThatThrownBy(() -> PagePrinter.print(new byte[0], "card")).isInstanceOf(NoPrinter.class);
    }
}
