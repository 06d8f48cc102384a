package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Path;

/** Another program has written a file that is open here. Both versions are kept, each in a file of its own. */
public final class ChangedElsewhereException extends IOException {

    private static final long serialVersionUID = 1;

    private final transient Path theirs;
    private final transient SetupTarget ours;

    /**
     * @param theirs the file as the other program wrote it
     * @param ours a new file, with what was to be written; it is saved there from now on
     */
    public ChangedElsewhereException(Path theirs, SetupTarget ours) {
        super(theirs + ": changed by another program");
        this.theirs = theirs;
        this.ours = ours;
    }

    /** The file as the other program wrote it. */
    public Path theirs() {
        return theirs;
    }

    /** The new file. */
    public SetupTarget ours() {
        return ours;
    }
}
