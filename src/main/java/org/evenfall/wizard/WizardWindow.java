package org.evenfall.wizard;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Font;
import javafx.stage.Stage;
import org.evenfall.finding.Arg;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupFile;
import org.evenfall.store.InputFileException;

/** The wizard in its window: look, keys, saving. */
final class WizardWindow {

    private static final String[] FONTS = {
        "AtkinsonHyperlegibleNext_400Regular.ttf",
        "AtkinsonHyperlegibleNext_600SemiBold.ttf",
        "AtkinsonHyperlegibleNext_700Bold.ttf",
        "DejaVuSans.ttf"
    };

    private final WizardContext context;
    private final AutoSaver saver;
    private final SetupModel model;
    private final Shell shell;
    private final Scene scene;
    private boolean dark;
    private boolean projector;

    WizardWindow(WizardContext context, Optional<Path> file) throws InputFileException {
        this.context = context;
        for (String font : FONTS) {
            Font.loadFont(
                    Objects.requireNonNull(WizardWindow.class.getResourceAsStream("/org/evenfall/fonts/" + font)), 15);
        }
        SetupFile first = file.isPresent() ? context.store().read(file.get()) : SetupFile.of(Setup.EMPTY);
        Path where = file.isPresent() ? file.get() : SetupDocument.newFile(context, "setup");
        SetupDocument[] document = new SetupDocument[1];
        saver = new AutoSaver(
                context.store(),
                where,
                first,
                problem -> Platform.runLater(() -> document[0].tell(
                        context.words().text("desk.notSaved", Arg.text(String.valueOf(problem.getMessage()))))));
        document[0] = new SetupDocument(context, saver);
        model = new SetupModel(dated(first.setup()), context.assess(), saver::keep);
        Form form = new Form(model, context.words());
        shell = new Shell(model, context.words(), StepViews.all(form, context, document[0]));
        document[0].attach(model, shell::tell, step -> shell.go(step.number()));
        scene = new Scene(shell, 1280, 800);
        scene.getStylesheets()
                .add(Objects.requireNonNull(WizardWindow.class.getResource("/org/evenfall/wizard/evenfall.css"))
                        .toExternalForm());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        look();
    }

    private Setup dated(Setup setup) {
        return setup.card().date().isBlank()
                ? setup.withCard(
                        setup.card().withDate(LocalDate.now(context.clock()).toString()))
                : setup;
    }

    Scene scene() {
        return scene;
    }

    Shell shell() {
        return shell;
    }

    SetupModel model() {
        return model;
    }

    AutoSaver saver() {
        return saver;
    }

    void show(Stage stage) {
        stage.setTitle(context.words().text("app.name"));
        stage.setScene(scene);
        stage.setMinWidth(1024);
        stage.setMinHeight(700);
        stage.show();
        shell.go(shell.front());
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.F11) {
            projector(!projector);
            event.consume();
        } else if (event.getCode() == KeyCode.F9) {
            dark(!dark);
            event.consume();
        }
    }

    /** Larger for a hall: about three times a desk's text on a screen of 1 080 lines. */
    void projector(boolean on) {
        projector = on;
        look();
    }

    void dark(boolean on) {
        dark = on;
        look();
    }

    private void look() {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        shell.getStyleClass().removeAll("dark", "light", "projector");
        shell.getStyleClass().add(dark ? "dark" : "light");
        if (projector) {
            shell.getStyleClass().add("projector");
        }
        shell.requestLayout();
    }
}
