package org.evenfall.wizard;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.NumberFormats;
import org.evenfall.setup.ConditionDraft;
import org.evenfall.store.InputFileException;
import org.evenfall.store.Preferences;
import org.evenfall.store.PreferencesFile;
import org.evenfall.store.SetupFile;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.SetupModel;
import org.jspecify.annotations.Nullable;

/** The wizard in its window: theme, text size, keys, saving. */
final class WizardWindow {

    /** Size of plain text, px. */
    private static final double USUAL_PX = 15;

    /** The same in a hall, share of the height of the window; what matters is half as large again. */
    private static final double HALL_SHARE_OF_HEIGHT = 0.0301;

    /** Ctrl with one of these makes the text larger or smaller. */
    private static final Map<KeyCode, Integer> TEXT_SIZE_STEPS = Map.of(
            KeyCode.PLUS,
            1,
            KeyCode.EQUALS,
            1,
            KeyCode.ADD,
            1,
            KeyCode.MINUS,
            -1,
            KeyCode.SUBTRACT,
            -1,
            KeyCode.DIGIT0,
            0);

    private static final double LEAST_WIDTH = 1024;
    private static final double LEAST_HEIGHT = 700;

    private final WizardContext context;
    private final AutoSaver saver;
    private final SetupModel model;
    private final Shell shell;
    private final Scene scene;
    private boolean dark;
    private boolean projector;
    private int textPercent;
    private final SetupDocument document;
    private final PagesAhead ahead;
    private final PreferencesFile preferencesFile;
    private final Preferences preferences;
    private @Nullable Stage stage;
    private boolean leaving;

    WizardWindow(WizardContext context, Optional<Path> file) throws InputFileException {
        this(context, file, 1280, 800);
    }

    /** A window of this size as long as it is not shown. */
    WizardWindow(WizardContext context, Optional<Path> file, double width, double height) throws InputFileException {
        this(context, Opening.of(context, file), width, height);
    }

    /** A window that begins with what was read before. */
    WizardWindow(WizardContext context, Opening opening) {
        this(context, opening, 1280, 800);
    }

    private WizardWindow(WizardContext context, Opening opening, double width, double height) {
        this.context = context;
        WindowFonts.load();
        SetupFile where = opening.file();
        saver = new AutoSaver(where, where.setup(), SetupDocument::isNew, new SaveListener(), AutoSaver.Delays.USUAL);
        preferencesFile = opening.preferencesFile();
        preferences = opening.preferences();
        document = new SetupDocument(context, saver, preferences.units());
        dark = preferences.dark();
        textPercent = preferences.textPercent();
        // before the first control is made, else the toolkit loads its own theme as well
        useTheme();
        model = new SetupModel(
                opening.setup(),
                opening.assessment(),
                context.assess(),
                saver::keep,
                (next, before, assessment) -> ConditionDraft.begun(
                        next,
                        before,
                        assessment,
                        (value, decimals) -> NumberFormats.decimals(
                                value, decimals, context.words().locale())));
        Form form = new Form(model, context.words());
        shell = new Shell(model, context.words(), StepViews.all(form, context, document));
        ahead = new PagesAhead(shell.pages(), shell::isInFrontStep);
        document.attach(model, shell);
        document.showAccess(where);
        shell.onStepLeft(document.machines()::keep);
        scene = new Scene(shell, width, height);
        scene.getStylesheets()
                .add(Objects.requireNonNull(WizardWindow.class.getResource("/org/evenfall/wizard/evenfall.css"))
                        .toExternalForm());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        scene.heightProperty().addListener((property, old, now) -> applySize());
        applyTheme();
    }

    /** What the saver tells, on the JavaFX thread. */
    private final class SaveListener implements AutoSaver.Listener {

        @Override
        public void failed(Exception problem) {
            Platform.runLater(() -> shell.showNotice(
                    context.words().text("document.notSaved", Arg.text(String.valueOf(problem.getMessage())))));
        }

        @Override
        public void changedElsewhere(Path theirs, Path ours) {
            Platform.runLater(() -> document.changedElsewhere(theirs, ours));
        }
    }

    /** Saves what is left. Where that fails the window stays, once, and says so; closed again it closes. */
    boolean mayClose() {
        if (saver.save() || leaving) {
            return true;
        }
        leaving = true;
        shell.showNotice(context.words().text("document.notSavedClose"));
        return false;
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

    SetupDocument document() {
        return document;
    }

    AutoSaver saver() {
        return saver;
    }

    void show(Stage shown) {
        stage = shown;
        shown.setTitle(context.words().text("app.name"));
        shown.setScene(scene);
        shown.setMinWidth(LEAST_WIDTH);
        shown.setMinHeight(LEAST_HEIGHT);
        WindowPlace.put(shown, preferences);
        shown.show();
        shell.focusFront();
        Platform.runLater(() -> WindowIcons.put(shown));
        assessAhead();
        ahead.start();
    }

    /** The first assessment takes longest; it is made off the window's thread, so that nobody waits for it. */
    private void assessAhead() {
        Thread thread = new Thread(model::assessment, "evenfall-first-assessment");
        thread.setDaemon(true);
        Platform.runLater(thread::start);
    }

    /** Keeps what is to be kept: the machine, how the person likes the window, and what is not saved yet. */
    void close() {
        ahead.stop();
        document.machines().keep();
        Stage shown = stage;
        if (shown != null) {
            preferencesFile.keep(
                    WindowPlace.of(shown, dark, textPercent, preferences).withUnits(document.units()));
        }
        saver.close();
    }

    private void key(KeyEvent event) {
        if (event.getCode() == KeyCode.F11) {
            projector(!projector);
            if (stage != null) {
                stage.setFullScreen(projector);
            }
            event.consume();
        } else if (event.isShortcutDown() && TEXT_SIZE_STEPS.containsKey(event.getCode())) {
            textSize(TEXT_SIZE_STEPS.get(event.getCode()));
            event.consume();
        } else if (event.getCode() == KeyCode.F9) {
            dark(!dark);
            event.consume();
        }
    }

    /** Larger for a hall, by the height of the window. */
    void projector(boolean on) {
        projector = on;
        applyTheme();
    }

    /** Changes the size of the text by so many steps of a tenth; 0 is the usual size. */
    private void textSize(int steps) {
        textPercent = steps == 0
                ? Preferences.USUAL_PERCENT
                : Math.max(Preferences.LEAST_PERCENT, Math.min(Preferences.MOST_PERCENT, textPercent + 10 * steps));
        applySize();
    }

    private void applySize() {
        double px = projector
                ? HALL_SHARE_OF_HEIGHT * (scene.getHeight() > 0 ? scene.getHeight() : LEAST_HEIGHT)
                : USUAL_PX;
        shell.setStyle("-fx-font-size: " + Math.round(px * textPercent) / 100.0 + "px;");
    }

    void dark(boolean on) {
        dark = on;
        applyTheme();
    }

    private void useTheme() {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
    }

    private void applyTheme() {
        useTheme();
        // in one change: without a theme the colours of the style sheet have no value
        List<String> classes = new ArrayList<>(shell.getStyleClass());
        classes.removeAll(List.of("dark", "light", "projector"));
        classes.add(dark ? "dark" : "light");
        if (projector) {
            classes.add("projector");
        }
        shell.getStyleClass().setAll(classes);
        applySize();
        shell.requestLayout();
    }
}
