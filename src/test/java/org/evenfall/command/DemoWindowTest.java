package org.evenfall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code demo} where a window opens: nothing is printed, and each time the window has a copy of its own. */
class DemoWindowTest {

    @TempDir
    private Path folder;

    @Test
    void theWindowOpensOnACopyOfItsOwn() throws Exception {
        StringWriter out = new StringWriter();
        CommandContext plain = new Commands(folder).context(new byte[0], out, new StringWriter());
        List<Path> opened = new ArrayList<>();
        CommandContext context = new CommandContext(
                plain.in(),
                new PrintWriter(out),
                plain.err(),
                folder,
                plain.user(),
                plain.clock(),
                plain.sentences(),
                plain.json(),
                file -> {
                    opened.add(file.orElseThrow());
                    return Optional.empty();
                });
        assertThat(CommandFace.run(context, List.of("demo"))).isZero();
        assertThat(CommandFace.run(context, List.of("demo"))).isZero();
        assertThat(opened).hasSize(2).doesNotHaveDuplicates().allSatisfy(copy -> {
            assertThat(copy).hasSameTextualContentAs(Path.of("demo", "setup.json"));
            assertThat(copy).startsWith(plain.user().season(2027));
        });
        assertThat(out.toString()).isEmpty();
        assertThat(Files.exists(folder.resolve("evenfall-demo-card.pdf"))).isFalse();
    }
}
