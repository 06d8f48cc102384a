package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two that want the first key at the same moment get the same one. */
class FirstKeyTest {

    private static final int TRIES = 6;

    @TempDir
    private Path folder;

    private Process process(String own, String twin) throws Exception {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        FirstKeys.class.getName(),
                        folder.toString(),
                        String.valueOf(TRIES),
                        own,
                        twin)
                .redirectErrorStream(true)
                .redirectOutput(new File(folder.toFile(), "out-" + own))
                .start();
    }

    @Test
    void twoProcessesShareOneKey() throws Exception {
        Process a = process("a", "b");
        Process b = process("b", "a");
        try {
            assertThat(a.waitFor(120, TimeUnit.SECONDS) && b.waitFor(120, TimeUnit.SECONDS))
                    .isTrue();
        } finally {
            a.destroyForcibly();
            b.destroyForcibly();
        }
        assertThat(folder.resolve("out-a")).hasContent("");
        for (int i = 0; i < TRIES; i++) {
            String code = Files.readString(folder.resolve(i + "a"));
            assertThat(Files.readString(folder.resolve(i + "b"))).isEqualTo(code);
            assertThat(FirstKeys.ring(folder.resolve("home" + i)).known()).containsOnlyKeys(code);
        }
    }

    @Test
    void twoThreadsShareOneKey() throws Exception {
        CyclicBarrier start = new CyclicBarrier(2);
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            List<Future<String>> codes = threads.invokeAll(Collections.nCopies(2, () -> {
                KeyRing ring = FirstKeys.ring(folder.resolve("home"));
                start.await();
                return ring.signing("A. Marlow", "", SamplePdf.WHEN).code();
            }));
            assertThat(codes.get(0).get()).isEqualTo(codes.get(1).get());
        } finally {
            threads.shutdownNow();
        }
    }
}
