package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
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
import javafx.application.Platform;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.setup.NextSeason;
import org.evenfall.setup.NumberWriter;
import org.evenfall.setup.RateCheckAgain;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.GuideEntries;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.UnitSystem;
import org.evenfall.setup.path.PrivateEntries;
import org.evenfall.store.FarmCheck;
import org.evenfall.store.FarmProblem;
import org.evenfall.store.FarmShelf;
import org.evenfall.store.InputFileException;
import org.evenfall.store.ReadOnly;
import org.evenfall.store.SetupFile;
import org.evenfall.store.SetupFiles;
import org.evenfall.store.SetupJson;
import org.evenfall.wizard.form.SetupModel;
import org.jspecify.annotations.Nullable;

/** The setup that is open: which file it is saved in, which others there are. The wizard saves by itself. */
final class SetupDocument {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);

    private static final String BUCKET_PROMPT = "5e";
    private static final String LOG_PROMPT = "7d";

    private final WizardContext context;
    private final AutoSaver saver;
    private final SetupFiles files;
    private @Nullable SetupModel model;
    private @Nullable Frame frame;
    private final UnitSystem preferred;
    private final FarmMachines machines;

    /** @param units units that a new setup begins with */
    SetupDocument(WizardContext context, AutoSaver saver, UnitSystem units) {
        this.preferred = units;
        this.context = context;
        this.saver = saver;
        this.files = context.files();
        this.machines = new FarmMachines(
                new FarmShelf(context.store(), context.user()),
                context.words(),
                sentence -> Platform.runLater(() -> showNotice(sentence)),
                saver::later);
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
        return context.user().recent().stream()
                .filter(file -> context.user().isInSeason(file) || !files.isTakenIn(file))
                .toList();
    }

    /** The file that the open setup is saved in. */
    Path file() {
        return saver.file();
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

    private boolean namesHidden() {
        SetupModel open = model;
        return open != null && open.namesHidden();
    }

    /** Name of a file; it may have that of the farm in it. */
    String fileName(Path file) {
        return namesHidden() ? PrivateEntries.DOTS : String.valueOf(file.getFileName());
    }

    /** Another setup, to be shown only; empty, with a notice, when it cannot be read. */
    Optional<Setup> preview(Path file) {
        return read(file);
    }

    /** Opens an empty setup in a new file, at its first prompt. */
    void createNew() {
        showNew("setup", Setup.EMPTY);
        frame().goOn();
    }

    /** Opens a new setup with a machine of the farm. */
    void createNew(MachineEntries machine) {
        showNew("setup", machines.with(dated(Setup.EMPTY), machine));
        frame().goOn();
    }

    /** Opens a setup to go on with it, at the first prompt that is still open. */
    void open(Path file) {
        if (isOpen(file)) {
            frame().goOn();
        } else {
            openToWrite(file);
        }
    }

    private void openToWrite(Path file) {
        machines.keep();
        try {
            Path place = files.place(file, Seasons.of(LocalDate.now(context.clock())));
            if (!isOpen(place) || locked()) {
                bring(place);
            }
            frame().goOn();
            if (!place.equals(file)) {
                showNotice(context.words().text("document.takenIn", Arg.text(fileName(file))));
            }
        } catch (InputFileException problem) {
            unreadable(problem);
        }
    }

    private boolean locked() {
        SetupModel open = model;
        return open != null && open.isLocked();
    }

    /** A file that was open before and still has something unsaved is the same one again. */
    private void bring(Path place) throws InputFileException {
        Optional<Setup> stillOpen = saver.takeBack(place);
        if (stillOpen.isPresent()) {
            present(stillOpen.get());
            showReadOnly(Optional.empty(), place);
            return;
        }
        SetupFile opened = files.open(place, Seasons.of(LocalDate.now(context.clock())));
        saver.open(opened, opened.setup());
        present(opened.setup());
        showAccess(opened);
    }

    /** Opens a finished setup again, as a new file and revision; the old file stays as it is. */
    void reopen(Path file) {
        read(file).ifPresent(setup -> showNew("revision", Revisions.next(setup)));
    }

    /** The next revision of a setup with one bucket test begun; the way on leads to the card. */
    void rateAgain(Path file, NumberWriter numbers) {
        read(file).ifPresent(setup -> {
            LocalDate today = LocalDate.now(context.clock());
            showNew("revision", RateCheckAgain.begun(setup, context.assess().apply(setup), numbers, today));
            frame().go(Step.CARD);
            frame().visit(BUCKET_PROMPT);
        });
    }

    /** Opens a setup where its passes are logged. */
    void logPass(Path file) {
        open(file);
        if (isOpen(file)) {
            frame().show(LOG_PROMPT);
        }
    }

    /** Begins the setup of the next season from one of before. */
    void nextSeason(Path file) {
        read(file).ifPresent(setup -> {
            LocalDate today = LocalDate.now(context.clock());
            int season = Math.max(Seasons.of(today), NextSeason.after(setup, today));
            showNew("setup", NextSeason.of(setup, context.assess().apply(setup), season));
            frame().goOn();
        });
    }

    /** The folders of the seasons, the last season first. */
    List<Path> seasons() {
        return context.user().seasons();
    }

    /** Opens the demo in a new file. */
    void demo() {
        context.demo().apply("setup.json").ifPresent(text -> {
            try {
                showNew("demo", new SetupJson().read(text, "demo"));
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
            unreadable(problem);
            return Optional.empty();
        }
    }

    private void unreadable(InputFileException problem) {
        showNotice(context.words().text("document.unreadable", Arg.text(String.valueOf(problem.getMessage()))));
    }

    /** What is not written yet counts more than what is in the file. */
    Setup load(Path file) throws InputFileException {
        Optional<Setup> unsaved = saver.unsaved(file);
        return unsaved.isPresent() ? unsaved.get() : context.store().read(file);
    }

    /** A setup in a new file; it is written once something is typed that a new one does not begin with. */
    private void showNew(String kind, Setup setup) {
        machines.keep();
        SetupFile file = files.create(
                Seasons.of(setup, Seasons.of(LocalDate.now(context.clock()))), stamped(context, kind), Setup.EMPTY);
        saver.open(file, Setup.EMPTY);
        present(setup);
        showAccess(file);
    }

    private void present(Setup setup) {
        SetupModel open = model;
        if (open != null) {
            open.lock(false);
            open.open(dated(setup));
            machines.opened(open.setup());
        }
    }

    /** Says where the setup that was opened can only be read, and why. */
    void showAccess(SetupFile file) {
        showReadOnly(file.readOnly(), file.path());
    }

    private void showReadOnly(Optional<ReadOnly> access, Path file) {
        SetupModel open = model;
        if (open != null) {
            open.lock(access.isPresent());
        }
        frame().readOnly(access.isPresent());
        Sentences words = context.words();
        frame().ask(
                        () -> access.map(why -> AccessText.of(
                                        why, words, context.clock().getZone(), namesHidden()))
                                .orElse(""),
                        access.filter(why -> why.why() == ReadOnly.Why.OPEN_ELSEWHERE)
                                        .isPresent()
                                ? List.of(new Frame.Choice(words.text("document.tryAgain"), () -> openToWrite(file)))
                                : List.of());
    }

    /** What is wrong with the files of the farm; reads all of them. */
    List<FarmProblem> problems() {
        return FarmCheck.of(context.store(), context.user());
    }

    /** Brings the newest sound state of a damaged or missing file back. */
    void recover(Path file) {
        try {
            FarmCheck.recover(context.store(), context.user(), file);
            showNotice(context.words().text("farm.broughtBack", Arg.text(fileName(file))));
        } catch (IOException failed) {
            showNotice(context.words().text("document.notSaved", Arg.text(String.valueOf(failed.getMessage()))));
        }
    }

    /** A day and time as people write them. */
    String time(Instant instant) {
        return AccessText.time(instant, context.words(), context.clock().getZone());
    }

    /** Another program wrote the file of the open setup: both versions are kept, and the person chooses. */
    void changedElsewhere(Path theirs, Path ours) {
        Sentences words = context.words();
        frame().ask(
                        () -> words.text(
                                "document.changedElsewhere", Arg.text(fileName(theirs)), Arg.text(fileName(ours))),
                        List.of(
                                new Frame.Choice(
                                        words.text("document.keepOurs"), () -> frame().ask(() -> "", List.of())),
                                new Frame.Choice(words.text("document.takeTheirs"), () -> openToWrite(theirs))));
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

    private Setup dated(Setup setup) {
        return dated(setup, LocalDate.now(context.clock()), units());
    }

    /** A card without a date gets today's; a setup in which nothing is typed the season of today and the usual units. */
    static Setup dated(Setup setup, LocalDate today, UnitSystem units) {
        Setup next = setup.equals(Setup.EMPTY)
                ? setup.withStart(setup.start()
                        .withSeason(Integer.toString(Seasons.of(today)))
                        .withUnits(units))
                : setup;
        return next.card().date().isBlank() ? next.withCard(next.card().withDate(today.toString())) : next;
    }

    /** A name for a new file: kind, date and time. */
    static String stamped(WizardContext context, String kind) {
        return kind + "-" + LocalDateTime.now(context.clock()).format(STAMP);
    }
}
