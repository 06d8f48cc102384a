package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
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
    private static final int MOST = 5;

    private final SetupDocument document;
    private final WizardContext context;
    private final AssessedFiles assessed;
    private final CardService cards;

    RecentSetups(SetupDocument document, WizardContext context) {
        this.assessed = new AssessedFiles(context.assess());
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
     * @param setup what is in the file
     */
    record Tile(Path file, String title, String about, String changed, Setup setup) {}

    /**
     * How far a setup has come.
     *
     * @param state whether its card is made
     * @param text what is next
     */
    record Next(PromptState state, String text) {}

    /** Tells how far the setup of a tile has come, at once or a moment later. */
    void next(Tile tile, Consumer<Next> then) {
        assessed.of(tile.file(), tile.setup(), assessment -> then.accept(next(tile.setup(), assessment)));
    }

    private Next next(Setup setup, Assessment assessment) {
        Sentences words = context.words();
        return assessment.nextStep() == Step.CARD && cards.hasCard(setup)
                ? new Next(PromptState.DONE, words.text("home.signed"))
                : new Next(PromptState.OPEN, words.text("home.next", Arg.text(words.choice(assessment.nextStep()))));
    }

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
            Setup setup = document.load(file);
            Setup shown = document.shown(setup);
            if (SetupDocument.isNew(setup)) {
                return Optional.empty();
            }
            String title = joined(shown.start().farm(), shown.start().field());
            return Optional.of(new Tile(
                    file,
                    mark(setup, title.isEmpty() ? document.fileName(file) : title),
                    joined(
                            setup.product().name(),
                            setup.start().tramlineWidth().toString(),
                            setup.start().crop()),
                    context.words().text("home.changed", Arg.text(day(file))),
                    setup));
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
