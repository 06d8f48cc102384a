package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnitSystem;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The first page: from an empty folder to setups and machines to choose from. */
@ExtendWith(ApplicationExtension.class)
class HomePromptTest {

    private Path folder;
    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        folder = Files.createTempDirectory("evenfall-home");
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.empty()));
        stage.setWidth(1366);
        stage.setHeight(768);
        window.show(stage);
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private Setup setup() {
        return window.model().setup();
    }

    private void home(FxRobot robot) {
        window.saver().save();
        robot.interact(() -> window.shell().show("0a"));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private List<String> tiles(FxRobot robot) {
        return robot.lookup(".tile").<Button>queryAll().stream()
                .map(tile -> tile.getAccessibleText().replace('\u00a0', ' '))
                .toList();
    }

    /** The first time the units are asked and nothing else; a new setup is one key further. */
    private void begin(FxRobot robot) {
        assertThat(typing.node("/start/units/METRIC").isFocused()).isTrue();
        robot.type(KeyCode.DIGIT2);
        robot.interact(() -> ((Button) typing.node("start.new")).fire());
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void theFirstTimeTheUnitsAreAskedThenANewSetupBegins(FxRobot robot) {
        assertThat(tiles(robot)).hasSize(1).allMatch(tile -> tile.startsWith("Demo (invented)"));
        begin(robot);
        assertThat(setup().start().units()).isEqualTo(UnitSystem.ACRE);
        typing.type("/start/tramlineWidth", "92");
        assertThat(setup().start().tramlineWidth()).hasToString("92 ft");
        home(robot);
        assertThat(typing.node("/start/units").localToScene(0, 0).getY())
                .as("below the setups once it is answered")
                .isGreaterThan(robot.lookup(".tile").query().localToScene(0, 0).getY());
        robot.interact(() -> ((Button) typing.node("start.new")).fire());
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().prompt()).isEqualTo("0b");
        assertThat(setup().start().season()).as("prefilled").isEqualTo("2027");
        assertThat(window.saver().file().getParent()).isEqualTo(new UserFolder(folder).season(2027));
    }

    @Test
    void aSetupIsATileWithWhatIsNextAndIsGoneOnWith(FxRobot robot) {
        begin(robot);
        typing.type("/start/farm", "Thornmarsh Farm");
        typing.type("/start/field", "Far Bank");
        typing.type("/start/tramlineWidth", "28 m");
        home(robot);
        assertThat(tiles(robot).get(0))
                .startsWith("Thornmarsh Farm · Far Bank, 28 m, changed ")
                .endsWith("next: Start");
        Path first = window.saver().file();
        robot.interact(() -> ((Button) typing.node("start.demo")).fire());
        assertThat(setup().guide().isInvented()).isTrue();
        assertThat(window.shell().prompt()).as("all before the card is done").isEqualTo("7a");
        Path demo = window.saver().file();
        robot.interact(() ->
                window.model().change(setup -> setup.withStart(setup.start().withCrop("oats"))));
        home(robot);
        robot.interact(() -> ((Button) typing.node("start.demo")).fire());
        assertThat(window.saver().file()).as("a new copy each time").isNotEqualTo(demo);
        home(robot);
        assertThat(tiles(robot)).anyMatch(tile -> tile.contains("Long Reach (invented)") && tile.contains("oats"));
        robot.interact(() -> robot.lookup(".tile").<Button>queryAll().stream()
                .filter(tile -> tile.getAccessibleText().contains("Far Bank"))
                .findFirst()
                .orElseThrow()
                .fire());
        assertThat(window.saver().file()).isEqualTo(first);
        assertThat(window.shell().prompt()).as("the first one that is open").isEqualTo("0b");
    }

    /** The newest setup has the keyboard; Enter opens it. */
    @Test
    void enterOpensTheNewestSetup(FxRobot robot) {
        begin(robot);
        typing.type("/start/farm", "Thornmarsh Farm");
        Path first = window.saver().file();
        robot.interact(() -> window.shell().show("0a"));
        robot.interact(() -> ((Button) typing.node("start.new")).fire());
        home(robot);
        assertThat(window.saver().file()).isNotEqualTo(first);
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.saver().file()).isEqualTo(first);
        assertThat(setup().start().farm()).isEqualTo("Thornmarsh Farm");
    }

    @Test
    void aMachineIsEnteredOnceAndThenChosen(FxRobot robot) {
        begin(robot);
        typing.type("/machine/name", "Old broadcaster");
        typing.type("/machine/levers/0/label", "long vane");
        robot.interact(() -> window.shell().show("1a"));
        window.saver().save();
        assertThat(new UserFolder(folder).machines().resolve("machine-old-broadcaster.json"))
                .exists();
        home(robot);
        robot.interact(() -> ((Button) typing.node("start.new")).fire());
        robot.interact(() -> window.shell().show("0c"));
        assertThat(setup().machine().name()).isEmpty();
        robot.interact(() -> robot.lookup(".known-machines .radio-button")
                .<RadioButton>query()
                .fire());
        assertThat(setup().machine().levers()).hasSize(1);
        robot.press(KeyCode.ALT).type(KeyCode.RIGHT).release(KeyCode.ALT);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().prompt()).as("what is known is passed").isEqualTo("0h");
        home(robot);
        assertThat(typing.words()).anyMatch(words -> words.startsWith("Old broadcaster · levers: 1"));
    }

    @Test
    void aMachineOfTheDemoIsNotKept(FxRobot robot) {
        robot.interact(() -> ((Button) typing.node("start.demo")).fire());
        robot.interact(() -> window.shell().show("2a"));
        home(robot);
        assertThat(new UserFolder(folder).machines()).doesNotExist();
    }

    @Test
    void theDayToSpreadIsReadAndLeftWithEscape(FxRobot robot) {
        robot.interact(() -> ((Button) typing.node("day.title")).fire());
        WaitForAsyncUtils.waitForFxEvents();
        Node page = robot.lookup(".day-page").query();
        assertThat(page.isVisible()).isTrue();
        assertThat(robot.lookup(".day-page .source").queryAll()).hasSizeGreaterThan(5);
        assertThat(typing.node("day.back").isFocused()).isTrue();
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(page.isVisible()).isFalse();
        assertThat(typing.node("start.new")).isNotNull();
    }
}
