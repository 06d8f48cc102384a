package org.evenfall.wizard;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.Entries;
import org.evenfall.store.InputFileException;
import org.evenfall.store.Preferences;
import org.evenfall.store.PreferencesFile;
import org.evenfall.store.SetupFile;
import org.evenfall.store.SetupFiles;
import org.evenfall.wizard.form.Lazy;

/**
 * What the window begins with, read before it is made. Nothing of it draws, so that it is done while what draws is still
 * starting.
 *
 * @param file the file of the setup that is open first
 * @param setup that setup, dated
 * @param assessment what follows from it, made when it is first asked for
 */
record Opening(
        SetupFile file,
        Setup setup,
        Supplier<Assessment> assessment,
        PreferencesFile preferencesFile,
        Preferences preferences) {

    /**
     * Opens the setup that is named, else a new one.
     *
     * @throws InputFileException when the file cannot be read
     */
    static Opening of(WizardContext context, Optional<Path> named) throws InputFileException {
        // loaded by one thread: the window and the first assessment both begin with them
        Objects.requireNonNull(Entries.ALL);
        SetupFiles files = context.files();
        LocalDate today = LocalDate.now(context.clock());
        int season = Seasons.of(today);
        files.removeLeftovers(season);
        SetupFile file = named.isPresent()
                ? files.open(named.get(), season)
                : files.create(season, SetupDocument.stamped(context, "setup"), Setup.EMPTY);
        PreferencesFile preferencesFile = new PreferencesFile(context.user());
        Preferences preferences = preferencesFile.read();
        Setup setup = SetupDocument.dated(file.setup(), today, preferences.units());
        return new Opening(file, setup, new Lazy<>(() -> context.assess().apply(setup)), preferencesFile, preferences);
    }
}
