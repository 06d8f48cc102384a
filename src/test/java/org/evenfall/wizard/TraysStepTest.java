package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The tray step by keyboard, in the demo of an invented farm: wheel marks, wind limits, another test compared. */
@ExtendWith(ApplicationExtension.class)
class TraysStepTest {

    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        Path folder = Files.createTempDirectory("evenfall-trays");
        Path setups = Files.createDirectories(folder.resolve("setups"));
        Files.writeString(
                setups.resolve("neighbour.json"),
                Files.readString(Path.of("demo", "setup.json")).replace("\"18.6 g\"", "\"30 g\""));
        Path copy = folder.resolve("demo.json");
        Files.copy(Path.of("demo", "setup.json"), copy);
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(copy)));
        stage.setWidth(1280);
        stage.setHeight(1000);
        window.show(stage);
    }

    @BeforeEach
    void front(FxRobot robot) {
        typing = new Typing(robot);
        robot.interact(() -> window.shell().go(Step.TRAYS.number()));
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void aTrayInAWheelMarkIsMovedAndTheNewTestKeepsItsTruePlace(FxRobot robot) {
        robot.interact(() ->
                window.model().change(setup -> setup.withTrays(setup.trays().withTests(List.of()))));
        typing.type("/trays/trayCount", "21");
        typing.type("/trays/wheels/track", "2.4");
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Tray 12 is "));
        typing.press("trays.begin");
        TrayTestEntry test = window.model().setup().trays().tests().get(0);
        assertThat(test.positions()).hasSize(21);
        EnteredQuantity moved = test.positions().get(11);
        assertThat(moved.unit()).isEqualTo(Unit.M);
        assertThat(Double.parseDouble(moved.text())).isGreaterThan(1.7);
        // another tractor later does not move what was driven
        typing.type("/trays/wheels/track", "1.8");
        assertThat(window.model().setup().trays().tests().get(0).positions().get(11))
                .isEqualTo(moved);
    }

    /** Older tests are confirmed with one button; a change of the width afterwards is then no change of the tests. */
    @Test
    void whatAnOlderTestWasDrivenUnderIsConfirmed(FxRobot robot) {
        String confirm = "test.confirm.trays.assumed";
        assertThat(typing.there(confirm)).isFalse();
        robot.interact(() -> window.model()
                .change(setup -> setup.withTrays(setup.trays()
                        .withTests(setup.trays().tests().stream()
                                .map(test -> test.withConditions(TestConditionEntries.EMPTY))
                                .toList()))));
        robot.interact(() -> window.shell().show("6d"));
        typing.readCautions();
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Test 2 does not state everything"));
        typing.press(confirm);
        assertThat(typing.there(confirm)).isFalse();
        assertThat(window.model().setup().trays().tests())
                .allMatch(test -> test.conditions().tramlineWidth().equals(EnteredQuantity.parse("28 m")));
        robot.interact(() -> window.model()
                .change(setup -> StartPaths.TRAMLINE_WIDTH.path().set(setup, EnteredQuantity.parse("36 m"))));
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Test 2 was driven on 28"));
    }

    /** A test without positions is named by even places, a new one by its own; what is typed there is followed. */
    @Test
    void theCatchesAreNamedByThePlacesOfTheirTest(FxRobot robot) {
        robot.interact(() ->
                window.model().change(setup -> setup.withTrays(setup.trays().withTrayCount(EnteredQuantity.EMPTY))));
        assertThat(names("/trays/tests/1/catches"))
                .containsExactly("\u221214", "\u22129.3", "\u22124.7", "0", "4.7", "9.3", "14");
        typing.press("trays.another");
        assertThat(names("/trays/tests/2/catches"))
                .containsExactly("\u221214", "\u22129.5", "\u22125", "\u22122.5", "0", "2.5", "5", "9.5", "14");
        typing.press("trays.moved.2");
        typing.type("/trays/tests/2/positions/4", "0.6");
        assertThat(names("/trays/tests/2/catches")).hasSize(9).contains("0.6");
        robot.interact(() -> window.shell().show("6a"));
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Every run adds 80"));
    }

    @Test
    void aNewTestTakesThePositionsOfAnotherNumberOfTrays(FxRobot robot) {
        typing.press("trays.another");
        assertThat(typing.there("trays.asPlanned.2")).isFalse();
        typing.type("/trays/trayCount", "9");
        assertThat(names("/trays/tests/2/catches")).hasSize(7);
        typing.press("trays.moved.2");
        typing.press("trays.asPlanned.2");
        assertThat(names("/trays/tests/2/catches")).hasSize(9).contains("\u22122.5");
        assertThat(window.model().setup().trays().tests().get(2).positions()).hasSize(9);
        assertThat(typing.there("trays.asPlanned.2")).isFalse();
        // a test without positions shows those it is assessed with
        typing.type("/trays/trayCount", "7");
        robot.interact(() -> window.model()
                .change(setup ->
                        TrayPaths.TEST_POSITIONS.at(TrayPaths.TESTS.item(1)).set(setup, List.of())));
        robot.interact(() -> window.shell().show("6c"));
        typing.press("test-1");
        typing.press("trays.moved.1");
        assertThat(window.model().setup().trays().tests().get(1).positions())
                .extracting(EnteredQuantity::text)
                .containsExactly("-14.00", "-9.33", "-4.67", "0.00", "4.67", "9.33", "14.00");
    }

    private List<String> names(String list) {
        return typing.node(list).lookupAll(".column-header").stream()
                .map(label -> ((Label) label).getText().replace('\u00a0', ' '))
                .toList();
    }

    @Test
    void ownWindLimitsAreAskedForAndUsed(FxRobot robot) {
        assertThat(typing.there("/trays/windLimits/warn")).isFalse();
        typing.press("trays.windLimitsAsk");
        typing.type("/trays/wind", "2.4");
        assertThat(typing.words()).contains("Wind 2.4 m/s: go on, and drive with or against it.");
        typing.type("/trays/windLimits/note", "1");
        typing.type("/trays/windLimits/warn", "1.5");
        typing.type("/trays/windLimits/stop", "2");
        robot.interact(() -> typing.node("/trays/wind").requestFocus());
        assertThat(typing.words()).contains("Wind 2.4 m/s: too strong for a tray test. Wait.");
        typing.type("/trays/windLimits/stop", "1.2");
        assertThat(typing.words()).anyMatch(word -> word.startsWith("The wind limits have to rise"));
    }

    @Test
    void anotherSetupIsComparedOnOneAxis(FxRobot robot) throws Exception {
        MenuButton choose = (MenuButton) typing.node("trays.beside.choose");
        // the setups are read when it opens
        robot.interact(choose::show);
        robot.interact(() -> choose.getItems().stream()
                .filter(item -> item.getText().contains("neighbour"))
                .findFirst()
                .orElseThrow()
                .fire());
        robot.interact(choose::hide);
        assertThat(typing.words()).anyMatch(word -> word.startsWith("Chance that this setup is the more even"));
        robot.interact(choose::requestFocus);
        WaitForAsyncUtils.waitFor(5, TimeUnit.SECONDS, () -> choose.isFocused());
        Snapshot.of(robot, window.shell(), "beside");
    }

    @Test
    void undoIsAButtonToo(FxRobot robot) {
        assertThat(typing.node("shell.undo").isDisabled()).isTrue();
        typing.type("/trays/trayLength", "51");
        assertThat(typing.node("shell.undo").isDisabled()).isFalse();
        for (int i = 0; i < 10 && !typing.node("shell.undo").isDisabled(); i++) {
            robot.interact(() -> ((javafx.scene.control.Button) typing.node("shell.undo")).fire());
        }
        assertThat(window.model().setup().trays().trayLength().text()).isEqualTo("50");
    }
}
