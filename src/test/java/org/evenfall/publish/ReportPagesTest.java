package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.evenfall.page.Letters;
import org.evenfall.page.PagePicture;
import org.evenfall.publish.SheetService.SheetPaper;
import org.evenfall.report.ReportContent;
import org.evenfall.report.ReportContent.Block;
import org.evenfall.report.ReportContent.Chart;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Item;
import org.evenfall.report.ReportContent.Notice;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.report.ReportContent.Table;
import org.evenfall.report.ReportContent.Text;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The drawn report: nothing lost, cut or under something else, on both papers, for full, empty and odd setups. */
class ReportPagesTest {

    private static final Path PICTURES = Path.of("target", "tour", "report");
    private static final double MARGIN = 17 * 72 / 25.4;

    private static Stream<String> texts(Block block) {
        if (block instanceof Heading heading) {
            return Stream.of(heading.text());
        }
        if (block instanceof Notice notice) {
            return notice.lines().stream();
        }
        if (block instanceof Pair pair) {
            return Stream.of(pair.label(), pair.value());
        }
        if (block instanceof Item item) {
            return Stream.of(item.number(), item.text());
        }
        if (block instanceof Table table) {
            return table.rows().stream().flatMap(List::stream);
        }
        if (block instanceof Chart chart) {
            return Stream.of(chart.axis(), chart.trays().get(0).label(), "85 %", "90 %", "100 %", "110 %", "115 %");
        }
        return Stream.of(((Text) block).text());
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "setup, A4",
        "setup, LETTER",
        "uneven, A4",
        "uneven, LETTER",
        "unfinished, A4",
        "empty, A4",
        "empty, LETTER",
        "one, A4",
        "wrong, A4",
        "many, LETTER"
    })
    void nothingIsLostAndNothingIsCut(String name, SheetPaper paper) throws Exception {
        ReportContent content = Reports.content(Reports.setup(name));
        byte[] pdf = Reports.pages(Reports.setup(name), paper);
        if (Boolean.getBoolean("pictures")) {
            pictures(name + "-" + paper, PagePicture.render(pdf, 100));
        }
        Letters letters = Letters.of(pdf, MARGIN);
        // a long text may go on on the next page, with a foot in between
        String all = letters.all();
        content.blocks().stream()
                .flatMap(ReportPagesTest::texts)
                .flatMap(text -> Stream.of(text.strip().split("\\s+")))
                .forEach(word -> assertThat(all).contains(Letters.withoutBlanks(word)));
        assertThat(letters.outside).isEmpty();
        assertThat(letters.overlaps()).isEmpty();
        assertThat(letters.smallest).isGreaterThanOrEqualTo(9f);
        assertThat(all).doesNotContain("□");
    }

    /** Each page has its number and how many there are; no heading is the last line of a page. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"setup, A4", "setup, LETTER", "uneven, LETTER", "unfinished, A4", "empty, A4", "one, LETTER", "many, A4"
    })
    void pagesAreNumberedAndNoHeadingIsAlone(String name, SheetPaper paper) throws Exception {
        Set<String> headings = Reports.content(Reports.setup(name)).blocks().stream()
                .filter(Heading.class::isInstance)
                .map(block -> Letters.withoutBlanks(((Heading) block).text()))
                .collect(Collectors.toSet());
        try (PDDocument document = Loader.loadPDF(Reports.pages(Reports.setup(name), paper))) {
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                assertThat(text).contains("page " + page + " of " + pages);
                String above = text.substring(0, text.lastIndexOf(foot(text)));
                List<String> lines = above.lines()
                        .map(Letters::withoutBlanks)
                        .filter(line -> !line.isEmpty())
                        .toList();
                assertThat(headings).doesNotContain(lines.get(lines.size() - 1));
            }
        }
    }

    /** The first words of the foot. */
    private static String foot(String page) {
        String last = page.lines()
                .filter(line -> line.contains("page ") && line.contains(" of "))
                .reduce((before, after) -> after)
                .orElseThrow();
        return last;
    }

    private static void pictures(String name, List<BufferedImage> pages) throws Exception {
        Files.createDirectories(PICTURES);
        for (int i = 0; i < pages.size(); i++) {
            ImageIO.write(
                    pages.get(i),
                    "png",
                    PICTURES.resolve(name + "-" + (i + 1) + ".png").toFile());
        }
    }
}
