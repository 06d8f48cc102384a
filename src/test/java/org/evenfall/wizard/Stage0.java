package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.store.Owner;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;

/** A wizard's surroundings for tests: a folder of its own, a stopped clock, English. */
final class Stage0 {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2027-03-18T09:00:00Z"), ZoneOffset.UTC);

    private Stage0() {}

    static WizardContext context(Path folder) {
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        return new WizardContext(
                Assessor::assess,
                words,
                new SetupStore(new SetupJson()),
                new UserFolder(folder),
                () -> new Owner("tester", "bench", CLOCK.instant()),
                CLOCK,
                name -> read(Path.of("demo", name)),
                file -> {},
                Optional::of,
                (title, extensions) -> picked(folder, extensions[0]),
                pdf -> true);
    }

    /** The person always picks the file of that ending that lies in a folder next to the setups. */
    private static Optional<Path> picked(Path folder, String ending) {
        Path file = folder.resolve("picked").resolve("file." + ending);
        return Files.exists(file) ? Optional.of(file) : Optional.empty();
    }

    private static Optional<String> read(Path file) {
        try {
            return Optional.of(Files.readString(file));
        } catch (java.io.IOException missing) {
            return Optional.empty();
        }
    }
}
