package org.evenfall.wizard;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;

/**
 * What draws the window. It takes a while to start, and does so on a thread of its own while the program reads and assesses
 * what the window will show.
 */
public final class WindowToolkit {

    private final Map<String, String> environment;
    private final String osName;
    private @Nullable CompletableFuture<Optional<String>> started;

    /**
     * @param environment environment of the process
     * @param osName name of the system
     */
    public WindowToolkit(Map<String, String> environment, String osName) {
        this.environment = environment;
        this.osName = osName;
    }

    /** Whether there is a display at all; without one nothing of the window is touched. */
    boolean hasDisplay() {
        return !osName.startsWith("Linux")
                || !environment.getOrDefault("DISPLAY", "").isBlank()
                || !environment.getOrDefault("WAYLAND_DISPLAY", "").isBlank();
    }

    /** Begins to start it, once, where there is a display. */
    public void start() {
        if (started == null && hasDisplay()) {
            CompletableFuture<Optional<String>> starting = new CompletableFuture<>();
            started = starting;
            Thread thread = new Thread(
                    () -> {
                        try {
                            Platform.startup(() -> {});
                            WindowFonts.load();
                            starting.complete(Optional.empty());
                        } catch (RuntimeException | LinkageError cannot) {
                            starting.complete(Optional.of(String.valueOf(cannot.getMessage())));
                        }
                    },
                    "evenfall-toolkit");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** Waits until it is started; why it cannot be, empty where it is. */
    Optional<String> await() {
        start();
        CompletableFuture<Optional<String>> starting = started;
        return starting == null ? Optional.of("") : starting.join();
    }
}
