package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.evenfall.ChildJvm;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One window writes a setup; what another program wrote is not lost; earlier generations are kept. */
class SetupFileTest {

    private static final Owner FIRST = new Owner("anna", "yard", Instant.parse("2027-03-18T09:00:00Z"));
    private static final Owner SECOND = new Owner("bert", "office", Instant.parse("2027-03-18T10:30:00Z"));

    private final SetupStore store = new SetupStore(new SetupJson());

    @TempDir
    private Path folder;

    private Path file;

    private static Setup farm(String name) {
        return Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm(name));
    }

    private String saved(Path path) throws InputFileException {
        return store.read(path).start().farm();
    }

    private List<String> names(Path of) throws IOException {
        try (Stream<Path> files = Files.list(of)) {
            return files.map(one -> one.getFileName().toString()).sorted().toList();
        }
    }

    @BeforeEach
    void write() throws Exception {
        file = folder.resolve("setup.json");
        store.save(farm("a"), file);
    }

    @Test
    void aSecondWindowCanOnlyReadAndKnowsWhoWrites() throws Exception {
        try (SetupFile writes = SetupFile.open(store, file, FIRST);
                SetupFile reads = SetupFile.open(store, file, SECOND)) {
            assertThat(writes.writable()).isTrue();
            assertThat(writes.setup()).isEqualTo(farm("a"));
            assertThat(reads.writable()).isFalse();
            assertThat(reads.setup()).isEqualTo(farm("a"));
            ReadOnly why = reads.readOnly().orElseThrow();
            assertThat(why.why()).isEqualTo(ReadOnly.Why.OPEN_ELSEWHERE);
            assertThat(why.holder()).contains(FIRST);
        }
        try (SetupFile later = SetupFile.open(store, file, SECOND)) {
            assertThat(later.writable()).isTrue();
        }
    }

    @Test
    void anotherProcessHoldsTheLockAsWell() throws Exception {
        Process other = ChildJvm.start(Holder.class, file.toString());
        try {
            assertThat(other.getInputStream().read()).isEqualTo('+');
            try (SetupFile reads = SetupFile.open(store, file, SECOND)) {
                assertThat(reads.readOnly().orElseThrow().holder()).contains(FIRST);
            }
        } finally {
            // killed hard: the system lets go of the lock, the lock file stays and hinders nobody
            other.destroyForcibly().waitFor();
        }
        try (SetupFile later = SetupFile.open(store, file, SECOND)) {
            assertThat(later.writable()).isTrue();
        }
    }

    /** Opens a setup in a process of its own and waits to be killed. */
    static final class Holder {
        public static void main(String[] args) throws Exception {
            try (SetupFile held = SetupFile.open(new SetupStore(new SetupJson()), Path.of(args[0]), FIRST)) {
                System.out.print(held.writable() ? "+" : "-");
                System.out.flush();
                Thread.sleep(60_000);
            }
        }
    }

    @Test
    void whatAnotherProgramWroteStaysAndWhatWasTypedIsInAFileOfItsOwn() throws Exception {
        try (SetupFile open = SetupFile.open(store, file, FIRST)) {
            open.save(farm("ab"));
            store.save(farm("other"), file);
            assertThatThrownBy(() -> open.save(farm("abc")))
                    .isInstanceOfSatisfying(ChangedElsewhereException.class, changed -> {
                        assertThat(changed.theirs()).isEqualTo(file);
                        SetupTarget ours = changed.ours();
                        assertThat(ours.path()).hasFileName("setup-here.json");
                        assertThat(ours.setup()).isEqualTo(farm("abc"));
                        ours.close();
                    });
            assertThat(saved(file)).isEqualTo("other");
            assertThat(saved(folder.resolve("setup-here.json"))).isEqualTo("abc");
        }
    }

    /** A text longer than a file may hold is refused with its place, and the file stays as it was. */
    @Test
    void whatCouldNotBeOpenedAgainIsNotWritten() throws Exception {
        try (SetupFile open = SetupFile.open(store, file, FIRST)) {
            open.save(farm("a".repeat(InputText.MOST_LETTERS)));
            assertThatThrownBy(() -> open.save(farm("b".repeat(InputText.MOST_LETTERS + 1))))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("/start/farm");
            assertThat(saved(file)).startsWith("aa");
        }
    }

    /** The file there is written again when somebody removed it, even its folder. */
    @Test
    void aRemovedFileIsWrittenAgain() throws Exception {
        Path deeper = folder.resolve("2027").resolve("setup.json");
        store.save(farm("a"), deeper);
        try (SetupFile open = SetupFile.open(store, deeper, FIRST)) {
            Files.delete(deeper);
            Files.delete(deeper.resolveSibling(".locks").resolve("setup.json.lock"));
            Files.delete(deeper.resolveSibling(".locks"));
            Files.delete(deeper.getParent());
            open.save(farm("ab"));
            assertThat(saved(deeper)).isEqualTo("ab");
        }
    }

    @Test
    void theTwoGenerationsAreTheStateBeforeTheLastWriteAndTheStateWhenOpened() throws Exception {
        try (SetupFile open = SetupFile.open(store, file, FIRST)) {
            open.save(farm("ab"));
            open.save(farm("abc"));
            open.save(farm("abcd"));
        }
        assertThat(saved(Generations.of(file, 1))).isEqualTo("abc");
        assertThat(saved(Generations.of(file, 2))).isEqualTo("a");
        try (SetupFile again = SetupFile.open(store, file, FIRST)) {
            again.save(farm("x"));
        }
        assertThat(saved(Generations.of(file, 1))).isEqualTo("abcd");
        assertThat(saved(Generations.of(file, 2))).isEqualTo("abcd");
        assertThat(names(folder)).containsExactly(".locks", "earlier", "setup.json");
    }

    @Test
    void aFileOfANewerProgramCanOnlyBeRead() throws Exception {
        String newer = "{\"evenfall\": 2, \"start\": {\"farm\": \"a\", \"farmNumber\": 7}, \"yield\": []}";
        Files.writeString(file, newer);
        try (SetupFile open = SetupFile.open(store, file, FIRST)) {
            assertThat(open.readOnly().orElseThrow().why()).isEqualTo(ReadOnly.Why.NEWER_PROGRAM);
            assertThat(open.setup().start().farm()).isEqualTo("a");
        }
        assertThat(file).hasContent(newer);
        assertThatThrownBy(() -> store.read(file))
                .isInstanceOf(InputFileException.class)
                .hasMessageContaining("/evenfall: unknown version 2; allowed: 1");
    }

    @Test
    void aNewFileIsWrittenWithItsFirstSaveAndTakesAFreeName() throws Exception {
        try (SetupFile a = SetupFile.create(store, folder.resolve("2027"), "setup", FIRST, Setup.EMPTY);
                SetupFile b = SetupFile.create(store, folder.resolve("2027"), "setup", SECOND, Setup.EMPTY)) {
            assertThat(a.exists()).isFalse();
            assertThat(a.path()).doesNotExist();
            assertThat(b.path()).hasFileName("setup-2.json");
            a.save(farm("a"));
            b.save(farm("b"));
            assertThat(a.exists()).isTrue();
            assertThat(saved(a.path())).isEqualTo("a");
            assertThat(saved(b.path())).isEqualTo("b");
        }
    }

    @Test
    void whatIsNoSetupIsNotHeldLocked() throws Exception {
        Files.writeString(file, "{");
        assertThatThrownBy(() -> SetupFile.open(store, file, FIRST)).isInstanceOf(InputFileException.class);
        store.save(farm("b"), file);
        try (SetupFile later = SetupFile.open(store, file, FIRST)) {
            assertThat(later.writable()).isTrue();
        }
    }
}
