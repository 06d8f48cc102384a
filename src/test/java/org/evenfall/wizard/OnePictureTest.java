package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.ImageView;
import javafx.stage.Stage;
import org.evenfall.wizard.picture.CardPreview;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Only the picture of the prompt in front has a drawing in memory. */
@ExtendWith(ApplicationExtension.class)
final class OnePictureTest {

    private WizardWindow window;

    @Start
    void start(Stage stage) throws Exception {
        Path folder = Files.createTempDirectory("evenfall-one-picture");
        Path copy = folder.resolve("demo.json");
        Files.copy(Path.of("demo", "setup.json"), copy);
        window = new WizardWindow(Stage0.context(folder), Optional.of(copy));
        stage.setWidth(1366);
        stage.setHeight(768);
        window.show(stage);
        window.model().open(SharedWindow.cautionsRead(window, window.model().setup()));
    }

    @Test
    void onlyThePictureInFrontIsDrawn(FxRobot robot) throws Exception {
        for (String prompt : List.of("1a", "1b", "1f", "2c", "1a", "6d", "4c")) {
            robot.interact(() -> window.shell().show(prompt));
            WaitForAsyncUtils.waitForFxEvents();
            robot.interact(() -> {
                Set<Node> drawn = window.scene().getRoot().lookupAll("*").stream()
                        .filter(node -> node instanceof Canvas canvas && canvas.getWidth() > 1)
                        .map(Node::getParent)
                        .collect(Collectors.toSet());
                assertThat(drawn).as(prompt).isNotEmpty().allMatch(OnePictureTest::isShown);
            });
        }
    }

    @Test
    void thePagesOfTheCardAreKeptWhileTheyAreInFront(FxRobot robot) throws Exception {
        robot.interact(() -> window.shell().show("7b"));
        waitForPages(true);
        robot.interact(() -> window.shell().show("1a"));
        waitForPages(false);
        robot.interact(() -> window.shell().show("7c"));
        waitForPages(true);
    }

    private void waitForPages(boolean there) throws Exception {
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> pages() == there);
    }

    private boolean pages() throws Exception {
        return WaitForAsyncUtils.asyncFx(() -> window.scene().getRoot().lookupAll(".ev-card-preview").stream()
                        .map(CardPreview.class::cast)
                        .flatMap(preview -> preview.getChildrenUnmodifiable().stream())
                        .anyMatch(ImageView.class::isInstance))
                .get();
    }

    private static boolean isShown(Node node) {
        for (Node up = node; up != null; up = up.getParent()) {
            if (!up.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
