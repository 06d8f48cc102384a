package org.evenfall.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.sheet.Sheets.boxes;
import static org.evenfall.sheet.Sheets.field;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.evenfall.command.Commands;
import org.evenfall.machine.CheckItem;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetContent.Checklist;
import org.evenfall.sheet.SheetContent.Choice;
import org.evenfall.sheet.SheetContent.Choices;
import org.evenfall.sheet.SheetContent.Heading;
import org.evenfall.sheet.SheetContent.Names;
import org.evenfall.sheet.SheetContent.Notice;
import org.evenfall.sheet.SheetContent.Part;
import org.evenfall.sheet.SheetContent.Plan;
import org.evenfall.trays.TrayLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetContentsTest {

    @TempDir
    private Path folder;

    private static <T> Stream<T> blocks(Part part, Class<T> type) {
        return part.blocks().stream().filter(type::isInstance).map(type::cast);
    }

    private static Notice firstMove(Part field) {
        return (Notice) field.blocks().get(field.blocks().size() - 1);
    }

    /** Kit and cautions come before anything that can hurt, names before the first box. */
    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven", "empty"})
    void kitAndCautionsComeFirst(String name) throws Exception {
        SheetContent content = Sheets.of(Sheets.setup(name));
        assertThat(content.parts()).extracting(Part::title).containsExactly("Yard sheet", "Field sheet");
        for (Part part : content.parts()) {
            assertThat(part.blocks().get(0)).isInstanceOf(Checklist.class);
            Notice cautions = (Notice) part.blocks().get(1);
            assertThat(cautions.lines())
                    .allMatch(line -> line.endsWith("handbook, local codes and licensed practice come first."));
            assertThat(((Names) part.blocks().get(2)).labels()).containsExactly("Driver", "Timer", "Reader");
        }
        assertThat(((Notice) content.parts().get(1).blocks().get(1)).lines().get(1))
                .contains("at least 50 m off while the discs turn");
    }

    /** Typing in a filled sheet is reading down: prompts never go back, but for the tests, which come one after the other. */
    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven", "empty"})
    void theOrderIsThatOfThePrompts(String name) throws Exception {
        SheetContent content = Sheets.of(Sheets.setup(name));
        assertThat(prompts(content.parts().get(0)))
                .containsExactly("1e", "1f", "1g", "3a", "3b", "3c", "3d", "4a", "4b", "4c");
        assertThat(prompts(content.parts().get(1)))
                .containsExactly("5d", "5e", "6a", "6b", "6c", "6b", "6c", "6b", "6c");
    }

    private static List<String> prompts(Part part) {
        return part.blocks().stream()
                .flatMap(block -> SheetBlocks.heading(block).stream())
                .map(Heading::promptId)
                .toList();
    }

    /** Guards by themselves, then each other part with the answers that the screen offers. */
    @Test
    void theWalkRoundBeginsWithTheGuards() {
        Choices walk =
                blocks(Sheets.yard(Setup.EMPTY), Choices.class).findFirst().orElseThrow();
        assertThat(walk.first())
                .isEqualTo(new Choice("Guards of PTO shaft, discs and hopper", List.of("Good", "Failed")));
        assertThat(walk.others())
                .extracting(Choice::label)
                .isEqualTo(Stream.of(CheckItem.values())
                        .skip(1)
                        .map(Sheets.WORDS::choice)
                        .toList());
        assertThat(walk.others().get(3).answers()).containsExactly("Good", "Failed", "Not fitted");
    }

    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven"})
    void traysAndPassesAreThoseOfTheAssessment(String name) throws Exception {
        Setup setup = Sheets.setup(name);
        Assessment assessment = Assessor.assess(setup);
        TrayLayout layout = assessment.trays().layout();
        Part field = Sheets.of(setup, assessment).parts().get(1);
        Plan plan = blocks(field, Plan.class).findFirst().orElseThrow();
        assertThat(layout).isNotNull();
        assertThat(plan.traysM()).isEqualTo(layout.positionsM());
        assertThat(plan.passesM()).isEqualTo(layout.passesM());
        assertThat(plan.forward()).isEqualTo(layout.passForward());
        assertThat(boxes(field, "6c")).hasSize(3 * layout.positionsM().size());
        String pace = plan.heading().notes().get(0);
        for (int i = 0; i < layout.positionsM().size(); i++) {
            double place = layout.positionsM().get(i);
            String side = place < -0.005 ? "left" : place > 0.005 ? "right" : "on it";
            String distance = side.equals("on it") ? "" : String.format(Locale.UK, "%.2f m ", Math.abs(place));
            assertThat(pace.replace('\u00a0', ' ')).contains((i + 1) + ": " + distance + side);
        }
    }

    /** The table on paper is the answer of the command trays first-move, word for word. */
    @ParameterizedTest
    @ValueSource(strings = {"setup", "uneven"})
    void theFirstMoveIsThatOfTheCommand(String name) throws Exception {
        Commands.Answer answer = new Commands(folder)
                .run(
                        "trays",
                        "first-move",
                        Path.of("demo", name + ".json").toAbsolutePath().toString());
        assertThat(answer.code()).isZero();
        List<String> lines = answer.out().lines().toList();
        Notice printed = firstMove(field(Sheets.setup(name)));
        assertThat(printed.heading()).isEqualTo(lines.get(0));
        assertThat(printed.lines()).containsSubsequence(lines.subList(1, lines.size()));
        assertThat(printed.lines()).hasSize(lines.size() - 1 + (name.equals("uneven") ? 1 : 0));
    }

    /** The limits are weights: where trays are read otherwise, the sheet says what to do. */
    @Test
    void weightsAreNoHeights() throws Exception {
        Setup uneven = Sheets.setup("uneven");
        assertThat(uneven.trays().catchKind()).isEqualTo(AmountKind.HEIGHT);
        assertThat(firstMove(field(uneven)).lines()).last().asString().startsWith("These are weights");
    }

    @Test
    void anEmptySetupGivesASheetForAnyMachine() {
        SheetContent content = Sheets.of(Setup.EMPTY);
        Part field = content.parts().get(1);
        assertThat(firstMove(field).lines())
                .containsExactly("It cannot be computed yet: first enter tramline width, rate and tray.");
        assertThat(boxes(field, "6c")).hasSize(3 * 7);
        assertThat(content.parts().stream().flatMap(part -> part.boxes().stream()))
                .allMatch(box -> box.value().isEmpty() && box.set().isEmpty());
        assertThat(content.foot().line()).isEqualTo("printed 18\u00a0March\u00a02027, 09:00");
        assertThat(blocks(field, Plan.class)
                        .findFirst()
                        .orElseThrow()
                        .heading()
                        .notes()
                        .get(0))
                .startsWith("A sketch, not to scale");
    }

    @Test
    void theFootNamesTheSetup() throws Exception {
        assertThat(Sheets.of(Sheets.setup("setup")).foot().line())
                .isEqualTo("Thornmarsh Farm · Long Reach · Granular urea, treated · revision 1 · "
                        + "printed 18\u00a0March\u00a02027, 09:00");
        assertThat(Sheets.of(Setup.EMPTY).foot().page(2, 4)).isEqualTo("page 2 of 4");
    }
}
