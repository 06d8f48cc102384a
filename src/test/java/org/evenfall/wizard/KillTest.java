package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.evenfall.ChildJvm;
import org.evenfall.store.FarmCheck;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The process is ended at random moments of fast typing: no file is damaged, nothing older than a second is lost. */
class KillTest {

    private static final int SIDE_BY_SIDE = 4;
    private static final long MOST_LOST_MILLIS = 1000;

    @TempDir
    private Path folder;

    /**
     * What one end of a process left.
     *
     * @param lostMillis age of the oldest key that is not saved; 0 when all are
     * @param problems damaged files, failures, left files
     */
    private record End(long lostMillis, int typed, List<String> problems) {}

    private End end(int number, boolean hard) throws IOException, InterruptedException {
        Random random = new Random(4711L + number);
        Path farm = folder.resolve("farm-" + number);
        Process process = ChildJvm.start(TypingUntilKilled.class, farm.toString(), Integer.toString(number));
        List<long[]> keys = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        long killed = Long.MAX_VALUE;
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(lines.readLine()).isEqualTo("ready");
            int keysBefore = 8 + random.nextInt(24);
            int pause = random.nextInt(150);
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] parts = line.split(" ");
                if (!parts[0].matches("\\d+")) {
                    problems.add(line);
                    continue;
                }
                keys.add(new long[] {Long.parseLong(parts[0]), Long.parseLong(parts[1])});
                if (keys.size() == keysBefore) {
                    Thread.sleep(pause);
                    killed = System.currentTimeMillis();
                    if (hard) {
                        process.toHandle().destroyForcibly();
                    } else {
                        process.toHandle().destroy();
                    }
                }
            }
            process.waitFor();
        }
        UserFolder user = new UserFolder(farm);
        SetupStore store = new SetupStore(new SetupJson());
        FarmCheck.of(store, user).forEach(problem -> problems.add(problem.toString()));
        int saved = 0;
        for (Path file : user.recent()) {
            try {
                saved = store.read(file).start().farm().length();
            } catch (InputFileException damaged) {
                problems.add(damaged.getMessage());
            }
        }
        long lost = 0;
        for (long[] key : keys) {
            if (key[1] > saved) {
                lost = Math.max(lost, killed - key[0]);
            }
        }
        if (!hard) {
            try (Stream<Path> left = Files.walk(farm)) {
                left.filter(file -> file.toString().endsWith(".part")).forEach(file -> problems.add(file.toString()));
            }
        }
        return new End(lost, keys.size(), problems);
    }

    private List<End> ends(int count, boolean hard) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(SIDE_BY_SIDE);
        try {
            List<Callable<End>> work = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int number = i;
                work.add(() -> end(number, hard));
            }
            List<End> ends = new ArrayList<>();
            for (Future<End> one : threads.invokeAll(work)) {
                ends.add(one.get());
            }
            return ends;
        } finally {
            threads.shutdown();
        }
    }

    private void kill(int count) throws Exception {
        List<End> ends = ends(count, true);
        assertThat(ends).flatExtracting(End::problems).isEmpty();
        assertThat(ends).allMatch(end -> end.typed() >= 8);
        System.out.println("ended " + ends.size() + " times, oldest key lost, ms: "
                + ends.stream().mapToLong(End::lostMillis).max().orElse(0));
        assertThat(ends).extracting(End::lostMillis).allMatch(lost -> lost <= MOST_LOST_MILLIS);
    }

    @Test
    void killedTwentyTimes() throws Exception {
        kill(20);
    }

    /** mvn -B -Pproof test -Dtest=KillTest */
    @Test
    @Tag("proof")
    void killedThreeHundredTimes() throws Exception {
        kill(300);
    }

    /** A log-off gives the process time to save: nothing is lost. */
    @Test
    void nothingIsLostWhenTheProcessIsAskedToEnd() throws Exception {
        List<End> ends = ends(4, false);
        assertThat(ends).flatExtracting(End::problems).isEmpty();
        // a key that comes while the process ends may be neither printed nor saved
        assertThat(ends).extracting(End::lostMillis).allMatch(lost -> lost <= 0);
    }
}
