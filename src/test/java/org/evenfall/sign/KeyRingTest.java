package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeyRingTest {

    private static final Instant WHEN = SamplePdf.WHEN;
    private static final char[] SECRET = "three oaks by the gate".toCharArray();

    @TempDir
    private Path temp;

    private Path folder;
    private boolean full;

    @BeforeEach
    void withoutFolder() {
        folder = temp.resolve("evenfall");
    }

    private KeyRing ring() {
        return new KeyRing(folder, (file, bytes) -> {
            if (full) {
                throw new IOException("no space left");
            }
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            Files.setPosixFilePermissions(file, OwnerOnly.READS);
        });
    }

    private static SigningKey made(KeyRing ring) throws KeyException {
        return ring.signing("A. Marlow", "farm manager", WHEN);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theFirstSignatureMakesAKey() throws Exception {
        KeyRing ring = ring();
        assertThat(ring.status()).isEqualTo(new KeyRing.Status(KeyRing.State.NONE, "", "", "", false, false));
        assertThat(ring.codes()).isEmpty();
        SigningKey key = made(ring);
        assertThat(files()).containsExactly("known-keys.txt", "signing-key.lock", "signing-key.p12");
        assertThat(made(ring())).isEqualTo(key);
        assertThat(ring.status())
                .isEqualTo(new KeyRing.Status(KeyRing.State.OPEN, key.code(), "A. Marlow", "2047-03-13", false, false));
        assertThat(ring.known()).isEqualTo(Map.of(key.code(), "A. Marlow"));
        assertThat(key.toString()).doesNotContain("RSA").contains(key.code());
    }

    @Test
    void aPassphraseClosesIt() throws Exception {
        KeyRing ring = ring();
        String code = made(ring).code();
        ring.protect(SECRET);
        assertThat(ring.status().closed()).isTrue();
        assertThat(ring.status().state()).isEqualTo(KeyRing.State.OPEN);
        KeyRing later = ring();
        assertThat(later.status()).isEqualTo(new KeyRing.Status(KeyRing.State.LOCKED, "", "", "", true, false));
        assertThat(kind(() -> made(later))).isEqualTo(KeyException.Kind.LOCKED);
        assertThat(kind(() -> later.unlock("wrong".toCharArray()))).isEqualTo(KeyException.Kind.WRONG_PASSPHRASE);
        assertThat(later.status().state()).isEqualTo(KeyRing.State.LOCKED);
        later.unlock(SECRET);
        assertThat(made(later).code()).isEqualTo(code);
        // one's own key is known though it is closed
        assertThat(ring().codes()).contains(code);
        later.protect(new char[0]);
        assertThat(ring().status().state()).isEqualTo(KeyRing.State.OPEN);
        assertThat(later.status().closed()).isFalse();
    }

    /** The passphrases that were given are copied: the caller may overwrite its own. */
    @Test
    void aPassphraseIsCopied() throws Exception {
        KeyRing ring = ring();
        made(ring);
        char[] given = SECRET.clone();
        ring.protect(given);
        java.util.Arrays.fill(given, 'x');
        ring().unlock(SECRET);
    }

    @Test
    void aLostKeyIsReplacedAndRenamed() throws Exception {
        KeyRing ring = ring();
        String old = made(ring).code();
        byte[] before = Files.readAllBytes(folder.resolve("signing-key.p12"));
        ring.renew("A. Marlow", "", SECRET, WHEN.plusSeconds(60));
        assertThat(ring.status().code()).isNotEqualTo(old);
        assertThat(ring.status().closed()).isTrue();
        assertThat(ring().status().state()).isEqualTo(KeyRing.State.LOCKED);
        assertThat(ring.codes()).containsExactlyInAnyOrder(old, ring.status().code());
        assertThat(Files.readAllBytes(folder.resolve("signing-key-until-20270318T100100000.p12")))
                .isEqualTo(before);
    }

    /** A key from elsewhere: RSA and elliptic curve sign files that verify; a weak one or no key is refused. */
    @Test
    void aKeyFromElsewhereIsImported() throws Exception {
        KeyRing ring = ring();
        made(ring);
        for (String algorithm : List.of("RSA", "EC")) {
            SigningKey foreign =
                    SamplePdf.foreign(algorithm, algorithm.equals("RSA") ? 2048 : 256, "CN=Saltreed group");
            Path file = Files.write(temp.resolve(algorithm + ".p12"), SigningKeys.store(foreign, SECRET));
            assertThat(kind(() -> ring.importKey(file, "no".toCharArray(), WHEN)))
                    .isEqualTo(KeyException.Kind.WRONG_PASSPHRASE);
            ring.importKey(file, SECRET, algorithm.equals("RSA") ? WHEN : WHEN.plusSeconds(1));
            SigningKey key = ring.signing("", "", WHEN);
            assertThat(key).isEqualTo(foreign);
            assertThat(PdfVerifier.verify(SamplePdf.signed(key), ring.codes()))
                    .matches(result -> result.unchanged() && result.knownKey());
            // stored under the same passphrase
            assertThat(ring().status().state()).isEqualTo(KeyRing.State.LOCKED);
            assertThat(ring.status().closed()).isTrue();
        }
        assertThat(files()).hasSize(5);
        Path text = Files.writeString(temp.resolve("text.p12"), "no key at all");
        assertThat(kind(() -> ring.importKey(text, SECRET, WHEN))).isEqualTo(KeyException.Kind.UNREADABLE);
        assertThat(kind(() -> ring.importKey(temp.resolve("none.p12"), SECRET, WHEN)))
                .isEqualTo(KeyException.Kind.UNREADABLE);
    }

    /** The key that is used already, without a passphrase: nothing is renamed. */
    @Test
    void theSameKeyIsNotImportedAgain() throws Exception {
        KeyRing ring = ring();
        SigningKey key = made(ring);
        Path file = Files.write(temp.resolve("same.p12"), SigningKeys.store(key, new char[0]));
        ring.importKey(file, new char[0], WHEN);
        assertThat(files()).containsExactly("known-keys.txt", "signing-key.lock", "signing-key.p12");
    }

    @Test
    void keysOfOthersAreKnownAndForgotten() throws Exception {
        KeyRing ring = ring();
        ring.remember("0123 4567 89AB CDEF", "R. Fenwick\tSaltreed");
        ring.remember("FFFF 4567 89AB CDEF", "B. Other");
        assertThat(Files.readString(folder.resolve("known-keys.txt")))
                .isEqualTo("0123 4567 89AB CDEF\tR. Fenwick Saltreed\nFFFF 4567 89AB CDEF\tB. Other\n");
        assertThat(ring().known())
                .containsExactly(
                        Map.entry("0123 4567 89AB CDEF", "R. Fenwick Saltreed"),
                        Map.entry("FFFF 4567 89AB CDEF", "B. Other"));
        ring.forget("0123 4567 89AB CDEF");
        assertThat(ring.codes()).containsExactly("FFFF 4567 89AB CDEF");
        full = true;
        // not known, so nothing is written
        ring.forget("0123 4567 89AB CDEF");
    }

    /** A line that is no UTF-8, one that is no key, and one with a byte order mark: each stays as it is. */
    @Test
    void aDamagedLineOfTheKnownKeysIsKept() throws Exception {
        Files.createDirectories(folder);
        Path list = folder.resolve("known-keys.txt");
        byte[] damaged = "\u00EF\u00BB\u00BFAAAA\tFirst\nBBBB\tNeighbour\u00E9\nno key\n\tno code\n CC \t D \n"
                .getBytes(StandardCharsets.ISO_8859_1);
        Files.write(list, damaged);
        KeyRing ring = ring();
        assertThat(ring.known()).isEqualTo(Map.of("AAAA", "First", "BBBB", "Neighbour\u00E9", "CC", "D"));
        ring.remember("DDDD", "Someone");
        assertThat(Files.readString(list, StandardCharsets.ISO_8859_1))
                .isEqualTo(new String(damaged, StandardCharsets.ISO_8859_1) + "DDDD\tSomeone\n");
        ring.forget("DDDD");
        assertThat(Files.readAllBytes(list)).isEqualTo(damaged);
        ring.remember("BBBB", "Another name");
        assertThat(ring().known()).containsEntry("BBBB", "Another name").hasSize(3);
    }

    /** A list that cannot be read is never replaced by an empty one. */
    @Test
    void aListOfKnownKeysThatCannotBeReadIsKept() throws Exception {
        Path inside = Files.createDirectories(folder.resolve("known-keys.txt")).resolve("inside");
        Files.writeString(inside, "kept");
        KeyRing ring = ring();
        assertThat(ring.known()).isEmpty();
        assertThat(kind(() -> ring.remember("AB", "C"))).isEqualTo(KeyException.Kind.NOT_WRITTEN);
        assertThat(kind(() -> ring.forget("AB"))).isEqualTo(KeyException.Kind.NOT_WRITTEN);
        assertThat(inside).hasContent("kept");
        assertThat(ring.codes()).isEmpty();
        String code = made(ring).code();
        assertThat(ring.codes()).containsExactly(code);
    }

    /** A key without a passphrase is never called closed, wherever its file is damaged. */
    @Test
    void aDamagedKeyIsNotTakenForAClosedOne() throws Exception {
        SigningKey key = made(ring());
        Path file = folder.resolve("signing-key.p12");
        byte[] whole = Files.readAllBytes(file);
        Random masks = new Random(7);
        int damaged = 0;
        int tried = 0;
        for (int at = 0; at < whole.length; at += 41) {
            byte[] changed = whole.clone();
            changed[at] ^= (byte) (1 + masks.nextInt(255));
            Files.write(file, changed);
            KeyRing.Status status = ring().status();
            assertThat(status.state()).as("byte " + at).isIn(KeyRing.State.UNREADABLE, KeyRing.State.OPEN);
            if (status.state() == KeyRing.State.OPEN) {
                assertThat(status.code()).isEqualTo(key.code());
            }
            damaged += status.state() == KeyRing.State.UNREADABLE ? 1 : 0;
            tried++;
        }
        assertThat(damaged).isGreaterThan(tried * 95 / 100);
    }

    /** With the right passphrase a damaged file is reported as damaged, not as closed. */
    @Test
    void aDamagedClosedKeyIsNoWrongPassphrase() throws Exception {
        KeyRing ring = ring();
        made(ring);
        ring.protect(SECRET);
        Path file = folder.resolve("signing-key.p12");
        byte[] whole = Files.readAllBytes(file);
        whole[whole.length / 3] ^= 1;
        Files.write(file, whole);
        assertThat(ring().status().state()).isEqualTo(KeyRing.State.LOCKED);
        assertThat(kind(() -> ring().unlock(SECRET))).isEqualTo(KeyException.Kind.UNREADABLE);
        assertThat(kind(() -> ring().unlock("wrong".toCharArray()))).isEqualTo(KeyException.Kind.WRONG_PASSPHRASE);
    }

    /** A key file that others can read is put right, and that is reported as long as the program runs. */
    @Test
    void aKeyThatOthersCanReadIsPutRight() throws Exception {
        made(ring());
        Path file = folder.resolve("signing-key.p12");
        for (String open : List.of("rw-r--r--", "rw-rw----", "rw----r--")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(open));
            KeyRing ring = ring();
            assertThat(ring.status().wasReadable()).as(open).isTrue();
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                    .isEqualTo("rw-------");
            assertThat(ring.status().wasReadable()).isTrue();
            assertThat(ring().status().wasReadable()).isFalse();
        }
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--------"));
        assertThat(ring().status().wasReadable()).isFalse();
    }

    @Test
    void aDamagedKeyIsReportedAndCanBeReplaced() throws Exception {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("signing-key.p12"), "broken");
        Files.setPosixFilePermissions(folder.resolve("signing-key.p12"), OwnerOnly.READS);
        KeyRing ring = ring();
        assertThat(ring.status()).isEqualTo(new KeyRing.Status(KeyRing.State.UNREADABLE, "", "", "", false, false));
        assertThatThrownBy(() -> made(ring)).isInstanceOf(KeyException.class);
        ring.renew("A. Marlow", "", new char[0], WHEN);
        assertThat(ring.status().state()).isEqualTo(KeyRing.State.OPEN);
    }

    /** On a full disk the key stays as it was, in the file and in memory. */
    @Test
    void aKeyThatCannotBeWrittenLeavesTheOldOne() throws Exception {
        KeyRing ring = ring();
        SigningKey key = made(ring);
        full = true;
        assertThat(kind(() -> ring.renew("A. Marlow", "", new char[0], WHEN))).isEqualTo(KeyException.Kind.NOT_WRITTEN);
        assertThat(kind(() -> ring.protect(SECRET))).isEqualTo(KeyException.Kind.NOT_WRITTEN);
        assertThat(kind(() -> ring.remember("AB", "C"))).isEqualTo(KeyException.Kind.NOT_WRITTEN);
        assertThat(kind(() -> ring.forget(key.code()))).isEqualTo(KeyException.Kind.NOT_WRITTEN);
        assertThat(files()).containsExactly("known-keys.txt", "signing-key.lock", "signing-key.p12");
        assertThat(made(ring)).isEqualTo(key);
        assertThat(ring.status().closed()).isFalse();
        assertThat(made(ring())).isEqualTo(key);
    }

    private interface Work {
        void run() throws KeyException;
    }

    private static KeyException.Kind kind(Work work) {
        try {
            work.run();
        } catch (KeyException unusable) {
            return unusable.kind();
        }
        throw new AssertionError("no failure");
    }
}
