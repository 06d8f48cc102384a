package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code packaging/run} in a copy of the source tree, with a Maven and a Java that only note how they are called. */
class PackagingRunTest {

    @TempDir
    private Path tree;

    private Path jar;

    @BeforeEach
    void copy() throws Exception {
        Files.createDirectories(tree.resolve("packaging"));
        for (String name : new String[] {"run", "java-flags"}) {
            Files.copy(Path.of("packaging", name), tree.resolve("packaging").resolve(name));
        }
        Files.createDirectories(tree.resolve("src/main"));
        Files.createDirectories(tree.resolve("demo"));
        Files.writeString(tree.resolve("pom.xml"), "");
        jar = tree.resolve("target").resolve("evenfall.jar");
        script("bin/mvn", "echo \"$@\" >>built; mkdir -p target; touch target/evenfall.jar");
        script("java/bin/java", "for a in \"$@\"; do case $a in demo|org.evenfall.*) echo \"$a\";; esac; done");
        Files.writeString(tree.resolve("java/release"), "JAVA_VERSION=\"17.0.1\"\nJAVA_RUNTIME_VERSION=\"17.0.1+1\"\n");
    }

    private void script(String name, String line) throws Exception {
        Path file = tree.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "#!/bin/sh\n" + line + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private String run() throws Exception {
        ProcessBuilder call = new ProcessBuilder("sh", "packaging/run", "demo").directory(tree.toFile());
        call.environment().put("JAVA_HOME", tree.resolve("java").toString());
        call.environment().merge("PATH", tree.resolve("bin").toString(), (path, own) -> own + ":" + path);
        call.redirectError(tree.resolve("err").toFile());
        Process process = call.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(Files.readString(tree.resolve("err"))).isZero();
        return out;
    }

    private int builds() throws Exception {
        return Files.readAllLines(tree.resolve("built")).size();
    }

    @Test
    void buildsWhatIsMissingOrOlderThanItsSourcesAndStartsTheDemo() throws Exception {
        assertThat(run()).endsWith("org.evenfall.Main\ndemo\n");
        assertThat(builds()).isEqualTo(1);
        assertThat(jar).exists();
        assertThat(run()).endsWith("org.evenfall.Main\ndemo\n");
        assertThat(builds()).as("nothing has changed").isEqualTo(1);
        Path source = Files.writeString(tree.resolve("src/main/New.java"), "");
        Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(60)));
        run();
        assertThat(builds()).as("a source is newer").isEqualTo(2);
    }

    @Test
    void theFilesOfTheReadmeHaveTheVersionThatIsPacked() throws Exception {
        String pom = Files.readString(Path.of("pom.xml"));
        String version =
                pom.replaceAll("(?s).*?<artifactId>evenfall</artifactId>\\s*<version>([^<]+)</version>.*", "$1");
        assertThat(Readme.code(String.join(" ", Readme.lines())))
                .contains("evenfall_" + version + "_amd64.deb", "evenfall-" + version + "-portable.zip");
        String settings = Files.readString(Path.of("packaging", "package-portable"));
        for (String script : Set.of("start-windows.cmd", "start-macos.command", "start-linux.sh")) {
            assertThat(settings).contains("\"$folder/" + script + "\"");
            assertThat(String.join(" ", Readme.lines())).contains(script);
        }
    }
}
