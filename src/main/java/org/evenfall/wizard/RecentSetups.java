package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.publish.CardService;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;

/** The setups that were changed last, newest first, each with what it is about, when it was changed and what is next. */
final class RecentSetups {

    /** Assumption: nobody looks for an older one in tiles; the lists have all. */
    static final int MOST = 5;

    private final SetupDocument document;
    private final WizardContext context;
    private final AssessedFiles files;
    private final CardService cards;

    RecentSetups(SetupDocument document, WizardContext context, AssessedFiles files) {
        this.files = files;
        this.document = document;
        this.context = context;
        this.cards = new CardService(context.user(), context.words(), context.clock());
    }

    /**
     * One of them.
     *
     * @param title farm and field, or the name of the file
     * @param about product, width and crop
     * @param changed when it was changed
     * @param state whether its card is made
     * @param next what is next
     */
    record Tile(Path file, String title, String about, String changed, PromptState state, String next) {}

    /** What cannot be read and in what nothing is typed is left out. */
    List<Tile> tiles() {
        return document.recent().stream()
                .map(this::tile)
                .flatMap(Optional::stream)
                .limit(MOST)
                .toList();
    }

    private Optional<Tile> tile(Path file) {
        try {
            Optional<Setup> unsaved = document.unsaved(file);
            AssessedFiles.Assessed read = unsaved.isPresent() ? files.of(unsaved.get()) : files.of(file);
            Setup setup = read.setup();
            Setup shown = document.shown(setup);
            if (SetupDocument.isNew(setup)) {
                return Optional.empty();
            }
            String title = joined(shown.start().farm(), shown.start().field());
            Assessment assessment = read.assessment();
            boolean signed = assessment.nextStep() == Step.CARD && cards.hasCard(setup);
            Sentences words = context.words();
            return Optional.of(new Tile(
                    file,
                    mark(setup, title.isEmpty() ? document.fileName(file) : title),
                    joined(
                            setup.product().name(),
                            setup.start().tramlineWidth().toString(),
                            setup.start().crop()),
                    words.text("home.changed", Arg.text(day(file))),
                    signed ? PromptState.DONE : PromptState.OPEN,
                    signed
                            ? words.text("home.signed")
                            : words.text("home.next", Arg.text(words.choice(assessment.nextStep())))));
        } catch (InputFileException | IOException unreadable) {
            return Optional.empty();
        }
    }

    private String mark(Setup setup, String title) {
        return setup.guide().isInvented() ? context.words().text("home.invented", Arg.text(title)) : title;
    }

    private static String joined(String... parts) {
        return Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining(" · "));
    }

    private String day(Path file) throws IOException {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(context.words().locale())
                .format(LocalDate.ofInstant(
                        Files.getLastModifiedTime(file).toInstant(),
                        context.clock().getZone()));
    }
}
