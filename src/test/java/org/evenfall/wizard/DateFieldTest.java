package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.DateCell;
import javafx.scene.input.KeyCode;
import javafx.stage.Popup;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.evenfall.setup.path.CardPaths;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Dates in their fields: as people write them, asked back, or taken from the calendar. */
@ExtendWith(ApplicationExtension.class)
class DateFieldTest {

    private static final String USE_BY = ProductPaths.USE_BY.pointer();

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
        typing.node(USE_BY);
    }

    private String useBy() {
        WaitForAsyncUtils.waitForFxEvents();
        return window.model().setup().product().useBy();
    }

    private static boolean open() {
        WaitForAsyncUtils.waitForFxEvents();
        return Window.getWindows().stream().anyMatch(Popup.class::isInstance);
    }

    private void altDown(FxRobot robot) {
        robot.press(KeyCode.ALT).type(KeyCode.DOWN).release(KeyCode.ALT);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void whatIsTypedStaysAsTyped(FxRobot robot) {
        typing.type(USE_BY, "31.12.2027");
        assertThat(useBy()).isEqualTo("31.12.2027");
        assertThat(typing.words()).noneMatch(word -> word.contains("is not a date"));
        typing.type(USE_BY, "31.2.2027");
        assertThat(typing.words()).contains("“31.2.2027” is not a date. Type 31.12.2027 or 2027-12-31.");
        typing.type(USE_BY, "3/4/27");
        assertThat(typing.words()).contains("3 April 2027 or 4 March 2027? Type 3.4.2027 or 2027-03-04.");
    }

    @Test
    void theCalendarIsUsedByKeyboard(FxRobot robot) {
        typing.type(USE_BY, "30.4.2027");
        altDown(robot);
        assertThat(open()).isTrue();
        robot.type(KeyCode.RIGHT).type(KeyCode.ENTER);
        assertThat(useBy()).isEqualTo("2027-05-01");
        assertThat(open()).isFalse();
        assertThat(window.scene().getFocusOwner().getId()).isEqualTo(USE_BY);
        // the same day again, then away without choosing
        altDown(robot);
        robot.type(KeyCode.ENTER);
        assertThat(open()).isFalse();
        altDown(robot);
        robot.type(KeyCode.ESCAPE);
        assertThat(open()).isFalse();
        assertThat(useBy()).isEqualTo("2027-05-01");
    }

    @Test
    void theCalendarIsUsedByMouse(FxRobot robot) {
        typing.type(USE_BY, "2027-04-30");
        Node field = typing.node(USE_BY);
        Button button = calendar(field);
        assertThat(button.isFocusTraversable()).isFalse();
        robot.clickOn(button);
        assertThat(open()).isTrue();
        robot.clickOn((Node node) -> node instanceof DateCell cell
                && cell.getStyleClass().contains("day-cell")
                && "12".equals(cell.getText())
                && !cell.getStyleClass().contains("next-month"));
        assertThat(useBy()).isEqualTo("2027-04-12");
        assertThat(open()).isFalse();
    }

    @Test
    void everyDateHasACalendar() {
        Node date = typing.node(CardPaths.DATE.pointer());
        assertThat(calendar(date).getAccessibleText()).isEqualTo("Date: Calendar (Alt+Down in the field)");
    }

    private static Button calendar(Node field) {
        return (Button) Nodes.find(field.getParent(), node -> "form.calendar".equals(node.getId()))
                .orElseThrow();
    }
}
