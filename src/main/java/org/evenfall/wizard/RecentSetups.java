package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.StepState;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;

/** The setups that were open last, newest first, each with what it is about, when it was changed and what is next. */
final class RecentSetups {

    /** Assumption: nobody looks for an older one in tiles; the lists have all. */
    private static final int MOST = 6;

    private final SetupDocument document;
    private final WizardContext context;

    RecentSetups(SetupDocument document, WizardContext context) {
        this.document = document;
        this.context = context;
    }

    /**
     * One of them.
     *
     * @param name farm, product, width and crop
     * @param state when it was changed, and what is next
     */
    record Tile(Path file, String name, String state) {}

    /** Without the one that is open; what cannot be read is left out. */
    List<Tile> tiles() {
        return document.recent().stream()
                .filter(file -> !document.isOpen(file))
                .map(this::tile)
                .flatMap(Optional::stream)
                .limit(MOST)
                .toList();
    }

    private Optional<Tile> tile(Path file) {
        try {
            Setup setup = context.store().read(file);
            String name = Stream.of(
                            setup.start().farm(),
                            setup.product().name(),
                            setup.start().tramlineWidth().toString(),
                            setup.start().crop())
                    .filter(part -> !part.isBlank())
                    .collect(Collectors.joining(" · "));
            LocalDate changed = LocalDate.ofInstant(
                    Files.getLastModifiedTime(file).toInstant(), context.clock().getZone());
            return Optional.of(new Tile(
                    file,
                    name.isEmpty() ? String.valueOf(file.getFileName()) : name,
                    state(context.assess().apply(setup), changed)));
        } catch (InputFileException | IOException unreadable) {
            return Optional.empty();
        }
    }

    private String state(Assessment assessment, LocalDate changed) {
        Sentences words = context.words();
        String next = Stream.of(Step.values())
                .filter(step -> step != Step.CARD)
                .filter(step -> assessment.states().get(step) == StepState.OPEN
                        || assessment.states().get(step) == StepState.STOPPED)
                .findFirst()
                .map(words::choice)
                .orElse(words.choice(Step.CARD));
        return words.text("home.state", Arg.text(changed.toString()), Arg.text(next));
    }
}
