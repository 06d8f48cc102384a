package org.evenfall.wizard;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.setup.Revisions;
import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FreeNames;
import org.evenfall.store.SetupFile;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupJson;
import org.jspecify.annotations.Nullable;

/** The setups on the desk: which one is open, where it is saved, which others there are. The wizard saves by itself. */
final class SetupDocument {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);

    private final WizardContext context;
    private final AutoSaver saver;
    private @Nullable SetupModel model;
    private @Nullable Notice notice;
    private Consumer<Step> lead = step -> {};

    /** Where a sentence is shown to the person. */
    @FunctionalInterface
    interface Notice {
        void tell(String sentence);
    }

    SetupDocument(WizardContext context, AutoSaver saver) {
        this.context = context;
        this.saver = saver;
    }

    void attach(SetupModel open, Notice shown, Consumer<Step> way) {
        model = open;
        notice = shown;
        lead = way;
    }

    /** Brings a step to the front. */
    void go(Step step) {
        lead.accept(step);
    }

    List<Path> recent() {
        return context.user().recent();
    }

    /** What a setup is called in a list: farm, crop, product, or its file name. */
    String name(Path file) {
        try {
            Setup setup = context.store().read(file).setup();
            String name = String.join(
                    " · ",
                    List.of(
                                    setup.start().farm(),
                                    setup.start().crop(),
                                    setup.product().name())
                            .stream()
                            .filter(part -> !part.isBlank())
                            .toList());
            return name.isEmpty() ? String.valueOf(file.getFileName()) : name + "  (" + file.getFileName() + ")";
        } catch (InputFileException unreadable) {
            return String.valueOf(file.getFileName());
        }
    }

    /** Another setup to look at only; what hinders is told. */
    Optional<Setup> preview(Path file) {
        return Optional.ofNullable(read(file)).map(SetupFile::setup);
    }

    void createNew() {
        show(SetupFile.of(Setup.EMPTY), newFile("setup"));
    }

    void open(Path file) {
        SetupFile read = read(file);
        if (read != null) {
            show(read, file);
        }
    }

    /** A finished setup looked at again: a new file and revision, the old one stays as it is. */
    void reopen(Path file) {
        SetupFile read = read(file);
        if (read != null) {
            show(read.with(Revisions.next(read.setup())), newFile("revision"));
        }
    }

    void demo() {
        context.demo().apply("setup.json").ifPresent(text -> {
            try {
                show(new SetupJson().read(text, "demo"), newFile("demo"));
            } catch (InputFileException broken) {
                tell(broken.getMessage());
            }
        });
    }

    void borrowMachine(Path file) {
        borrow(
                file,
                (own, other) -> own.withMachine(other.machine())
                        .withMatch(own.match().withLibrary(other.match().library())));
    }

    void borrowProduct(Path file) {
        borrow(file, (own, other) -> own.withProduct(other.product()));
    }

    void borrowRate(Path file) {
        borrow(
                file,
                (own, other) -> own.withRate(own.rate().withPlan(other.rate().plan())));
    }

    private void borrow(Path file, BiFunction<Setup, Setup, Setup> how) {
        SetupFile read = read(file);
        if (read != null && model != null) {
            model.change(own -> how.apply(own, read.setup()));
            tell(context.words().text("desk.borrowed"));
        }
    }

    private @Nullable SetupFile read(Path file) {
        try {
            return context.store().read(file);
        } catch (InputFileException problem) {
            tell(context.words().text("desk.unreadable", Arg.text(String.valueOf(problem.getMessage()))));
            return null;
        }
    }

    private void show(SetupFile file, Path where) {
        saver.keepAt(where, file);
        if (model != null) {
            model.open(dated(file.setup()));
        }
    }

    /** A card without a date gets today's. */
    private Setup dated(Setup setup) {
        CardEntries card = setup.card();
        String today = LocalDateTime.now(context.clock()).toLocalDate().toString();
        return setup.withCard(card.date().isBlank() ? card.withDate(today) : card);
    }

    private Path newFile(String kind) {
        return newFile(context, kind);
    }

    static Path newFile(WizardContext context, String kind) {
        String stamp = kind + "-" + LocalDateTime.now(context.clock()).format(STAMP);
        return FreeNames.in(context.user().setups(), stamp, ".json");
    }

    void tell(@Nullable String sentence) {
        if (notice != null && sentence != null) {
            notice.tell(sentence);
        }
    }
}
