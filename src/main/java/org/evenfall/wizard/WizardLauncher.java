package org.evenfall.wizard;

import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.page.PagePrinter;
import org.evenfall.setup.Assessor;
import org.evenfall.store.InputFileException;
import org.evenfall.store.Owner;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;

/** Opens the wizard's window, or says in one line why none can be opened. */
public final class WizardLauncher {

    /** Held, so that its filter stays: the libraries are on the class path on purpose. */
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    private final WizardContext context;
    private final WindowToolkit toolkit;

    /**
     * @param demo demo files by name
     * @param environment environment of the process
     * @param toolkit draws the window
     */
    public WizardLauncher(
            Sentences words,
            SetupStore store,
            UserFolder user,
            Clock clock,
            Function<String, Optional<String>> demo,
            Map<String, String> environment,
            WindowToolkit toolkit) {
        this.context = new WizardContext(
                Assessor::assess,
                words,
                store,
                user,
                () -> new Owner(System.getProperty("user.name", ""), computer(environment), clock.instant()),
                clock,
                demo,
                WizardLauncher::reveal,
                suggested -> SaveDialog.choose(words, suggested),
                SaveDialog::open,
                pdf -> PagePrinter.print(pdf, words.text("app.name")));
        this.toolkit = toolkit;
    }

    /** The name of the computer as its system gives it, without asking the network; empty where it does not. */
    private static String computer(Map<String, String> environment) {
        String name = environment.getOrDefault("COMPUTERNAME", environment.getOrDefault("HOSTNAME", ""));
        if (name.isBlank()) {
            try {
                return Files.readString(Path.of("/").resolve("etc").resolve("hostname"))
                        .strip();
            } catch (IOException | RuntimeException unknown) {
                return "";
            }
        }
        return name;
    }

    /** Opens the window and waits until it is closed; a sentence when it cannot be opened. */
    public Optional<String> open(Optional<Path> file) {
        if (!toolkit.hasDisplay()) {
            return Optional.of(context.words().text("window.noDisplay"));
        }
        JAVAFX.setFilter(record -> !String.valueOf(record.getMessage()).startsWith("Unsupported JavaFX configuration"));
        toolkit.start();
        Opening opening;
        try {
            opening = Opening.of(context, file);
        } catch (InputFileException unreadable) {
            return Optional.of(String.valueOf(unreadable.getMessage()));
        }
        Optional<String> cannot = toolkit.await();
        if (cannot.isPresent()) {
            return Optional.of(context.words().text("window.cannot", Arg.text(cannot.get())));
        }
        CountDownLatch closed = new CountDownLatch(1);
        Platform.runLater(() -> start(opening, file.isPresent(), closed));
        try {
            closed.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        Platform.exit();
        return Optional.empty();
    }

    private void start(Opening opening, boolean named, CountDownLatch closed) {
        WizardWindow window = new WizardWindow(context, opening);
        Stage stage = new Stage();
        window.saver().saveAtExit();
        stage.setOnCloseRequest(event -> {
            if (!window.mayClose()) {
                event.consume();
            }
        });
        stage.setOnHidden(event -> {
            window.close();
            closed.countDown();
        });
        window.show(stage);
        if (named && !opening.setup().guide().isInvented()) {
            // the setup that the person named is what they came for; the demo begins at the first page
            window.shell().goOn();
        }
    }

    /** The system's own viewer for a written file; where there is none, the sentence at the foot tells the path. */
    private static void reveal(Path file) {
        Thread viewer = new Thread(
                () -> {
                    try {
                        Path there = Files.exists(file) ? file : file.getParent();
                        if (there != null && Files.exists(there) && Desktop.isDesktopSupported()) {
                            Desktop.getDesktop().open(there.toFile());
                        }
                    } catch (IOException | UnsupportedOperationException noViewer) {
                        // its path is at the foot of the window already
                    }
                },
                "evenfall-viewer");
        viewer.setDaemon(true);
        viewer.start();
    }
}
