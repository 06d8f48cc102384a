package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetContent.Block;
import org.evenfall.sheet.SheetContent.Checklist;
import org.evenfall.sheet.SheetContent.Foot;
import org.evenfall.sheet.SheetContent.Names;
import org.evenfall.sheet.SheetContent.Notice;
import org.evenfall.sheet.SheetContent.Part;

/** Writes the content of the sheets from an assessment. Chooses words and boxes; computes nothing. */
public final class SheetContents {

    private final Setup setup;
    private final Assessment assessment;
    private final Sentences words;
    private final SheetLines lines;

    private SheetContents(Setup setup, Assessment assessment, Sentences words, SheetLines lines) {
        this.setup = setup;
        this.assessment = assessment;
        this.words = words;
        this.lines = lines;
    }

    /**
     * The content of the sheets.
     *
     * @param setup what was entered; an empty one gives sheets that suit any machine
     * @param assessment its assessment
     * @param words the program's sentences
     * @param lines results in words
     * @param which sheets wanted
     */
    public static SheetContent of(
            Setup setup, Assessment assessment, Sentences words, SheetLines lines, SheetPart which) {
        SheetContents contents = new SheetContents(setup, assessment, words, lines);
        List<Part> parts = new ArrayList<>();
        if (which != SheetPart.FIELD) {
            parts.add(contents.yard());
        }
        if (which != SheetPart.YARD) {
            parts.add(contents.field());
        }
        return new SheetContent(parts, contents.foot(), words.locale().getLanguage());
    }

    private Part yard() {
        return part(
                "sheet.yard", List.of(Step.PRODUCT, Step.MACHINE, Step.HEIGHT), new YardBlocks(setup, words).blocks());
    }

    private Part field() {
        return part(
                "sheet.field",
                List.of(Step.RATE, Step.TRAYS),
                new FieldBlocks(setup, assessment, words, lines).blocks());
    }

    private Part part(String titleKey, List<Step> dangerous, List<Block> measured) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Checklist(words.text("prompt.0h.name"), lines.kit()));
        blocks.add(new Notice(
                words.text("card.cautionTitle"),
                dangerous.stream().map(this::caution).toList()));
        blocks.add(
                new Names(List.of(words.text("sheet.driver"), words.text("sheet.timer"), words.text("sheet.reader"))));
        blocks.addAll(measured);
        return new Part(words.text(titleKey), words.text("sheet.legend"), blocks);
    }

    private String caution(Step step) {
        return words.choice(step) + ": " + words.text("step." + step.name().toLowerCase(Locale.ROOT) + ".caution");
    }

    private Foot foot() {
        return new Foot(lines.foot(), words.text("sheet.page", Arg.text("{0}"), Arg.text("{1}")));
    }
}
