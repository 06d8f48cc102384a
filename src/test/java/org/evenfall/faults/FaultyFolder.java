package org.evenfall.faults;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Path;
import java.util.Iterator;

/** The files of a folder; reading the next one may fail. */
final class FaultyFolder implements DirectoryStream<Path> {

    private final DirectoryStream<Path> usual;
    private final FaultyFileSystem system;
    private final Faults faults;
    private final Path folder;

    FaultyFolder(DirectoryStream<Path> usual, FaultyFileSystem system, Faults faults, Path folder) {
        this.usual = usual;
        this.system = system;
        this.faults = faults;
        this.folder = folder;
    }

    @Override
    public Iterator<Path> iterator() {
        Iterator<Path> all = usual.iterator();
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                try {
                    faults.before(FileCall.NEXT_OF_FOLDER, folder);
                } catch (IOException fault) {
                    throw new DirectoryIteratorException(fault);
                }
                return all.hasNext();
            }

            @Override
            public Path next() {
                return system.wrap(all.next());
            }
        };
    }

    @Override
    public void close() throws IOException {
        usual.close();
        faults.before(FileCall.CLOSE, folder);
    }
}
