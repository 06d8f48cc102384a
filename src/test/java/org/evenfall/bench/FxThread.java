package org.evenfall.bench;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;

/** The thread of the windows, started at the first use; it stays when the last window is closed. */
public final class FxThread {

    private static boolean started;

    private FxThread() {}

    /** Does something on it and waits for the result. */
    public static synchronized <T> T call(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        if (started) {
            Platform.runLater(task);
        } else {
            started = true;
            Platform.setImplicitExit(false);
            Platform.startup(task);
        }
        try {
            return task.get();
        } catch (ExecutionException broken) {
            throw new IllegalStateException(broken.getCause());
        }
    }
}
