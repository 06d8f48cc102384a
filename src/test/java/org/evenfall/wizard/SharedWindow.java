package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Stage;
import org.evenfall.setup.entry.Setup;

/**
 * One window for all tests of a class, on a copy of the demo: building the pages and styling them takes most of a test's
 * time. Every test begins with the demo, in the first step, with nothing to undo.
 */
final class SharedWindow {

    /** A change of what has room makes another layout necessary. */
    private static final int LAYOUTS = 4;

    private final WizardWindow window;
    private final Setup demo;
    private final Path folder;

    private SharedWindow(WizardWindow window, Path folder) {
        this.window = window;
        this.demo = cautionsRead(window, window.model().setup());
        this.folder = folder;
    }

    /** A window on a copy of the demo in a folder of its own; on the window's thread. */
    static SharedWindow make() throws Exception {
        Path folder = Files.createTempDirectory("evenfall-test");
        Path copy = folder.resolve("demo.json");
        Files.copy(Path.of("demo", "setup.json"), copy);
        return new SharedWindow(whole(new WizardWindow(Stage0.context(folder), Optional.of(copy))), folder);
    }

    /** A window of a size that no screen of the tests has; laid out but never shown. On the window's thread. */
    static WizardWindow unshown(WindowSize size) throws Exception {
        Path folder = Files.createTempDirectory("evenfall-test");
        WizardWindow window =
                new WizardWindow(Stage0.context(folder), Optional.empty(), size.widthPx(), size.heightPx());
        window.projector(size.projector());
        return whole(window);
    }

    /** The same window with all its pages made, so that a test may look at each from its own thread. */
    static WizardWindow whole(WizardWindow window) {
        window.shell().pages().forEach(PromptPage::make);
        return window;
    }

    /** Shows a prompt in a window that is not shown. On the window's thread. */
    static void arrange(WizardWindow window, String prompt) {
        // what is not laid out yet takes no keyboard
        window.scene().getRoot().applyCss();
        window.scene().getRoot().layout();
        window.shell().show(prompt);
        for (int pass = 0; pass < LAYOUTS; pass++) {
            window.scene().getRoot().applyCss();
            window.scene().getRoot().layout();
        }
    }

    /** The same setup with all cautions read, so that no page of cautions comes first. */
    static Setup cautionsRead(WizardWindow window, Setup setup) {
        return setup.withGuide(setup.guide()
                .withCautionsRead(window.shell().pages().stream()
                        .map(page -> page.prompt().id())
                        .toList()));
    }

    /** Shows the window anew, with the demo; on the window's thread. */
    WizardWindow show(Stage stage, double width, double height) {
        stage.setWidth(width);
        stage.setHeight(height);
        window.dark(false);
        window.projector(false);
        window.shell().go(0);
        window.model().open(demo);
        window.show(stage);
        return window;
    }

    /** The window, shown or not. */
    WizardWindow window() {
        return window;
    }

    /** The person's folder. */
    Path folder() {
        return folder;
    }
}
