package org.evenfall.wizard;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.concurrent.Task;
import org.evenfall.publish.CardFileException;
import org.evenfall.publish.CardService;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.KeyRing;
import org.evenfall.sign.VerifyResult;
import org.evenfall.store.IssuedCards;
import org.jspecify.annotations.Nullable;

/**
 * Draws, signs, writes and prints cards on a thread of its own. To be called on the JavaFX thread, where the answers come
 * back. A failure of any kind is reported, also a programming error.
 */
final class CardWork {

    private static final float PREVIEW_DPI = 110;

    private final WizardContext context;
    private final Consumer<Throwable> failed;
    private final CardService cards;
    private @Nullable Task<?> preview;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread worker = new Thread(work, "evenfall-card");
        worker.setDaemon(true);
        return worker;
    });

    /**
     * Work for one window.
     *
     * @param failed called with every failure
     */
    CardWork(WizardContext context, Consumer<Throwable> failed) {
        this.context = context;
        this.failed = failed;
        this.cards = new CardService(context.user(), context.words(), context.clock());
    }

    private <T> void run(Callable<T> work, Consumer<? super T> done) {
        thread.execute(task(work, done, failed));
    }

    private static <T> Task<T> task(Callable<T> work, Consumer<? super T> done, Consumer<Throwable> onFailure) {
        Task<T> task = new Task<>() {
            @Override
            protected T call() throws Exception {
                return work.call();
            }
        };
        task.setOnSucceeded(event -> done.accept(task.getValue()));
        task.setOnFailed(event -> onFailure.accept(task.getException()));
        return task;
    }

    /** Draws the pages as they will be printed; a later call cancels an earlier one. */
    void draw(Setup setup, Assessment assessment, Consumer<List<BufferedImage>> drawn, Consumer<Throwable> notDrawn) {
        if (preview != null) {
            preview.cancel(false);
        }
        Task<?> next = task(
                () -> cards.preview(setup, assessment, PREVIEW_DPI),
                pages -> {
                    // it holds the pages
                    preview = null;
                    drawn.accept(pages);
                },
                notDrawn);
        preview = next;
        thread.execute(next);
    }

    /** Writes a signed card to a file; the answer is the short code of the key. */
    void write(Setup setup, Assessment assessment, Path file, Consumer<String> written) {
        run(() -> cards.write(setup, assessment, file), written);
    }

    /**
     * Enters a card that was written into the farm's register of cards.
     *
     * @param card the card
     * @param file file of its setup
     */
    void register(Path card, Path file, Setup setup, String code, Consumer<Throwable> notEntered) {
        thread.execute(task(
                () -> {
                    new IssuedCards(context.user())
                            .add(card, file, setup, code, context.clock().instant());
                    return code;
                },
                entered -> {},
                notEntered));
    }

    /** Sends a signed card to a printer; the answer is false when the person cancelled. */
    void print(Setup setup, Assessment assessment, Consumer<Boolean> printed) {
        run(() -> context.print().send(cards.signed(setup, assessment)), printed);
    }

    /** Work with the keys that may fail. */
    @FunctionalInterface
    interface KeyWork {
        /** Does the work. */
        void on(KeyRing keys) throws IOException;
    }

    /** Does something with the keys; the answer is their state afterwards. */
    void keys(KeyWork work, Consumer<KeyRing.Status> done) {
        run(
                () -> {
                    work.on(cards.keys());
                    return cards.keys().status();
                },
                done);
    }

    /** Verifies a card; the answer is empty when it is no card that can be read. */
    void verify(Path card, Consumer<Optional<VerifyResult>> verified) {
        run(
                () -> {
                    try {
                        return Optional.of(cards.verify(card));
                    } catch (CardFileException noCard) {
                        return Optional.<VerifyResult>empty();
                    }
                },
                verified);
    }

    /** Code to name of every key known here. */
    Map<String, String> known() {
        return cards.keys().known();
    }

    /** The folder of cards. */
    Path folder() {
        return context.user().cards();
    }

    /** A file in the folder of cards that does not exist yet, for a card or a finding sheet. */
    Path freeName(Setup setup, boolean finding) {
        return cards.freeFile(setup, finding);
    }
}
