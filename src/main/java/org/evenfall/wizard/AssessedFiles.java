package org.evenfall.wizard;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/** What follows from the setups of the farm: made off the window's thread, and kept until a setup has changed. */
final class AssessedFiles {

    private record Kept(Setup setup, Assessment assessment) {}

    private final Function<Setup, Assessment> assess;
    private final Map<Path, Kept> kept = new HashMap<>();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread worker = new Thread(work, "evenfall-assess");
        worker.setDaemon(true);
        return worker;
    });

    AssessedFiles(Function<Setup, Assessment> assess) {
        this.assess = assess;
    }

    /**
     * Gives what follows from a setup, at once where it is known, else later on the window's thread.
     *
     * @param setup what is in the file now
     */
    void of(Path file, Setup setup, Consumer<Assessment> then) {
        Kept before = known(file);
        if (before != null && before.setup().equals(setup)) {
            then.accept(before.assessment());
            return;
        }
        thread.execute(() -> {
            Assessment made = assess.apply(setup);
            Platform.runLater(() -> {
                kept.put(file, new Kept(setup, made));
                then.accept(made);
            });
        });
    }

    private @Nullable Kept known(Path file) {
        return kept.get(file);
    }
}
