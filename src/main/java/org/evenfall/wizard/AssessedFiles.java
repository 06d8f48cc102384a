package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.jspecify.annotations.Nullable;

/** Setups read from their files, with what follows from them. A file is read again only once it has changed. */
final class AssessedFiles {

    /** A setup and what follows from it. */
    record Assessed(Setup setup, Assessment assessment) {}

    /** What a file was like when it was read. */
    private record Seen(
            FileTime changed, long size, @Nullable Object key) {

        static Seen of(Path file) throws IOException {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return new Seen(now.lastModifiedTime(), now.size(), now.fileKey());
        }
    }

    private record Kept(Seen seen, Assessed assessed) {}

    private final WizardContext context;
    private final Map<Path, Kept> kept = new ConcurrentHashMap<>();

    AssessedFiles(WizardContext context) {
        this.context = context;
    }

    /** The setup in a file, as it is now. */
    Assessed of(Path file) throws InputFileException, IOException {
        Seen now = Seen.of(file);
        Kept before = kept.get(file);
        if (before != null && Objects.equals(before.seen(), now)) {
            return before.assessed();
        }
        Assessed assessed = of(context.store().read(file));
        kept.put(file, new Kept(now, assessed));
        return assessed;
    }

    /** A setup that may not be in its file yet. */
    Assessed of(Setup setup) {
        return new Assessed(setup, context.assess().apply(setup));
    }
}
