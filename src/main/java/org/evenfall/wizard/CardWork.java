package org.evenfall.wizard;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardMaker;
import org.evenfall.card.CardPdf;
import org.evenfall.card.CardPicture;
import org.evenfall.card.CardVerifier;
import org.evenfall.card.KeyRing;
import org.evenfall.card.SigningKey;
import org.evenfall.card.VerifyResult;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupStore;

/** Draws, signs, writes and prints cards on a thread of its own; answers come back on the window's thread. */
final class CardWork {

    private static final float PREVIEW_DPI = 110;

    private final WizardContext context;
    private final Consumer<IOException> problem;
    private final KeyRing keys;
    private final AtomicInteger asked = new AtomicInteger();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread worker = new Thread(work, "evenfall-card");
        worker.setDaemon(true);
        return worker;
    });

    /** @param problem told on the window's thread of what went wrong */
    CardWork(WizardContext context, Consumer<IOException> problem) {
        this.context = context;
        this.problem = problem;
        this.keys = new KeyRing(context.user().root());
    }

    /** Work that may fail on a file. */
    @FunctionalInterface
    private interface Work {
        void run() throws IOException;
    }

    private void later(Work work) {
        thread.execute(() -> {
            try {
                work.run();
            } catch (IOException failed) {
                Platform.runLater(() -> problem.accept(failed));
            }
        });
    }

    /** The pages as they will be printed; a later wish overtakes an earlier one. */
    void draw(Setup setup, Assessment assessment, Consumer<List<BufferedImage>> shown) {
        int mine = asked.incrementAndGet();
        later(() -> {
            if (mine != asked.get()) {
                return;
            }
            byte[] pages = CardPdf.draw(
                    CardContents.of(
                            setup, assessment, context.words(), keys.status().code()),
                    context.clock().instant());
            List<BufferedImage> images = CardPicture.render(pages, PREVIEW_DPI);
            Platform.runLater(() -> {
                if (mine == asked.get()) {
                    shown.accept(images);
                }
            });
        });
    }

    /** A signed card, written whole to a file. */
    void write(Setup setup, Assessment assessment, Path file, Consumer<String> written) {
        later(() -> {
            SigningKey key = key(setup);
            SetupStore.writeWhole(file, card(setup, assessment, key));
            Platform.runLater(() -> written.accept(key.code()));
        });
    }

    /** A signed card to a printer; the answer is whether the person let it print. */
    void print(Setup setup, Assessment assessment, Consumer<Boolean> printed) {
        later(() -> {
            boolean done = context.print().send(card(setup, assessment, key(setup)));
            Platform.runLater(() -> printed.accept(done));
        });
    }

    /** Something about the keys, off the window's thread; afterwards their state is told. */
    void keys(KeyWork work, Consumer<KeyRing.Status> told) {
        later(() -> {
            work.on(keys);
            KeyRing.Status status = keys.status();
            Platform.runLater(() -> told.accept(status));
        });
    }

    /** Work with the keys that may fail. */
    @FunctionalInterface
    interface KeyWork {
        void on(KeyRing keys) throws IOException;
    }

    /** Whether a card is unchanged and by whose key; empty when it is no card that can be read. */
    void verify(Path card, Consumer<Optional<VerifyResult>> told) {
        later(() -> {
            Optional<VerifyResult> result = verified(card);
            Platform.runLater(() -> told.accept(result));
        });
    }

    private Optional<VerifyResult> verified(Path card) {
        try {
            return Optional.of(CardVerifier.verify(Files.readAllBytes(card), keys.codes()));
        } catch (IOException noCard) {
            return Optional.empty();
        }
    }

    Map<String, String> known() {
        return keys.known();
    }

    private SigningKey key(Setup setup) throws IOException {
        return keys.signing(
                setup.card().signedBy(), setup.card().role(), context.clock().instant());
    }

    private byte[] card(Setup setup, Assessment assessment, SigningKey key) throws IOException {
        return CardMaker.make(
                CardContents.of(setup, assessment, context.words(), key.code()),
                key,
                setup.card().signedBy(),
                context.clock().instant());
    }

    Path folder() {
        return context.user().root().resolve("cards");
    }

    /** A name in the folder of cards that says what it is and never stands on an earlier card. */
    Path freeName(Setup setup) {
        String name = (setup.start().farm() + " " + setup.product().delivery() + " "
                        + setup.card().date())
                .strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-");
        Path file = folder().resolve(name + ".pdf");
        for (int i = 2; Files.exists(file); i++) {
            file = folder().resolve(name + "-" + i + ".pdf");
        }
        return file;
    }
}
