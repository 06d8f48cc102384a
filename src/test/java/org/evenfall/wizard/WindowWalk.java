package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.stage.Stage;

/** The window on a copy of the demo in a process of its own: each prompt is in front once, then the window is closed. */
public final class WindowWalk {

    private WindowWalk() {}

    /** Argument: a folder for its files. */
    public static void main(String[] args) throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        CountDownLatch closed = new CountDownLatch(1);
        Path folder = Path.of(args[0]);
        Platform.runLater(() -> {
            try {
                walk(folder);
            } catch (Exception broken) {
                broken.printStackTrace(System.out);
            } finally {
                closed.countDown();
            }
        });
        closed.await();
        Platform.exit();
    }

    private static void walk(Path folder) throws Exception {
        Path copy = Files.copy(Path.of("demo", "setup.json"), folder.resolve("demo.json"));
        WizardWindow window = new WizardWindow(Stage0.context(folder.resolve("own")), Optional.of(copy));
        Stage stage = new Stage();
        window.show(stage);
        window.model().open(SharedWindow.cautionsRead(window, window.model().setup()));
        for (PromptPage page : window.shell().pages()) {
            SharedWindow.arrange(window, page.prompt().id());
            System.out.println("in front " + page.prompt().id());
        }
        stage.hide();
        window.close();
    }
}
