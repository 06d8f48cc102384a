package org.evenfall.wizard;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FreeNames;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupJson;
import org.evenfall.wizard.form.SetupModel;
import org.jspecify.annotations.Nullable;

/** The setup that is open: which file it is saved in, which others there are. The wizard saves by itself. */
final class SetupDocument {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);

    private final WizardContext context;
    private final AutoSaver saver;
    private @Nullable SetupModel model;
    private Consumer<String> notices = sentence -> {};
    private Consumer<Step> navigation = step -> {};

    SetupDocument(WizardContext context, AutoSaver saver) {
        this.context = context;
        this.saver = saver;
    }

    /**
     * Connects the document with the window, once that is made.
     *
     * @param open the model that shows the open setup
     * @param shown shows a sentence to the person
     * @param steps brings a step to the front
     */
    void attach(SetupModel open, Consumer<String> shown, Consumer<Step> steps) {
        model = open;
        notices = shown;
        navigation = steps;
    }

    /** Brings a step to the front. */
    void go(Step step) {
        navigation.accept(step);
    }

    /** Shows a sentence at the foot of the window. */
    void showNotice(String sentence) {
        notices.accept(sentence);
    }

    /** Files opened or saved before, newest first. */
    List<Path> recent() {
        return context.user().recent();
    }

    /** Whether it is the file that the open setup is saved in. */
    boolean isOpen(Path file) {
        return saver.file().equals(file);
    }

    /** What a setup is called in a list: farm, crop, product, or its file name. */
    String name(Path file) {
        String fileName = String.valueOf(file.getFileName());
        try {
            Setup setup = load(file);
            String name = Stream.of(
                            setup.start().farm(),
                            setup.start().crop(),
                            setup.product().name())
                    .filter(part -> !part.isBlank())
                    .collect(Collectors.joining(" · "));
            return name.isEmpty() ? fileName : name + "  (" + fileName + ")";
        } catch (InputFileException unreadable) {
            return fileName;
        }
    }

    /** Another setup, to be shown only; empty, with a notice, when it cannot be read. */
    Optional<Setup> preview(Path file) {
        return read(file);
    }

    /** Opens an empty setup in a new file. */
    void createNew() {
        show(Setup.EMPTY, newFile("setup"));
    }

    /** Opens a setup to go on with it. */
    void open(Path file) {
        read(file).ifPresent(setup -> show(setup, file));
    }

    /** Opens a finished setup again, as a new file and revision; the old file stays as it is. */
    void reopen(Path file) {
        read(file).ifPresent(setup -> show(Revisions.next(setup), newFile("revision")));
    }

    /** Opens the demo in a new file. */
    void demo() {
        context.demo().apply("setup.json").ifPresent(text -> {
            try {
                show(new SetupJson().read(text, "demo"), newFile("demo"));
            } catch (InputFileException broken) {
                showNotice(String.valueOf(broken.getMessage()));
            }
        });
    }

    /** Takes over the machine and the tested products of another setup. */
    void borrowMachine(Path file) {
        borrow(
                file,
                (own, other) -> own.withMachine(other.machine())
                        .withMatch(own.match().withLibrary(other.match().library())));
    }

    /** Takes over the product of another setup. */
    void borrowProduct(Path file) {
        borrow(file, (own, other) -> own.withProduct(other.product()));
    }

    /** Takes over the plan of the rate of another setup. */
    void borrowRate(Path file) {
        borrow(
                file,
                (own, other) -> own.withRate(own.rate().withPlan(other.rate().plan())));
    }

    private void borrow(Path file, BinaryOperator<Setup> how) {
        SetupModel open = model;
        if (open != null) {
            read(file).ifPresent(other -> {
                open.change(own -> how.apply(own, other));
                showNotice(context.words().text("document.borrowed"));
            });
        }
    }

    private Optional<Setup> read(Path file) {
        try {
            return Optional.of(load(file));
        } catch (InputFileException problem) {
            showNotice(context.words().text("document.unreadable", Arg.text(String.valueOf(problem.getMessage()))));
            return Optional.empty();
        }
    }

    /** What is not written yet counts more than what is in the file. */
    private Setup load(Path file) throws InputFileException {
        Optional<Setup> unsaved = saver.unsaved(file);
        return unsaved.isPresent() ? unsaved.get() : context.store().read(file);
    }

    private void show(Setup file, Path where) {
        saver.open(where, file);
        if (model != null) {
            model.open(dated(context, file));
        }
    }

    /** A card without a date gets today's. */
    static Setup dated(WizardContext context, Setup setup) {
        return setup.card().date().isBlank()
                ? setup.withCard(
                        setup.card().withDate(LocalDate.now(context.clock()).toString()))
                : setup;
    }

    private Path newFile(String kind) {
        return newFile(context, kind);
    }

    /** A file name that is not in use: kind, date and time, and a number if need be. */
    static Path newFile(WizardContext context, String kind) {
        String stamp = kind + "-" + LocalDateTime.now(context.clock()).format(STAMP);
        return FreeNames.in(context.user().setups(), stamp, ".json");
    }
}
