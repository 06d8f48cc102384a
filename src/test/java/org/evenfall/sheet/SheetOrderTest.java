package org.evenfall.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.evenfall.page.Letters;
import org.evenfall.setup.path.Entries;
import org.evenfall.setup.path.Entry;
import org.evenfall.sheet.SheetContent.Box;
import org.evenfall.sheet.SheetContent.Part;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading down a sheet is the order in which it is typed in: prompts by their ids, boxes as the entries of a prompt. */
class SheetOrderTest {

    private static final Path PROMPTS = Path.of("src", "main", "java", "org", "evenfall", "wizard", "step");
    private static final Pattern ENTRY = Pattern.compile("(\\w+Paths)\\.([A-Z_]+)\\b");

    /** Ids rise from heading to heading; of a further test those of its prompts come again. */
    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven", "unfinished", "empty"})
    void idsRise(String name) throws Exception {
        for (Part part : Sheets.of(Sheets.setup(name)).parts()) {
            List<String> ids = part.blocks().stream()
                    .flatMap(block -> SheetBlocks.heading(block).stream())
                    .map(heading -> heading.promptId())
                    .toList();
            for (int i = 1; i < ids.size(); i++) {
                boolean nextTest = ids.get(i - 1).equals("6c") && ids.get(i).equals("6b");
                assertThat(nextTest || ids.get(i - 1).compareTo(ids.get(i)) < 0)
                        .as(ids.get(i - 1) + " before " + ids.get(i))
                        .isTrue();
            }
        }
    }

    /** On the page a box is below the one before it, or to the right of it on its line; headings come as they are typed. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"setup,a4", "setup,letter", "uneven,a4", "empty,letter"})
    void boxesRunDownAndRight(String name, String paper) throws Exception {
        SheetContent content = Sheets.of(Sheets.setup(name));
        List<PlacedBox> boxes = new ArrayList<>();
        byte[] pdf = SheetPdf.draw(content, Sheets.paper(paper), Sheets.WHEN, boxes::add);
        for (int i = 1; i < boxes.size(); i++) {
            PlacedBox before = boxes.get(i - 1);
            PlacedBox box = boxes.get(i);
            boolean right = Math.abs(box.top() - before.top()) < 1 && box.x() > before.x();
            assertThat(box.page() > before.page() || right || box.top() >= before.top() + before.height())
                    .as(before + " then " + box)
                    .isTrue();
        }
        String text = text(pdf);
        int at = 0;
        for (Part part : content.parts()) {
            for (var block : part.blocks()) {
                if (SheetBlocks.heading(block).isPresent()) {
                    var heading = SheetBlocks.heading(block).get();
                    int next = text.indexOf(Letters.withoutBlanks(heading.promptId() + heading.name()), at);
                    assertThat(next)
                            .as(heading.promptId() + " " + heading.name())
                            .isNotNegative();
                    at = next + 1;
                }
            }
        }
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return Letters.withoutBlanks(stripper.getText(document));
        }
    }

    /** Boxes come as the page of the prompt lists its entries; the order is read from the source of the prompt. */
    @ParameterizedTest
    @CsvSource({
        "1e, product/SamplePrompt",
        "1f, product/DensityPrompt",
        "3b, machine/VanesPrompt",
        "3c, machine/LevelPrompt",
        "3d, machine/PtoPrompt",
        "4a, height/CropPrompt",
        "4b, height/SetHeightPrompt",
        "4c, height/ChainPrompt"
    })
    void boxesComeAsTheEntriesOfTheirPrompt(String id, String prompt) throws Exception {
        List<String> onScreen = new ArrayList<>();
        Matcher entry = ENTRY.matcher(Files.readString(PROMPTS.resolve(prompt + ".java")));
        while (entry.find()) {
            label(entry.group(1), entry.group(2)).ifPresent(onScreen::add);
        }
        List<Box> boxes = Sheets.boxes(Sheets.yard(Sheets.setup("empty")), id);
        List<Integer> places = boxes.stream()
                .map(box -> place(onScreen, box.label()))
                .distinct()
                .toList();
        assertThat(places).as(onScreen + " " + boxes).isSorted().doesNotContain(-1);
    }

    /** The entry whose label the box has, with a number after it where there are several. */
    private static int place(List<String> onScreen, String label) {
        for (int i = 0; i < onScreen.size(); i++) {
            if (label.equals(onScreen.get(i)) || label.matches(Pattern.quote(onScreen.get(i)) + " \\d+")) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<String> label(String holder, String constant) throws Exception {
        Object value = Class.forName("org.evenfall.setup.path." + holder)
                .getDeclaredField(constant)
                .get(null);
        return value instanceof Entry<?, ?> entry && Entries.ALL.contains(entry)
                ? Optional.of(Sheets.WORDS.text(entry.labelKey()))
                : Optional.empty();
    }
}
