package org.evenfall.wizard;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;

/** Waits until a change of a window is styled and laid out, without waiting for the screen. */
final class Pulses {

    /** One for the change, one for what its layout changes, as a scroll bar. */
    private static final int NEEDED = 2;

    private Pulses() {}

    /** Changes something, then looks at it as it is laid out; both on the window's thread. */
    static void look(Scene scene, Runnable change, Runnable look) throws Exception {
        CompletableFuture<Void> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                change.run();
            } catch (RuntimeException | Error broken) {
                done.completeExceptionally(broken);
                return;
            }
            scene.addPostLayoutPulseListener(new Countdown(scene, look, done));
            Platform.requestNextPulse();
        });
        done.get(60, TimeUnit.SECONDS);
    }

    private static final class Countdown implements Runnable {

        private final Scene scene;
        private final Runnable look;
        private final CompletableFuture<Void> done;
        private int left = NEEDED;

        Countdown(Scene scene, Runnable look, CompletableFuture<Void> done) {
            this.scene = scene;
            this.look = look;
            this.done = done;
        }

        @Override
        public void run() {
            left--;
            if (left > 0) {
                Platform.requestNextPulse();
                return;
            }
            scene.removePostLayoutPulseListener(this);
            try {
                look.run();
                done.complete(null);
            } catch (RuntimeException | Error broken) {
                done.completeExceptionally(broken);
            }
        }
    }
}
