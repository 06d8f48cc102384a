package org.evenfall.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.evenfall.sign.PdfVerifier;
import org.evenfall.sign.VerifyResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kept input goes through its target again: hostile ones, those of former faults, those that fuzzing found. */
@Timeout(value = 120, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class FuzzCorpusTest {

    private static final double MOST_CPU_SECONDS = 5;

    static Set<String> targets() {
        return Targets.ALL.keySet();
    }

    @ParameterizedTest
    @MethodSource("targets")
    void everyKeptInputIsRefusedOrGivesAResult(String target) throws Exception {
        List<Path> inputs = inputs(target);
        assertThat(inputs).isNotEmpty();
        assertThat(faults(Targets.ALL.get(target), inputs)).isEmpty();
    }

    /** A test that cannot fail is worth nothing: an input on which a target fails is named. */
    @Test
    void aFaultIsNamed() throws Exception {
        Path input = inputs("keys").get(0);
        assertThat(faults(
                        bytes -> {
                            throw new StackOverflowError("deep");
                        },
                        List.of(input)))
                .singleElement()
                .asString()
                .startsWith(input.getFileName().toString())
                .contains("StackOverflowError");
    }

    /** The signed file is unchanged, so that the target would see a change that is not detected. */
    @Test
    void theSignedFileIsUnchanged() throws Exception {
        VerifyResult result = PdfVerifier.verify(VerifyTarget.signed(), Set.of());
        assertThat(result.unchanged()).isTrue();
        assertThat(result.keyCode()).isNotEmpty();
    }

    private static List<Path> inputs(String target) throws Exception {
        Path folder = Path.of(Objects.requireNonNull(FuzzCorpusTest.class.getResource(target), target)
                .toURI());
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private static List<String> faults(Targets.Target target, List<Path> inputs) throws Exception {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        List<String> faults = new ArrayList<>();
        for (Path input : inputs) {
            byte[] bytes = Files.readAllBytes(input);
            long begin = threads.getCurrentThreadCpuTime();
            try {
                target.take(bytes);
            } catch (Exception | Error fault) {
                faults.add(input.getFileName() + ": " + fault);
            }
            double seconds = (threads.getCurrentThreadCpuTime() - begin) / 1e9;
            if (seconds > MOST_CPU_SECONDS) {
                faults.add(input.getFileName() + ": " + seconds + " s");
            }
        }
        return faults;
    }
}
