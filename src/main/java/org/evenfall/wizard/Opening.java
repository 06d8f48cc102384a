package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.Preferences;
import org.evenfall.store.PreferencesFile;
import org.evenfall.store.SetupFile;
import org.evenfall.store.SetupFiles;

/**
 * What the window begins with, read and assessed before it is made. Nothing of it draws, so that it is done while what draws
 * is still starting.
 *
 * @param file the file of the setup that is open first
 * @param setup that setup, dated
 * @param assessment what follows from it
 * @param files the setups of the farm; those that Home shows are read
 */
record Opening(
        SetupFile file,
        Setup setup,
        Assessment assessment,
        PreferencesFile preferencesFile,
        Preferences preferences,
        AssessedFiles files) {

    /**
     * Opens the setup that is named, else a new one.
     *
     * @throws InputFileException when the file cannot be read
     */
    static Opening of(WizardContext context, Optional<Path> named) throws InputFileException {
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
        AssessedFiles assessed = new AssessedFiles(context);
        readForHome(context, assessed);
        return new Opening(file, setup, context.assess().apply(setup), preferencesFile, preferences, assessed);
    }

    private static void readForHome(WizardContext context, AssessedFiles assessed) {
        for (Path file :
                context.user().recent().stream().limit(RecentSetups.MOST).toList()) {
            try {
                assessed.of(file);
            } catch (InputFileException | IOException unreadable) {
                // Home leaves it out and names it as damaged
            }
        }
    }
}
