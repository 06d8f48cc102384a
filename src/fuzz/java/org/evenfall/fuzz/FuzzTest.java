package org.evenfall.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each target for two minutes under Jazzer, in a process of its own. Begins with the kept inputs and what earlier runs
 * found in target/fuzz; an input that shows a fault is there as crash-, oom- or timeout-.
 */
class FuzzTest {

    private static final int SECONDS = Integer.getInteger("fuzz.seconds", 120);

    /** A longer input for less is seldom found, and every run of it takes longer. */
    private static final int MOST_BYTES = 20_000;

    /** By the clock, so that a loaded machine is no fault; the processor's time is limited in {@link Fuzzed}. */
    private static final int MOST_SECONDS_AN_INPUT = 30;

    private static final Path KEPT = Path.of("src/test/resources/org/evenfall/fuzz");

    /** Texts of the inputs that are worth to be put into others: JSON strings, names of PDF, words. */
    private static final Pattern WORD = Pattern.compile("\"[^\"\\\\\\s]{1,40}\"|/[A-Za-z]{2,20}|\\b[a-z_]{4,20}\\b");

    static Set<String> targets() {
        return Targets.ALL.keySet();
    }

    @ParameterizedTest
    @MethodSource("targets")
    void noInputShowsAFault(String target) throws Exception {
        Path folder = Path.of("target", "fuzz", target).toAbsolutePath();
        Path found = Files.createDirectories(folder.resolve("found"));
        Path kept = KEPT.resolve(target).toAbsolutePath();
        Path log = folder.resolve("log.txt");
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + Fuzzed.class.getName(),
                "--target_args=" + target + " " + kept,
                "--instrumentation_includes=org.evenfall.**:com.fasterxml.jackson.core.**:org.apache.commons.csv.**"
                        + ":org.apache.pdfbox.pdfparser.**:org.apache.pdfbox.cos.**",
                "-dict=" + dictionary(kept, folder.resolve("words.dict")),
                "-artifact_prefix=" + folder + "/",
                "-max_total_time=" + SECONDS,
                "-timeout=" + MOST_SECONDS_AN_INPUT,
                "-max_len=" + MOST_BYTES,
                "-print_final_stats=1",
                found.toString(),
                kept.toString());
        int code = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start()
                .waitFor();
        assertThat(code).as("exit code, see " + log).isZero();
    }

    private static Path dictionary(Path kept, Path file) throws IOException {
        Set<String> words = new TreeSet<>();
        for (Path input : inputs(kept)) {
            Matcher found = WORD.matcher(Files.readString(input, StandardCharsets.ISO_8859_1));
            while (found.find()) {
                if (found.group().chars().allMatch(letter -> letter > ' ' && letter < 127)) {
                    words.add('"' + found.group().replace("\"", "\\\"") + '"');
                }
            }
        }
        return Files.write(file, words);
    }

    private static List<Path> inputs(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
