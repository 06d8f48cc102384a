package org.evenfall.wizard;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.GuideEntries;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnitSystem;
import org.evenfall.setup.path.PrivateEntries;
import org.evenfall.store.FarmShelf;
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
    private @Nullable Frame frame;
    private final UnitSystem preferred;
    private final FarmMachines machines;

    /** @param units units that a new setup begins with */
    SetupDocument(WizardContext context, AutoSaver saver, UnitSystem units) {
        this.preferred = units;
        this.context = context;
        this.saver = saver;
        this.machines = new FarmMachines(
                new FarmShelf(context.store(), context.user()),
                context.words(),
                sentence -> frame().showNotice(sentence));
    }

    /**
     * Connects the document with the window, once that is made.
     *
     * @param open the model that shows the open setup
     * @param around the window around the pages
     */
    void attach(SetupModel open, Frame around) {
        model = open;
        frame = around;
        machines.attach(open);
    }

    /** The machines of the farm. */
    FarmMachines machines() {
        return machines;
    }

    /** The window around the pages, once it is made. */
    Frame frame() {
        return Objects.requireNonNull(frame, "attached before anything is pressed");
    }

    private void showNotice(String sentence) {
        frame().showNotice(sentence);
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
        String fileName = fileName(file);
        try {
            Setup setup = shown(load(file));
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

    /** A setup as others may see it. */
    Setup shown(Setup setup) {
        SetupModel open = model;
        return open == null ? setup : open.shown(setup);
    }

    /** Name of a file; it may have that of the farm in it. */
    String fileName(Path file) {
        SetupModel open = model;
        return open != null && open.namesHidden() ? PrivateEntries.DOTS : String.valueOf(file.getFileName());
    }

    /** Another setup, to be shown only; empty, with a notice, when it cannot be read. */
    Optional<Setup> preview(Path file) {
        return read(file);
    }

    /** Opens an empty setup in a new file, at its first prompt. */
    void createNew() {
        show(Setup.EMPTY, newFile("setup"));
        frame().goOn();
    }

    /** Opens a new setup with a machine of the farm. */
    void createNew(MachineEntries machine) {
        show(machines.with(dated(Setup.EMPTY), machine), newFile("setup"));
        frame().goOn();
    }

    /** Opens a setup to go on with it, at the first prompt that is still open. */
    void open(Path file) {
        if (isOpen(file)) {
            frame().goOn();
        } else {
            read(file).ifPresent(setup -> {
                show(setup, file);
                frame().goOn();
            });
        }
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
                frame().goOn();
            } catch (InputFileException broken) {
                showNotice(String.valueOf(broken.getMessage()));
            }
        });
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
    Setup load(Path file) throws InputFileException {
        Optional<Setup> unsaved = saver.unsaved(file);
        return unsaved.isPresent() ? unsaved.get() : context.store().read(file);
    }

    private void show(Setup file, Path where) {
        machines.keep();
        saver.open(where, file);
        if (model != null) {
            model.open(dated(file));
            machines.opened(model.setup());
        }
    }

    /** The units chosen last. */
    UnitSystem units() {
        SetupModel open = model;
        UnitSystem own =
                open == null ? UnitSystem.UNANSWERED : open.setup().start().units();
        return own == UnitSystem.UNANSWERED ? preferred : own;
    }

    /** Whether nothing is typed but what a new setup begins with. */
    static boolean isNew(Setup setup) {
        return setup.withStart(setup.start().withSeason("").withUnits(UnitSystem.UNANSWERED))
                .withCard(setup.card().withDate(""))
                .withGuide(GuideEntries.EMPTY)
                .equals(Setup.EMPTY);
    }

    /** A card without a date gets today's; a setup in which nothing is typed the season of today and the usual units. */
    Setup dated(Setup setup) {
        LocalDate today = LocalDate.now(context.clock());
        Setup next = setup.equals(Setup.EMPTY)
                ? setup.withStart(setup.start()
                        .withSeason(Integer.toString(Seasons.of(today)))
                        .withUnits(units()))
                : setup;
        return next.card().date().isBlank() ? next.withCard(next.card().withDate(today.toString())) : next;
    }

    private Path newFile(String kind) {
        return newFile(context, kind);
    }

    /** A file name that is not in use: kind, date and time, and a number if need be. */
    static Path newFile(WizardContext context, String kind) {
        String stamp = kind + "-" + LocalDateTime.now(context.clock()).format(STAMP);
        return FreeNames.in(context.user().season(Seasons.of(LocalDate.now(context.clock()))), stamp, ".json");
    }
}
