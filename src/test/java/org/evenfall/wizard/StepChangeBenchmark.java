package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.stage.Stage;

/** Time from asking for another step until it is laid out, warm, in a headless window. Run its main method. */
public final class StepChangeBenchmark {

    private static final int ROUNDS = 30;

    private StepChangeBenchmark() {}

    public static void main(String[] args) throws Exception {
        CountDownLatch done = new CountDownLatch(1);
        Platform.startup(() -> {
            try {
                measure();
            } catch (Exception broken) {
                throw new IllegalStateException(broken);
            } finally {
                done.countDown();
            }
        });
        done.await();
        Platform.exit();
    }

    private static void measure() throws Exception {
        WizardWindow window = new WizardWindow(
                Stage0.context(Files.createTempDirectory("evenfall-bench")),
                Optional.of(Path.of("demo", "setup.json")));
        window.show(new Stage());
        double[] millis = new double[8 * ROUNDS];
        for (int i = 0; i < millis.length; i++) {
            long from = System.nanoTime();
            window.shell().go((i + 1) % 8);
            window.shell().applyCss();
            window.shell().layout();
            millis[i] = (System.nanoTime() - from) / 1e6;
        }
        double[] warm = Arrays.copyOfRange(millis, millis.length / 2, millis.length);
        Arrays.sort(warm);
        System.out.printf(
                "step change, warm: median %.1f ms, 95 %% %.1f ms, worst %.1f ms%n",
                warm[warm.length / 2], warm[(int) (0.95 * warm.length)], warm[warm.length - 1]);
    }
}
