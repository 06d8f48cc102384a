package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.util.Duration;

/** Every prompt of the demo in front once, each drawn; afterwards the resident memory of the process is printed. */
public final class MemoryTour {

    /** Long enough to draw a page. */
    private static final Duration A_PAGE = Duration.millis(150);

    private MemoryTour() {}

    /** Argument: a folder for its files. */
    public static void main(String[] args) {
        Path folder = Path.of(args[0]);
        Platform.startup(() -> {
            try {
                Path copy = folder.resolve("tour.json");
                Files.deleteIfExists(copy);
                Files.copy(Path.of("demo", "setup.json"), copy);
                WizardWindow window = new WizardWindow(Stage0.context(folder.resolve("tour")), Optional.of(copy));
                window.show(new Stage());
                window.model()
                        .open(SharedWindow.cautionsRead(window, window.model().setup()));
                next(window, window.shell().pages().iterator());
            } catch (Exception broken) {
                broken.printStackTrace(System.out);
                System.exit(1);
            }
        });
    }

    private static void next(WizardWindow window, Iterator<PromptPage> left) {
        PauseTransition pause = new PauseTransition(A_PAGE);
        pause.setOnFinished(event -> {
            if (left.hasNext()) {
                window.shell().show(left.next().prompt().id());
                next(window, left);
            } else {
                print();
                System.exit(0);
            }
        });
        pause.play();
    }

    private static void print() {
        try {
            Files.readAllLines(Path.of("/proc/self/status")).stream()
                    .filter(line -> line.startsWith("VmRSS"))
                    .forEach(System.out::println);
        } catch (java.io.IOException none) {
            System.out.println(none.getMessage());
        }
    }
}
