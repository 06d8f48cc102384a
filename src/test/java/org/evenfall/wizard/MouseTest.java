package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.stage.Stage;
import org.evenfall.finding.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A person with a mouse: what is pressed does not move away. */
@ExtendWith(ApplicationExtension.class)
class MouseTest {

    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        Path folder = Files.createTempDirectory("evenfall-mouse");
        Path copy = folder.resolve("demo.json");
        Files.copy(Path.of("demo", "setup.json"), copy);
        window = SharedWindow.whole(new WizardWindow(Stage0.context(folder), Optional.of(copy)));
        stage.setWidth(1280);
        stage.setHeight(800);
        window.show(stage);
    }

    @Test
    void aButtonNearTheEdgeOfThePageCanBeClicked(FxRobot robot) throws Exception {
        robot.interact(() -> window.shell().go(Step.CARD.number()));
        WaitForAsyncUtils.waitForFxEvents();
        Typing typing = new Typing(robot);
        Node print = typing.node("card.print");
        robot.clickOn(print);
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> typing.words().contains("Sent to the printer. Check that it was printed at 100 %."));
    }
}
