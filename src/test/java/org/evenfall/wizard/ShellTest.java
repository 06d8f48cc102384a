package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.evenfall.result.Answers;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.store.PreferencesFile;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The frame around the prompts: cautions, going on without, help, undo, the size of the text. */
@ExtendWith(ApplicationExtension.class)
class ShellTest {

    private Path folder;
    private WizardWindow window;
    private Typing typing;

    @Start
    void start(Stage stage) throws Exception {
        folder = Files.createTempDirectory("evenfall-shell");
        Path copy = folder.resolve("demo.json");
        Files.copy(Path.of("demo", "setup.json"), copy);
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(copy)));
        stage.setWidth(1366);
        stage.setHeight(768);
        window.show(stage);
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private void show(FxRobot robot, String prompt) {
        robot.interact(() -> window.shell().show(prompt));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void chord(FxRobot robot, KeyCode... keys) {
        robot.push(keys);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Setup setup() {
        return window.model().setup();
    }

    private boolean cautions(FxRobot robot) {
        return robot.lookup(".caution-page").query().isVisible();
    }

    @Test
    void cautionsComeOnceBeforeTheFirstPromptThatCanHurt(FxRobot robot) {
        show(robot, "1c");
        assertThat(cautions(robot)).isFalse();
        robot.type(KeyCode.ENTER, KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().prompt()).isEqualTo("1d");
        assertThat(cautions(robot)).isTrue();
        assertThat(typing.node("caution.goOn").isFocused()).isTrue();
        assertThat(robot.lookup(".caution-page .caution .label").<Label>queryAll())
                .extracting(Label::getText)
                .hasSizeGreaterThan(3)
                .last()
                .asString()
                .contains("handbook, local codes and licensed practice");
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(cautions(robot)).isFalse();
        assertThat(window.shell().prompt()).isEqualTo("1d");
        assertThat(setup().guide().cautionsRead()).containsExactly("1d");
        show(robot, "1f");
        assertThat(cautions(robot)).as("once a step").isFalse();
        show(robot, "3b");
        assertThat(cautions(robot)).as("another step").isTrue();
        // undo takes back answers, not what was read
        robot.interact(() -> window.model().set(StartPaths.FARM.path(), "x"));
        chord(robot, KeyCode.CONTROL, KeyCode.Z);
        assertThat(setup().guide().cautionsRead()).containsExactly("1d");
    }

    @Test
    void aPromptIsGoneOnWithoutAndAskedAgain(FxRobot robot) {
        robot.interact(() -> window.model()
                .change(setup ->
                        setup.withHeight(setup.height().withChainPoint(org.evenfall.quantity.EnteredQuantity.EMPTY))));
        typing.node("/height/chainPoint");
        chord(robot, KeyCode.CONTROL, KeyCode.K);
        assertThat(setup().guide().skipped()).containsExactly("4c");
        assertThat(((Button) typing.node("rail-4c")).getAccessibleText()).endsWith("skipped");
        assertThat(typing.words()).contains("Ask this again");
        typing.type("/height/chainPoint", "20");
        assertThat(((Button) typing.node("rail-4c")).getAccessibleText())
                .as("typed after all")
                .endsWith("done");
        chord(robot, KeyCode.CONTROL, KeyCode.K);
        assertThat(setup().guide().skipped()).isEmpty();
    }

    @Test
    void helpSaysWhyHowWordsAndSources(FxRobot robot) {
        typing.node("/product/containerVolume");
        robot.type(KeyCode.F1);
        WaitForAsyncUtils.waitForFxEvents();
        Set<String> help = robot.lookup(".help .label").<Label>queryAll().stream()
                .map(Label::getText)
                .collect(Collectors.toSet());
        assertThat(help)
                .anyMatch(text -> text.startsWith("Bulk density: "))
                .anyMatch(text -> text.startsWith("Source: "))
                .contains(window.shell().pages().stream()
                        .filter(page -> page.prompt().id().equals("1f"))
                        .map(page -> ((Label) page.lookup(".why")).getText())
                        .findFirst()
                        .orElseThrow());
        robot.type(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(robot.lookup(".help .label").queryAll()).isEmpty();
        assertThat(typing.node("/product/containerVolume").isVisible()).isTrue();
    }

    @Test
    void theSheetsAreWrittenIntoTheFolderOfTheFarm(FxRobot robot) throws Exception {
        for (String button : List.of("sheet.printYard", "sheet.printField")) {
            robot.interact(() -> ((Button) typing.node(button)).fire());
            WaitForAsyncUtils.waitFor(
                    20,
                    TimeUnit.SECONDS,
                    () -> robot.lookup(".notice").<Label>query().getText().startsWith("Written"));
        }
        Path sheets = new UserFolder(folder).sheets();
        assertThat(sheets.resolve("sheet-yard.pdf")).isNotEmptyFile();
        assertThat(sheets.resolve("sheet-field.pdf")).isNotEmptyFile();
    }

    /** Not on a page of its own: the card, tested products, the units of the first page, an entry of older files. */
    @Test
    void everyAnswerIsOnTheCheckPage(FxRobot robot) {
        List<String> reviewed = new ArrayList<>();
        robot.interact(() -> window.shell().review().forEach(review -> reviewed.addAll(review.answers())));
        assertThat(Answers.of(window.shell().words(), setup()).stream()
                        .filter(line -> !line.pointer()
                                .matches("/(card|match/library|start/units|match/chosen|machine/referencePoint).*"))
                        .map(Answers.Line::text)
                        .filter(text -> !reviewed.contains(text)))
                .isEmpty();
    }

    @Test
    void whatIsRemovedIsOfferedBack(FxRobot robot) {
        typing.node("/product/containerFull/1");
        robot.interact(() -> typing.node("/product/containerFull/1").requestFocus());
        int rows = setup().product().containerFull().size();
        chord(robot, KeyCode.CONTROL, KeyCode.DELETE);
        assertThat(setup().product().containerFull()).hasSize(rows - 1);
        assertThat(robot.lookup(".notice").<Label>query().getText()).contains("Undo");
        chord(robot, KeyCode.CONTROL, KeyCode.Z);
        assertThat(setup().product().containerFull()).hasSize(rows);
        chord(robot, KeyCode.CONTROL, KeyCode.Y);
        assertThat(setup().product().containerFull()).hasSize(rows - 1);
    }

    @Test
    void theSizeOfTheTextAndTheDarkViewAreRemembered(FxRobot robot) {
        show(robot, "0b");
        chord(robot, KeyCode.CONTROL, KeyCode.PLUS);
        chord(robot, KeyCode.CONTROL, KeyCode.PLUS);
        chord(robot, KeyCode.CONTROL, KeyCode.MINUS);
        robot.type(KeyCode.F9);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().getStyle()).contains("16.5px");
        robot.interact(window::close);
        PreferencesFile file = new PreferencesFile(new UserFolder(folder));
        assertThat(file.read().textPercent()).isEqualTo(110);
        assertThat(file.read().dark()).isTrue();
        assertThat(file.read().width()).isEqualTo(1366);
    }

    @Test
    void aHallFillsTheScreenAndItsTextFollowsTheHeight(FxRobot robot) {
        show(robot, "0b");
        robot.type(KeyCode.F11);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().getStyleClass()).contains("projector");
        assertThat(window.shell().getStyle())
                .isEqualTo("-fx-font-size: " + Math.round(3.01 * window.scene().getHeight()) / 100.0 + "px;");
        robot.type(KeyCode.F11);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.shell().getStyleClass()).doesNotContain("projector");
    }
}
