package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.evenfall.page.Letters;
import org.evenfall.page.PagePicture;
import org.evenfall.page.SheetSize;
import org.evenfall.report.ReportContent;
import org.evenfall.report.ReportContent.Heading;
import org.evenfall.report.ReportContent.Item;
import org.evenfall.report.ReportContent.Pair;
import org.evenfall.report.ReportContent.Table;
import org.evenfall.report.ReportContent.Text;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** The drawn record of a season: nothing lost, cut or under something else; PDF/A-2b and PDF/UA-1 by veraPDF. */
class SeasonPagesTest {

    private static final SeasonRecordService SERVICE =
            new SeasonRecordService(Reports.WORDS, Clock.fixed(Reports.WHEN, ZoneOffset.UTC));
    private static final double MARGIN = 17 * 72 / 25.4;

    @BeforeAll
    static void once() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private static List<Setup> setups(String name) {
        return switch (name) {
            case "empty" -> List.of();
            case "two" ->
                List.of(
                        SeasonRecordTest.job(
                                "Far Bank", "urea", "46 %", 2, "18.3.2027;;12.5 ha;2175 kg", "9.4.2027;;;"),
                        SeasonRecordTest.job("Long Reach", "urea", "46 %", 1, "19.3.2027;;4 ha;640 kg"));
            default -> SeasonRecordTest.many();
        };
    }

    private static ReportContent content(String name) {
        return SeasonBlocks.of(
                SeasonRecord.of(setups(name), Assessor::assess),
                Reports.WORDS,
                LocalDateTime.ofInstant(Reports.WHEN, ZoneOffset.UTC));
    }

    private static Stream<String> texts(ReportContent.Block block) {
        if (block instanceof Heading heading) {
            return Stream.of(heading.text());
        }
        if (block instanceof Table table) {
            return table.rows().stream().flatMap(List::stream);
        }
        if (block instanceof Pair pair) {
            return Stream.of(pair.label(), pair.value());
        }
        if (block instanceof Item item) {
            return Stream.of(item.text());
        }
        return block instanceof Text text ? Stream.of(text.text()) : Stream.of();
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"empty, A4", "two, A4", "two, LETTER", "many, A4", "many, LETTER"})
    void nothingIsLostAndNothingIsCut(String name, SheetService.SheetPaper paper) throws Exception {
        byte[] pdf = SERVICE.pdf(setups(name), paper);
        if (Boolean.getBoolean("pictures")) {
            pictures(name + "-" + paper, PagePicture.render(pdf, 90));
        }
        Letters letters = Letters.of(pdf, MARGIN);
        String all = letters.all();
        content(name).blocks().stream()
                .flatMap(SeasonPagesTest::texts)
                .flatMap(text -> Stream.of(text.strip().split("\\s+")))
                .filter(word -> word.length() < 20)
                .forEach(word -> assertThat(all).contains(Letters.withoutBlanks(word)));
        assertThat(letters.outside).isEmpty();
        assertThat(letters.overlaps()).isEmpty();
        assertThat(letters.smallest).isGreaterThanOrEqualTo(9f);
    }

    @Test
    void thePaperLiesOnItsLongSideAndPagesAreNumbered() throws Exception {
        try (PDDocument document = Loader.loadPDF(SERVICE.pdf(setups("many"), SheetSize.ofMm(210, 297)))) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            assertThat(document.getPage(0).getMediaBox().getWidth())
                    .isGreaterThan(document.getPage(0).getMediaBox().getHeight());
        }
        assertThat(SERVICE.pdf(setups("two"), SheetSize.LETTER))
                .as("the same passes and time give the same bytes")
                .isEqualTo(SERVICE.pdf(setups("two"), SheetSize.LETTER));
    }

    /** The sums of two fields, worked out by hand: 1 000.5 kg on 12.5 ha, 294.4 kg on 4 ha. */
    @Test
    void sumsAndWhatIsNotComplete() {
        List<ReportContent.Block> blocks = content("two").blocks();
        assertThat(blocks).contains(new Heading(ReportContent.Level.TITLE, "Record of what was spread, season 2027"));
        List<List<String>> fields = blocks.stream()
                .filter(Table.class::isInstance)
                .map(block -> ((Table) block).rows())
                .reduce((one, other) -> other)
                .orElseThrow();
        assertThat(fields.get(1))
                .containsExactly("Thornmarsh Farm · Far Bank · winter wheat", "2", "12.50", "2175", "1001", "80");
        assertThat(fields.get(2))
                .containsExactly("Thornmarsh Farm · Long Reach · winter wheat", "1", "4.00", "640", "294", "74");
        assertThat(blocks.stream().flatMap(SeasonPagesTest::texts).map(text -> text.replace('\u00a0', ' ')))
                .contains("16.50 ha", "2815 kg", "1295 kg")
                .contains("Passes that are not complete: 1. What is missing is left empty and counts in no sum.");
    }

    @ParameterizedTest
    @CsvSource({"two, PDFA_2_B", "two, PDFUA_1", "many, PDFA_2_B", "many, PDFUA_1", "empty, PDFA_2_B", "empty, PDFUA_1"
    })
    void areArchivableAndTagged(String name, PDFAFlavour flavour) throws Exception {
        byte[] pdf = SERVICE.pdf(setups(name), SheetService.SheetPaper.A4);
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.isCompliant())
                    .as(String.valueOf(result.getTestAssertions()))
                    .isTrue();
        }
    }

    private static void pictures(String name, List<BufferedImage> pages) throws Exception {
        Path folder = Path.of("target", "tour", "season");
        Files.createDirectories(folder);
        for (int i = 0; i < pages.size(); i++) {
            ImageIO.write(
                    pages.get(i),
                    "png",
                    folder.resolve(name + "-" + (i + 1) + ".png").toFile());
        }
    }
}
