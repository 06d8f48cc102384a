package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A finding about one cell is shown below its table and on the cell itself, and goes when the cell is put right. */
@ExtendWith(ApplicationExtension.class)
class CellFindingsTest {

    private static final PseudoClass STOP = PseudoClass.getPseudoClass("stop");

    private static SharedWindow shared;

    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        if (shared == null) {
            shared = SharedWindow.make();
        }
        window = shared.show(stage, 1280, 1000);
    }

    @AfterAll
    static void forget() {
        shared = null;
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    @ParameterizedTest
    @CsvSource({
        "PRODUCT, /product/containerFull/0, 'Row 1, Weight, filled'",
        "PRODUCT, /product/sievings/0/amounts/1, 'Sample 1, On sieve 1'",
        "MACHINE, /yard/vanes/1/length, 'Row 2, Length now'",
        "START, /machine/levers/1/lowest, 'Row 2, Lowest'",
        "RATE, /rate/bucketTests/2/left/0, No. 1",
        "TRAYS, /trays/tests/1/catches/2, -4.7"
    })
    void aTypingErrorIsShownAtItsCell(Step step, String pointer, String cellName, FxRobot robot) {
        robot.interact(() -> window.shell().go(step.number()));
        WaitForAsyncUtils.waitForFxEvents();
        Node cell = typing.node(pointer);
        String before = ((javafx.scene.control.TextField) cell).getText();
        assertThat(cell.getPseudoClassStates()).doesNotContain(STOP);
        typing.type(pointer, "abc");
        assertThat(typing.node(pointer)).as("the field being typed in stays").isSameAs(cell);
        assertThat(cell.getPseudoClassStates()).contains(STOP);
        assertThat(cell.getAccessibleHelp()).contains("abc");
        assertThat(below(robot))
                .filteredOn(line -> line.contains("“abc” is not a number"))
                .hasSize(1)
                .allMatch(line -> line.startsWith(cellName + ": "));
        typing.type(pointer, before);
        assertThat(cell.getPseudoClassStates()).doesNotContain(STOP);
        assertThat(cell.getAccessibleHelp()).isNull();
        assertThat(below(robot)).noneMatch(line -> line.contains("abc"));
    }

    /** The lines in the place for the findings of the entry with the keyboard. */
    private List<String> below(FxRobot robot) {
        return robot.lookup(".focused-findings").query().lookupAll(".label").stream()
                .map(label -> ((Label) label).getText().replace('\u00a0', ' ').replace('\u2212', '-'))
                .toList();
    }
}
