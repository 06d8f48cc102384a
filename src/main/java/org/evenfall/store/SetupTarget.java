package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Path;
import org.evenfall.setup.entry.Setup;

/** Where an open setup is saved. */
public interface SetupTarget extends AutoCloseable {

    /** The file. */
    Path path();

    /** The setup as it was read or saved last. */
    Setup setup();

    /** Whether there is a file yet; it is written first when something is typed. */
    boolean exists();

    /** Whether this window may write it. */
    boolean writable();

    /**
     * Writes the setup whole, in place of what the file had.
     *
     * @throws ChangedElsewhereException when another program has written the file: the setup is then in a file of its own
     * @throws IOException when it is not written; what was there before is then left whole
     */
    void save(Setup setup) throws IOException;

    /** Lets others write the file. */
    @Override
    void close();
}
