package org.evenfall.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.evenfall.ChildJvm;
import org.evenfall.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledForJreRange;
import org.junit.jupiter.api.condition.JRE;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing that the program does uses the network: in a process that refuses every connection, no one is tried. Later JDKs
 * have no such guard; there {@code ArchitectureTest} alone keeps the rule.
 */
@EnabledForJreRange(max = JRE.JAVA_23)
class NoNetworkTest {

    private static final List<String> HEADLESS_WINDOW = List.of(
            "-Dtestfx.robot=glass",
            "-Dtestfx.headless=true",
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dheadless.geometry=1920x1080-32",
            "-Dprism.order=sw",
            "-Djava.awt.headless=true",
            "--add-opens=java.base/java.lang=ALL-UNNAMED");

    /** The window of the tests reads the demo from there. */
    private static final Path PROJECT = Path.of("").toAbsolutePath();

    @TempDir
    private Path folder;

    private List<String> run(Path where, List<String> options, List<String> calls) throws Exception {
        List<String> all = new ArrayList<>(List.of("-Djava.security.manager=allow"));
        all.addAll(options);
        Path out = folder.resolve("out.txt");
        ProcessBuilder child = ChildJvm.builder(all, WithoutNetwork.class, calls.toArray(new String[0]));
        child.directory(where.toFile());
        child.environment().put("EVENFALL_HOME", folder.resolve("home").toString());
        child.environment().remove("DISPLAY");
        child.environment().remove("WAYLAND_DISPLAY");
        Process process = child.redirectOutput(out.toFile()).start();
        assertThat(process.waitFor()).as(Files.readString(out)).isZero();
        return Files.readAllLines(out, StandardCharsets.UTF_8);
    }

    private static void then(List<String> calls, String... arguments) {
        if (!calls.isEmpty()) {
            calls.add(WithoutNetwork.THEN);
        }
        calls.add(Main.class.getName());
        calls.addAll(List.of(arguments));
    }

    /** A test that cannot fail is worth nothing: each way to the network is refused and reported. */
    @Test
    void aConnectionIsCaught() throws Exception {
        List<String> out = run(folder, List.of(), List.of(WithoutNetwork.Uses.class.getName()));
        assertThat(out).filteredOn(line -> line.equals("refused")).hasSize(7);
        assertThat(out)
                .filteredOn(line -> line.startsWith(WithoutNetwork.TRIED))
                .hasSizeGreaterThanOrEqualTo(7);
    }

    @Test
    void noCommandUsesTheNetwork() throws Exception {
        String demo = Path.of("demo", "setup.json").toAbsolutePath().toString();
        String home = folder.resolve("home").toString();
        String card = folder.resolve("card.pdf").toString();
        List<String> calls = new ArrayList<>();
        then(calls, "assess", demo);
        then(calls, "card", demo, "--out", card);
        then(calls, "verify", card);
        then(calls, "sheet", demo, "--out", folder.resolve("sheet.pdf").toString());
        then(calls, "report", demo, "--out", folder.resolve("report.pdf").toString());
        then(
                calls,
                "setup",
                "new",
                "--from",
                demo,
                "--out",
                folder.resolve("new.json").toString());
        then(calls, "match", demo);
        then(calls, "advise", demo);
        then(calls, "trays", "plan", demo);
        then(calls, "trays", "compare", demo, demo);
        then(calls, "trays", "first-move", demo);
        then(calls, "flight", "drag", "--reynolds", "200");
        then(calls, "farm", home, "list");
        then(calls, "farm", home, "check");
        then(calls, "demo");
        // where the demo writes its card
        List<String> out = run(folder, List.of(), calls);
        assertThat(folder.resolve("evenfall-demo-card.pdf")).exists();
        assertThat(out).noneMatch(line -> line.startsWith(WithoutNetwork.TRIED));
        // without a display the demo says so; all else is done
        assertThat(out)
                .filteredOn(line -> line.startsWith("CODE "))
                .extracting(line -> line.split(" ")[1] + " " + line.split(" ")[2])
                .containsExactly(
                        "0 assess",
                        "0 card",
                        "0 verify",
                        "0 sheet",
                        "0 report",
                        "0 setup",
                        "0 match",
                        "0 advise",
                        "0 trays",
                        "0 trays",
                        "0 trays",
                        "0 flight",
                        "0 farm",
                        "0 farm",
                        "0 demo");
    }

    /** The window on the demo, each of its prompts in front once. */
    @Test
    void theWindowUsesNoNetwork() throws Exception {
        List<String> options = new ArrayList<>(HEADLESS_WINDOW);
        options.add("-Djavafx.cachedir=" + folder.resolve("javafx"));
        List<String> out = run(PROJECT, options, List.of("org.evenfall.wizard.WindowWalk", folder.toString()));
        assertThat(out).noneMatch(line -> line.startsWith(WithoutNetwork.TRIED));
        assertThat(out).filteredOn(line -> line.startsWith("in front")).hasSizeGreaterThan(30);
    }
}
