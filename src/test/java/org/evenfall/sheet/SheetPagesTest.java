package org.evenfall.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.evenfall.page.Letters;
import org.evenfall.page.PagePicture;
import org.evenfall.page.SheetSize;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetContent.Block;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Checklist;
import org.evenfall.sheet.SheetContent.Choices;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Heading;
import org.evenfall.sheet.SheetContent.Names;
import org.evenfall.sheet.SheetContent.Notice;
import org.evenfall.sheet.SheetContent.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The drawn sheets: boxes by their measures, letters by what PDFBox reads, both papers, full and empty setups. */
class SheetPagesTest {

    private static final Path PICTURES = Path.of("target", "tour", "sheets");
    private static final double MM = 72 / 25.4;

    /** Every text of a block. */
    private static List<String> texts(Block block) {
        List<String> texts = new ArrayList<>();
        if (block instanceof Notice notice) {
            texts.add(notice.heading());
            texts.addAll(notice.lines());
        } else if (block instanceof Checklist list) {
            texts.add(list.heading());
            texts.addAll(list.lines());
        } else if (block instanceof Names names) {
            texts.addAll(names.labels());
        } else if (block instanceof Plan plan) {
            texts.addAll(texts(plan.heading()));
            texts.addAll(plan.passLabels());
            texts.add(plan.windLabel());
        } else if (block instanceof Choices choices) {
            texts.addAll(texts(choices.heading()));
            Stream.concat(Stream.of(choices.first()), choices.others().stream()).forEach(choice -> {
                texts.add(choice.label());
                texts.addAll(choice.answers());
            });
        } else if (block instanceof Entries entries) {
            texts.addAll(texts(entries.heading()));
            entries.rows().forEach(row -> {
                texts.add(row.name());
                row.boxes()
                        .forEach(box -> texts.addAll(
                                List.of(box.label(), box.set().isEmpty() ? box.unit() : box.set(), box.value())));
            });
        }
        return texts;
    }

    private static List<String> texts(Heading heading) {
        List<String> texts = new ArrayList<>(heading.notes());
        texts.addAll(List.of(heading.promptId(), heading.name(), heading.typedIn()));
        return texts;
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"setup,a4", "setup,letter", "uneven,a4", "uneven,letter", "empty,a4", "empty,letter"})
    void nothingIsLostAndNothingIsCut(String name, String paper) throws Exception {
        SheetContent content = Sheets.of(Sheets.setup(name));
        byte[] pdf = SheetPdf.draw(content, Sheets.paper(paper), Sheets.WHEN);
        if (Boolean.getBoolean("pictures")) {
            pictures(name + "-" + paper, PagePicture.render(pdf, 100));
        }
        Letters letters = Letters.of(pdf, SheetStyle.MARGIN);
        content.parts().forEach(part -> {
            assertThat(letters.all())
                    .contains(Letters.withoutBlanks(part.title()), Letters.withoutBlanks(part.legend()));
            part.blocks().stream()
                    .flatMap(block -> texts(block).stream())
                    .forEach(text -> assertThat(letters.all()).contains(Letters.withoutBlanks(text)));
        });
        assertThat(letters.all()).contains(Letters.withoutBlanks(content.foot().line()));
        assertThat(letters.outside).isEmpty();
        assertThat(letters.overlaps()).isEmpty();
        assertThat(letters.smallest).isGreaterThanOrEqualTo(9f);
        assertThat(letters.all()).doesNotContain("□");
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"setup,a4", "setup,letter", "uneven,a4", "uneven,letter", "empty,a4", "empty,letter"})
    void everyBoxIsLargeEnoughOnThePageAndInOrder(String name, String paper) throws Exception {
        SheetContent content = Sheets.of(Sheets.setup(name));
        SheetSize size = Sheets.paper(paper);
        List<PlacedBox> boxes = new ArrayList<>();
        SheetPdf.draw(content, size, Sheets.WHEN, boxes::add);
        List<Box> wanted =
                content.parts().stream().flatMap(part -> part.boxes().stream()).toList();
        assertThat(boxes.stream().map(PlacedBox::box).filter(wanted::contains)).containsExactlyElementsOf(wanted);
        assertThat(boxes).hasSize(wanted.size() + 1);
        double margin = SheetStyle.MARGIN;
        for (PlacedBox box : boxes) {
            assertThat(box.width()).as(box.toString()).isGreaterThanOrEqualTo(18 * MM);
            assertThat(box.height()).as(box.toString()).isGreaterThanOrEqualTo(9 * MM);
            assertThat(box.x()).as(box.toString()).isGreaterThanOrEqualTo(margin - 0.01);
            assertThat(box.top()).as(box.toString()).isGreaterThanOrEqualTo(margin);
            assertThat(box.x() + box.width()).as(box.toString()).isLessThanOrEqualTo(size.widthPt() - margin + 0.01);
            assertThat(box.top() + box.height()).as(box.toString()).isLessThanOrEqualTo(size.heightPt() - margin);
        }
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                assertThat(overlap(boxes.get(i), boxes.get(j)))
                        .as(boxes.get(i) + " " + boxes.get(j))
                        .isFalse();
            }
        }
    }

    private static boolean overlap(PlacedBox a, PlacedBox b) {
        return a.page() == b.page()
                && Math.min(a.x() + a.width(), b.x() + b.width()) > Math.max(a.x(), b.x())
                && Math.min(a.top() + a.height(), b.top() + b.height()) > Math.max(a.top(), b.top());
    }

    /** A long name wraps and takes its room from the page; nothing runs out of it. */
    @Test
    void longNamesWrap() throws Exception {
        Setup demo = Sheets.setup("setup");
        String name =
                "A very long name of a farm with several words in it ".repeat(6).strip();
        Setup setup = demo.withStart(demo.start().withFarm(name))
                .withMachine(demo.machine().withReferencePoint(name));
        Letters letters = Letters.of(SheetPdf.draw(Sheets.of(setup), Sheets.A4, Sheets.WHEN), SheetStyle.MARGIN);
        assertThat(letters.all()).contains(Letters.withoutBlanks(name));
        assertThat(letters.outside).isEmpty();
        assertThat(letters.overlaps()).isEmpty();
    }

    /** A printer without colour gives the same sheet. */
    @Test
    void onlyBlackAndGreys() throws Exception {
        byte[] pdf = SheetPdf.draw(Sheets.of(Sheets.setup("setup")), Sheets.A4, Sheets.WHEN);
        for (BufferedImage page : PagePicture.render(pdf, 50)) {
            for (int y = 0; y < page.getHeight(); y++) {
                for (int x = 0; x < page.getWidth(); x++) {
                    int rgb = page.getRGB(x, y);
                    assertThat(rgb >> 16 & 0xFF).isEqualTo(rgb & 0xFF).isEqualTo(rgb >> 8 & 0xFF);
                }
            }
        }
    }

    @Test
    void theSameSetupOnTheSameDayGivesTheSameBytes() throws Exception {
        SheetContent content = Sheets.of(Sheets.setup("setup"));
        assertThat(SheetPdf.draw(content, Sheets.A4, Sheets.WHEN))
                .isEqualTo(SheetPdf.draw(content, Sheets.A4, Sheets.WHEN));
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
