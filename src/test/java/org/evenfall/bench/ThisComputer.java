package org.evenfall.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** What was measured on. */
final class ThisComputer {

    private static final Path LINUX = Path.of("/proc/cpuinfo");

    private ThisComputer() {}

    /** Processor, cores, operating system, Java. */
    static String name() {
        return String.join(
                ", ",
                processor(),
                Runtime.getRuntime().availableProcessors() + " cores",
                System.getProperty("os.name") + " " + System.getProperty("os.version") + " "
                        + System.getProperty("os.arch"),
                System.getProperty("java.vm.name") + " " + System.getProperty("java.vm.version"));
    }

    private static String processor() {
        return model().or(() -> Optional.ofNullable(System.getenv("PROCESSOR_IDENTIFIER")))
                .orElse("processor not known");
    }

    private static Optional<String> model() {
        try (Stream<String> lines = Files.lines(LINUX)) {
            return lines.filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst();
        } catch (IOException elsewhere) {
            return Optional.empty();
        }
    }
}
