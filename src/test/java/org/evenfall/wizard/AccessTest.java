package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Who may write a setup, and what happens when another program wrote it or its file is damaged. */
@ExtendWith(ApplicationExtension.class)
class AccessTest {

    private final SetupStore store = new SetupStore(new SetupJson());

    private Path folder;
    private Path file;
    private WizardWindow window;
    private Typing typing;

    private static Setup farm(String name) {
        return Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm(name).withSeason("2027"));
    }

    @Start
    void start(Stage stage) throws Exception {
        folder = Files.createTempDirectory("evenfall-access");
        file = new UserFolder(folder).season(2027).resolve("setup.json");
        store.save(farm("Long Reach"), file);
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(file)));
        window.show(stage);
    }

    @BeforeEach
    void keyboard(FxRobot robot) {
        typing = new Typing(robot);
    }

    private String banner(FxRobot robot) {
        return robot.lookup(".banner-text").queryLabeled().getText().replace('\u00a0', ' ');
    }

    private void press(FxRobot robot, String text) {
        robot.interact(() -> robot.lookup(".banner .button").<Button>queryAll().stream()
                .filter(button -> button.getText().equals(text))
                .findFirst()
                .orElseThrow()
                .fire());
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void aSecondWindowShowsWhoHasTheSetupAndChangesNothing(FxRobot robot) throws Exception {
        assertThat(banner(robot)).isEmpty();
        robot.interact(() -> {
            try {
                WizardWindow second = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(file)));
                second.shell().show("0b");
                second.model().change(setup -> farm("changed"));
                assertThat(second.model().setup().start().farm()).isEqualTo("Long Reach");
                assertThat(second.shell().pages().get(1).isDisabled()).isTrue();
                assertThat(second.shell().pages().get(0).isDisabled())
                        .as("home")
                        .isFalse();
                assertThat(((Label) second.shell().lookup(".banner-text"))
                                .getText()
                                .replace('\u202f', ' ')
                                .replace('\u00a0', ' '))
                        .startsWith("tester has this setup open on bench since 18 Mar 2027, ")
                        .endsWith("Here it can only be read.");
                second.model().hideNames(true);
                assertThat(((Label) second.shell().lookup(".banner-text")).getText())
                        .isEqualTo("This setup is open in another window. Here it can only be read.");
                second.model().hideNames(false);
                window.close();
                ((Button) second.shell().lookup(".banner .button")).fire();
                assertThat(second.shell().lookup(".banner").isVisible()).isFalse();
                second.model().change(setup -> farm("changed"));
                assertThat(second.model().setup().start().farm()).isEqualTo("changed");
                assertThat(second.shell().pages().get(1).isDisabled()).isFalse();
                second.close();
            } catch (Exception broken) {
                throw new AssertionError(broken);
            }
        });
        assertThat(store.read(file).start().farm()).isEqualTo("changed");
    }

    @Test
    void afterAnotherProgramChangedTheFileThePersonChooses(FxRobot robot) throws Exception {
        robot.interact(() -> window.shell().show("0b"));
        store.save(farm("other"), file);
        typing.type("/start/crop", "wheat");
        window.saver().save();
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(banner(robot))
                .isEqualTo(
                        "Another program changed setup.json. Both are kept: what is typed here is in setup-here.json.");
        Path ours = file.resolveSibling("setup-here.json");
        assertThat(store.read(ours).start().crop()).isEqualTo("wheat");
        assertThat(store.read(file).start().farm()).isEqualTo("other");
        press(robot, "Open the other one");
        assertThat(window.model().setup().start().farm()).isEqualTo("other");
        assertThat(window.saver().file()).isEqualTo(file);
        assertThat(banner(robot)).isEmpty();
        assertThat(store.read(ours).start().crop()).as("kept").isEqualTo("wheat");
    }

    @Test
    void goingOnWithWhatIsTypedHereSavesThere(FxRobot robot) throws Exception {
        robot.interact(() -> window.shell().show("0b"));
        store.save(farm("other"), file);
        typing.type("/start/crop", "wheat");
        window.saver().save();
        WaitForAsyncUtils.waitForFxEvents();
        press(robot, "Go on with what is typed here");
        typing.type("/start/field", "Bank");
        window.saver().save();
        assertThat(store.read(file.resolveSibling("setup-here.json")).start().field())
                .isEqualTo("Bank");
        assertThat(store.read(file)).isEqualTo(farm("other"));
    }

    @Test
    void aDamagedFileIsBroughtBackFromHome(FxRobot robot) throws Exception {
        robot.interact(() -> window.shell().show("0b"));
        typing.type("/start/crop", "wheat");
        window.saver().save();
        robot.interact(() -> ((Button) typing.node("start.new")).fire());
        window.saver().save();
        Files.writeString(file, "{");
        robot.interact(() -> window.shell().show("0a"));
        WaitForAsyncUtils.waitFor(
                10,
                TimeUnit.SECONDS,
                () -> robot.lookup(".farm-problems .button").tryQuery().isPresent());
        assertThat(robot.lookup(".farm-problems .label").queryLabeled().getText())
                .isEqualTo("setup.json is damaged and cannot be read.");
        robot.interact(
                () -> robot.lookup(".farm-problems .button").queryButton().fire());
        assertThat(store.read(file).start().farm()).isEqualTo("Long Reach");
        WaitForAsyncUtils.waitFor(
                10,
                TimeUnit.SECONDS,
                () -> robot.lookup(".farm-problems .button").tryQuery().isEmpty());
    }

    @Test
    void aSetupFromElsewhereIsTakenIn(FxRobot robot) throws Exception {
        Path stick = folder.resolve("stick").resolve("theirs.json");
        store.save(farm("Thornmarsh"), stick);
        robot.interact(() -> {
            try {
                WizardWindow other = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(stick)));
                assertThat(other.saver().file()).isEqualTo(file.resolveSibling("theirs.json"));
                assertThat(other.model().setup().start().farm()).isEqualTo("Thornmarsh");
                // once more from the stick: it is the one that is open
                other.document().open(stick);
                assertThat(other.saver().file()).isEqualTo(file.resolveSibling("theirs.json"));
                assertThat(other.model().isLocked()).isFalse();
                other.close();
            } catch (Exception broken) {
                throw new AssertionError(broken);
            }
        });
    }
}
