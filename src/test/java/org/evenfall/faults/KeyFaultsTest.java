package org.evenfall.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.evenfall.sign.KeyException;
import org.evenfall.sign.KeyRing;
import org.evenfall.sign.SigningKeys;
import org.evenfall.store.WholeFileWriter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** No fault of a disk loses a key, an own one or another person's. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KeyFaultsTest {

    private static final Instant NOW = Instant.parse("2027-03-18T09:00:00Z");
    private static final char[] OPEN = {};
    private static final char[] CLOSED = "gate".toCharArray();
    private static final String KEY = "signing-key.p12";
    private static final String KNOWN = "known-keys.txt";

    @TempDir
    private static Path temp;

    private Path first;
    private Path second;

    /** The same bytes are read once: it takes long. */
    private final Map<String, String> codes = new HashMap<>();

    private static KeyRing ring(Path folder) {
        return new KeyRing(folder, WholeFileWriter::writePrivate);
    }

    @BeforeAll
    void makeTwoKeys() throws Exception {
        for (String name : new String[] {"first", "second"}) {
            ring(temp.resolve(name)).signing("A. Marlow", "", NOW);
        }
        first = temp.resolve("first").resolve(KEY);
        second = temp.resolve("second").resolve(KEY);
    }

    /** The code of a key and how it is closed, since no two files of one key are equal. */
    private String content(String name, byte[] bytes) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        return name.endsWith(".p12") ? codes.computeIfAbsent(text, one -> code(bytes)) : text;
    }

    private String code(byte[] bytes) {
        try {
            Path file = Files.write(temp.resolve("looked-at.p12"), bytes);
            for (char[] passphrase : new char[][] {OPEN, CLOSED}) {
                try {
                    return SigningKeys.load(file, passphrase).code() + " " + passphrase.length;
                } catch (KeyException other) {
                    // the other one, or none
                }
            }
            return "damaged";
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void survives(FaultScenario scenario) throws Exception {
        FaultTable table = new FaultTable(temp, this::content);
        table.run(scenario);
        System.out.println(scenario.name() + ": " + table.tried() + " faults");
        assertThat(table.problems()).isEmpty();
        assertThat(table.tried()).isGreaterThan(10);
    }

    private void keys(Path folder) throws IOException {
        Files.write(folder.resolve(KEY), Files.readAllBytes(first));
        Files.writeString(folder.resolve(KNOWN), "AAAA\tNeighbour\nBBBB\tOther neighbour\n");
    }

    /** A list that cannot be read holds up no key: its code is then entered later. */
    private void takeOver(Path folder) throws IOException {
        KeyRing ring = ring(folder);
        ring.importKey(second, OPEN, NOW);
        if (!ring(folder).known().containsKey(ring.status().code())) {
            throw new IOException("its code is not known yet");
        }
    }

    @Test
    void aKeyIsTakenOver() throws Exception {
        survives(FaultScenario.of("key taken over", this::keys, this::takeOver, KEY, KNOWN));
    }

    @Test
    void theFirstKeyIsTakenOver() throws Exception {
        survives(FaultScenario.of("first key", folder -> {}, this::takeOver, KEY, KNOWN));
    }

    @Test
    void aKeyIsClosedByAPassphrase() throws Exception {
        survives(FaultScenario.of(
                "key closed", this::keys, folder -> ring(folder).protect(CLOSED), KEY));
    }

    @Test
    void anotherKeyIsRemembered() throws Exception {
        survives(FaultScenario.of(
                "key remembered", this::keys, folder -> ring(folder).remember("CCCC", "New"), KNOWN));
    }

    /** In a folder that is gone there is nothing to forget, which is no failure. */
    @Test
    void aKeyIsForgotten() throws Exception {
        survives(FaultScenario.of(
                "key forgotten", this::keys, folder -> ring(folder).forget("AAAA")));
    }

    /** With a key there, no fault makes another one for the next card. */
    @Test
    void theKeyThereSigns() throws Exception {
        survives(FaultScenario.of(
                "key used",
                this::keys,
                folder -> {
                    ring(folder).status();
                    ring(folder).known();
                    ring(folder).signing("A. Marlow", "", NOW);
                },
                KEY));
    }
}
