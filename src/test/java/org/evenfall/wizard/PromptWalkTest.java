package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** From prompt to prompt by Enter, and nothing moves meanwhile. */
@ExtendWith(ApplicationExtension.class)
class PromptWalkTest {

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

    private void show(FxRobot robot, String prompt) {
        robot.interact(() -> window.shell().show(prompt));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private String focused(FxRobot robot) {
        WaitForAsyncUtils.waitForFxEvents();
        return String.valueOf(window.scene().getFocusOwner().getId());
    }

    private void enter(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void enterGoesThroughTheEntriesAndOnToTheNextPrompt(FxRobot robot) {
        show(robot, "0b");
        List<String> way = new ArrayList<>();
        while (window.shell().prompt().equals("0b") && way.size() < 20) {
            way.add(focused(robot));
            enter(robot);
        }
        assertThat(way)
                .containsExactly(
                        "/start/farm",
                        "/start/field",
                        "/start/crop",
                        "/start/season",
                        "/start/tramlineWidth",
                        "/start/drivingPattern/BACK_AND_FORTH");
        assertThat(window.shell().prompt()).isEqualTo("0c");
        assertThat(focused(robot)).isEqualTo("/machine/name");
    }

    /** Along the row, to the next row, and out of the table on its empty last row. */
    @Test
    void enterGoesThroughATableAndLeavesItAtItsEnd(FxRobot robot) {
        show(robot, "0f");
        assertThat(focused(robot)).isEqualTo("/machine/levers/0/label");
        for (int i = 0; i < 5; i++) {
            enter(robot);
        }
        assertThat(focused(robot)).isEqualTo("/machine/levers/1/label");
        for (int i = 0; i < 5; i++) {
            enter(robot);
        }
        assertThat(focused(robot)).isEqualTo("/machine/levers/2/label");
        enter(robot);
        assertThat(window.shell().prompt()).isEqualTo("0g");
    }

    /** Keys that nobody waits for arrive in their rows. */
    @Test
    void numbersTypedFastDownAColumnAreRows(FxRobot robot) {
        robot.interact(() ->
                window.model().change(setup -> setup.withHeight(setup.height().withCropHeights(List.of()))));
        show(robot, "4a");
        robot.write("21\n22\n23", 0);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.model().setup().height().cropHeights())
                .extracting(EnteredQuantity::text)
                .containsExactly("21", "22", "23");
        robot.type(KeyCode.UP);
        assertThat(focused(robot)).isEqualTo("/height/cropHeights/1");
    }

    /** A wrong entry blocks nothing: it is marked, and Enter goes on. */
    @Test
    void aWrongEntryIsMarkedAndBlocksNothing(FxRobot robot) {
        typing.type("/start/tramlineWidth", "wide");
        assertThat(typing.words()).anyMatch(word -> word.contains("“wide” is not a number"));
        enter(robot);
        assertThat(focused(robot)).startsWith("/start/drivingPattern");
        enter(robot);
        assertThat(window.shell().prompt()).isEqualTo("0c");
    }

    /** Of the prompts of steps 0 to 5, while a field is typed in, wrongly too: no other control moves by a pixel. */
    @Test
    void nothingMovesWhileSomebodyTypes(FxRobot robot) {
        List<String> moved = new ArrayList<>();
        for (PromptPage page : window.shell().pages()) {
            if (page.step().number() <= Step.RATE.number()) {
                show(robot, page.prompt().id());
                for (TextField field : fields(page)) {
                    Map<Node, Bounds> before = places(page);
                    String typed = field.getText();
                    for (String text : List.of(typed + "9", typed + "x")) {
                        robot.interact(field::requestFocus);
                        robot.interact(() -> field.setText(text));
                        WaitForAsyncUtils.waitForFxEvents();
                        places(page).forEach((node, place) -> {
                            if (before.containsKey(node) && !before.get(node).equals(place)) {
                                moved.add(
                                        page.prompt().id() + ": " + node.getId() + " while typing in " + field.getId());
                            }
                        });
                        robot.interact(() -> field.setText(typed));
                        WaitForAsyncUtils.waitForFxEvents();
                    }
                }
            }
        }
        assertThat(moved).isEmpty();
    }

    /** Fields with something in them, so that no row is added. */
    private static List<TextField> fields(PromptPage page) {
        List<TextField> fields = new ArrayList<>();
        Nodes.each(page, node -> {
            if (node instanceof TextField field
                    && field.getId() != null
                    && field.getId().startsWith("/")
                    && !field.getText().isBlank()) {
                fields.add(field);
            }
        });
        return fields;
    }

    private static Map<Node, Bounds> places(PromptPage page) {
        Map<Node, Bounds> places = new LinkedHashMap<>();
        Nodes.each(page, node -> {
            if (node instanceof Control && node.getId() != null && node.getId().startsWith("/")) {
                places.put(node, node.localToScene(node.getLayoutBounds()));
            }
        });
        return places;
    }
}
