package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.evenfall.flight.DrivingPattern;
import org.evenfall.granule.ProductForm;
import org.evenfall.machine.Widening;
import org.evenfall.setup.path.MachinePaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Answers chosen by a digit or a letter while the choice has the keyboard. */
@ExtendWith(ApplicationExtension.class)
class ChoosingTest {

    private static SharedWindow shared;

    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        if (shared == null) {
            shared = SharedWindow.make();
        }
        window = shared.show(stage, 1366, 768);
    }

    @AfterAll
    static void forget() {
        shared = null;
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private void focus(FxRobot robot, String id) {
        Node node = typing.node(id);
        robot.interact(node::requestFocus);
    }

    private String focused() {
        WaitForAsyncUtils.waitForFxEvents();
        return String.valueOf(window.scene().getFocusOwner().getId());
    }

    @Test
    void inASegmentedChoice(FxRobot robot) {
        String choice = StartPaths.DRIVING_PATTERN.pointer();
        focus(robot, choice + "/BACK_AND_FORTH");
        robot.write("r", 0);
        assertThat(focused()).isEqualTo(choice + "/ROUND_AND_ROUND");
        assertThat(window.model().setup().start().drivingPattern()).isEqualTo(DrivingPattern.ROUND_AND_ROUND);
        robot.write("1", 0);
        assertThat(focused()).isEqualTo(choice + "/BACK_AND_FORTH");
        assertThat(window.model().setup().start().drivingPattern()).isEqualTo(DrivingPattern.BACK_AND_FORTH);
        // the chosen one again stays chosen, another key changes nothing, Enter goes on
        robot.write("1x93", 0);
        assertThat(focused()).isEqualTo(choice + "/BACK_AND_FORTH");
        assertThat(window.model().setup().start().drivingPattern()).isEqualTo(DrivingPattern.BACK_AND_FORTH);
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().prompt()).isEqualTo("0c");
    }

    @Test
    void inAWrappedChoice(FxRobot robot) {
        String choice = ProductPaths.FORM.pointer();
        focus(robot, choice + "/GRANULAR_UREA");
        robot.write("a", 0);
        assertThat(focused()).isEqualTo(choice + "/AMMONIUM_NITRATE");
        assertThat(window.model().setup().product().form()).isEqualTo(ProductForm.AMMONIUM_NITRATE);
        robot.write("2", 0);
        assertThat(focused()).isEqualTo(choice + "/PRILLED_UREA");
        assertThat(window.model().setup().product().form()).isEqualTo(ProductForm.PRILLED_UREA);
    }

    /** In a table the sign for no answer has no number. */
    @Test
    void inACellOfATable(FxRobot robot) {
        String cell =
                MachinePaths.LEVER_WIDER_WHEN.at(MachinePaths.LEVERS.item(0)).pointer();
        focus(robot, cell);
        robot.write("2", 0);
        assertThat(wider()).isEqualTo(Widening.LOWER);
        robot.write("n", 0);
        assertThat(wider()).isEqualTo(Widening.UNKNOWN);
        robot.write("h", 0);
        assertThat(wider()).isEqualTo(Widening.HIGHER);
        assertThat(focused()).isEqualTo(cell);
    }

    private Widening wider() {
        WaitForAsyncUtils.waitForFxEvents();
        return window.model().setup().machine().levers().get(0).widerWhen();
    }

    /** A digit with Alt goes to a step and answers nothing there. */
    @Test
    void aShortcutIsNoAnswer(FxRobot robot) {
        focus(robot, StartPaths.DRIVING_PATTERN.pointer() + "/BACK_AND_FORTH");
        robot.press(KeyCode.ALT).type(KeyCode.DIGIT2).release(KeyCode.ALT);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.model().setup().start().drivingPattern()).isEqualTo(DrivingPattern.BACK_AND_FORTH);
        assertThat(window.shell().front()).isEqualTo(2);
    }
}
