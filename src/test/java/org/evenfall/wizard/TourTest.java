package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.evenfall.finding.Step;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Writes a picture of every prompt to target/tour, and looks for text that is cut off. */
@ExtendWith(ApplicationExtension.class)
class TourTest {

    private static final Path TOUR = Path.of("target", "tour");

    /** Writes pictures while the next one is laid out. */
    private static final ExecutorService WRITER = Executors.newSingleThreadExecutor();

    private static SharedWindow shared;

    private final List<Future<?>> pictures = new ArrayList<>();
    private WizardWindow window;
    private Stage stage;

    @Start
    void start(Stage shown) throws Exception {
        if (shared == null) {
            shared = SharedWindow.make();
        }
        stage = shown;
        window = shared.show(stage, 1280, 860);
    }

    @AfterEach
    void written() throws Exception {
        for (Future<?> picture : pictures) {
            picture.get();
        }
    }

    @AfterAll
    static void forget() {
        shared = null;
        WRITER.shutdown();
    }

    @Test
    void light() throws Exception {
        walk("", 1280, 860);
    }

    @Test
    void dark() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> window.dark(true)).get();
        walk("-dark", 1280, 860);
    }

    @Test
    void projector() throws Exception {
        WaitForAsyncUtils.asyncFx(() -> window.projector(true)).get();
        walk("-projector", 1920, 1080);
    }

    @Test
    void smallest() throws Exception {
        walk("-small", 1024, 700);
    }

    private void walk(String name, double width, double height) throws Exception {
        WaitForAsyncUtils.asyncFx(() -> {
                    // shown anew: the headless screen does not like to be resized while it paints
                    stage.hide();
                    stage.setWidth(width);
                    stage.setHeight(height);
                    stage.show();
                })
                .get();
        Files.createDirectories(TOUR);
        for (PromptPage page : window.shell().pages()) {
            String id = page.prompt().id();
            Step step = page.step();
            WaitForAsyncUtils.asyncFx(() -> window.shell().show(id)).get();
            WaitForAsyncUtils.waitForFxEvents();
            if (step == Step.CARD) {
                WaitForAsyncUtils.waitFor(
                        20,
                        TimeUnit.SECONDS,
                        () -> !window.shell().lookupAll(".sheet").isEmpty()
                                || width < 1100
                                || name.equals("-projector"));
                WaitForAsyncUtils.waitForFxEvents();
            }
            picture(id + name);
            assertThat(WaitForAsyncUtils.asyncFx(() -> cutOff(window.shell())).get())
                    .isEmpty();
            assertThat(WaitForAsyncUtils.asyncFx(this::tooWide).get())
                    .as(id + " is wider than its place")
                    .isLessThan(2);
            boolean more = WaitForAsyncUtils.asyncFx(this::scrollDown).get();
            for (int part = 2; more && part < 5; part++) {
                WaitForAsyncUtils.waitForFxEvents();
                picture(id + name + "-" + part);
                more = WaitForAsyncUtils.asyncFx(this::scrollDown).get();
            }
        }
    }

    /** How much the entries stick out of their place, px. */
    private double tooWide() {
        ScrollPane middle = window.shell().middle();
        return middle.getContent().getLayoutBounds().getWidth()
                - middle.getViewportBounds().getWidth();
    }

    /** One screen further down in the middle; false at its end. */
    private boolean scrollDown() {
        ScrollPane middle = window.shell().middle();
        double content = middle.getContent().getLayoutBounds().getHeight();
        double view = middle.getViewportBounds().getHeight();
        if (content <= view + 1 || middle.getVvalue() >= 0.999) {
            return false;
        }
        middle.setVvalue(Math.min(1, middle.getVvalue() + 0.9 * view / (content - view)));
        return true;
    }

    private void picture(String name) throws Exception {
        WritableImage image =
                WaitForAsyncUtils.asyncFx(() -> window.scene().snapshot(null)).get();
        pictures.add(WRITER.submit(() -> ImageIO.write(
                SwingFXUtils.fromFXImage(image, null),
                "png",
                TOUR.resolve(name + ".png").toFile())));
    }

    /** Labels whose shown text is not their whole text. */
    private static List<String> cutOff(Node node) {
        List<String> found = new ArrayList<>();
        if (node instanceof Labeled labeled && labeled.getText() != null && node.isVisible()) {
            for (Node part : labeled.getChildrenUnmodifiable()) {
                if (part instanceof Text text
                        && text.getText().endsWith("\u2026")
                        && !labeled.getText().endsWith("\u2026")) {
                    found.add(labeled.getText());
                }
                if (part instanceof Text text
                        && text.getText().endsWith("...")
                        && !labeled.getText().endsWith("...")) {
                    found.add(labeled.getText());
                }
            }
        }
        if (node instanceof Parent parent && node.isVisible()) {
            parent.getChildrenUnmodifiable().forEach(child -> found.addAll(cutOff(child)));
        }
        return found;
    }
}
