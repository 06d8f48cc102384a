package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Supplier;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.Setup;

/** Opens setups to be written by one window. What lies outside the folders of the seasons is taken in first, as a copy. */
public final class SetupFiles {

    private static final String ENDING = ".json";

    private final SetupStore store;
    private final UserFolder user;
    private final Supplier<Owner> owner;
    private final TakenIn takenIn;

    /** @param owner who opens a setup now */
    public SetupFiles(SetupStore store, UserFolder user, Supplier<Owner> owner) {
        this.store = store;
        this.user = user;
        this.owner = owner;
        this.takenIn = new TakenIn(user);
    }

    /**
     * Opens a file. One from outside is copied into the folder of its season and the copy is opened; a second time the same
     * copy is opened again. A file of a newer program is opened where it is, to be read.
     *
     * @param season folder for a setup from outside that names no season
     * @throws InputFileException when the file is not there, cannot be read, or is no setup
     */
    public SetupFile open(Path file, int season) throws InputFileException {
        return SetupFile.open(store, place(file, season), owner.get());
    }

    /**
     * Where a file is opened: its place in the folder of a season, where it is copied first if it is from outside.
     *
     * @param season folder for a setup from outside that names no season
     * @throws InputFileException when the file is not there, cannot be read, is no setup or cannot be copied
     */
    public Path place(Path file, int season) throws InputFileException {
        SetupStore.Read read = store.readAnyVersion(file);
        return read.newer() || user.isInSeason(file) ? file : copy(file, read, Seasons.of(read.setup(), season));
    }

    private Path copy(Path file, SetupStore.Read read, int season) throws InputFileException {
        try {
            return takenIn.copy(file, read.bytes(), user.season(season), stem(file));
        } catch (IOException notCopied) {
            throw new InputFileException(file.toString(), "", "cannot be copied into " + user.season(season));
        }
    }

    private static String stem(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }

    /**
     * A new file in the folder of a season; nothing is written until something is saved.
     *
     * @param name name without ending; a number is added when it is taken
     */
    public SetupFile create(int season, String name, Setup first) {
        return SetupFile.create(store, user.season(season), name, owner.get(), first);
    }

    /** Whether a file in a folder of seasons is one that was taken in from this place. */
    public boolean isTakenIn(Path file) {
        return takenIn.has(file);
    }

    /** Removes what processes left that ended in between: files never moved to their place, locks of setups never written. */
    public void removeLeftovers(int season) {
        SetupLock.removeUnused(user.season(season), owner.get().since());
        for (Path folder : new Path[] {user.season(season), user.machines(), user.testedProducts(), user.cards()}) {
            WholeFileWriter.removeParts(folder, owner.get().since());
        }
    }
}
