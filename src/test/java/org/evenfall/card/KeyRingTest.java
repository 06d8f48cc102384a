package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.stream.Stream;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeyRingTest {

    private static final Instant WHEN = Instant.parse("2027-03-18T10:00:00Z");
    private static final char[] SECRET = "three oaks by the gate".toCharArray();

    @TempDir
    private Path temp;

    private Path folder;

    @BeforeEach
    void notThereYet() {
        folder = temp.resolve("evenfall");
    }

    private SigningKey made(KeyRing ring) throws KeyException {
        return ring.signing("A. Marlow", "farm manager", WHEN);
    }

    @Test
    void theFirstSignatureMakesAKeyThatOnlyItsOwnerCanRead() throws Exception {
        KeyRing ring = new KeyRing(folder);
        assertThat(ring.status().state()).isEqualTo(KeyRing.State.NONE);
        SigningKey key = made(ring);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.toList())
                    .isNotEmpty()
                    .allSatisfy(file -> assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                            .isEqualTo("rw-------"));
        }
        assertThat(made(new KeyRing(folder)).code()).isEqualTo(key.code());
        assertThat(ring.status())
                .isEqualTo(new KeyRing.Status(KeyRing.State.OPEN, key.code(), "A. Marlow", "2047-03-13", false));
        assertThat(ring.known()).containsEntry(key.code(), "A. Marlow");
        assertThat(key.toString()).doesNotContain("RSA").contains(key.code());
    }

    @Test
    void aPassphraseClosesIt() throws Exception {
        KeyRing ring = new KeyRing(folder);
        String code = made(ring).code();
        ring.protect(SECRET);
        assertThat(ring.status().closed()).isTrue();
        KeyRing later = new KeyRing(folder);
        assertThat(later.status().state()).isEqualTo(KeyRing.State.LOCKED);
        assertThat(trouble(() -> made(later))).isEqualTo(KeyException.Kind.LOCKED);
        assertThat(trouble(() -> later.unlock("wrong".toCharArray()))).isEqualTo(KeyException.Kind.WRONG_PASSPHRASE);
        assertThat(later.status().state()).isEqualTo(KeyRing.State.LOCKED);
        later.unlock(SECRET);
        assertThat(made(later).code()).isEqualTo(code);
        // one's own key is known though it is closed
        assertThat(new KeyRing(folder).codes()).contains(code);
        later.protect(new char[0]);
        assertThat(new KeyRing(folder).status().state()).isEqualTo(KeyRing.State.OPEN);
    }

    @Test
    void aLostKeyIsReplacedAndPutAside() throws Exception {
        KeyRing ring = new KeyRing(folder);
        String old = made(ring).code();
        ring.renew("A. Marlow", "", new char[0], WHEN.plusSeconds(60));
        assertThat(ring.status().code()).isNotEqualTo(old);
        assertThat(ring.codes()).contains(old, ring.status().code());
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .anyMatch(name -> name.startsWith("signing-key-until-20270318T100100"));
        }
    }

    /** A key from elsewhere: RSA and elliptic curve sign cards that verify; what is too weak or no key is told. */
    @Test
    void aKeyOfOnesOwnIsBrought() throws Exception {
        KeyRing ring = new KeyRing(folder);
        made(ring);
        for (String algorithm : List.of("RSA", "EC")) {
            Path file = imported(algorithm, 2048);
            assertThat(trouble(() -> ring.importKey(file, "no".toCharArray(), WHEN)))
                    .isEqualTo(KeyException.Kind.WRONG_PASSPHRASE);
            ring.importKey(file, SECRET, Instant.now());
            SigningKey key = ring.signing("", "", WHEN);
            assertThat(key.name()).isEqualTo("Saltreed group");
            byte[] card = Cards.signed(key);
            assertThat(CardVerifier.verify(card, ring.codes()))
                    .matches(result -> result.unchanged() && result.knownKey());
            // kept under the same passphrase
            assertThat(new KeyRing(folder).status().state()).isEqualTo(KeyRing.State.LOCKED);
        }
        Path weak = imported("RSA", 1024);
        assertThat(trouble(() -> ring.importKey(weak, SECRET, WHEN))).isEqualTo(KeyException.Kind.NO_KEY);
        Path text = Files.writeString(temp.resolve("text.p12"), "no key at all");
        assertThat(trouble(() -> ring.importKey(text, SECRET, WHEN))).isEqualTo(KeyException.Kind.UNREADABLE);
    }

    private Path imported(String algorithm, int bits) throws Exception {
        KeyPairGenerator generator = KeyPairGenerator.getInstance(algorithm);
        if (algorithm.equals("EC")) {
            generator.initialize(new ECGenParameterSpec("secp256r1"));
        } else {
            generator.initialize(bits);
        }
        KeyPair pair = generator.generateKeyPair();
        X500Name name = new X500Name("CN=Saltreed group");
        X509Certificate certificate = new JcaX509CertificateConverter()
                .getCertificate(new JcaX509v3CertificateBuilder(
                                name,
                                BigInteger.TEN,
                                Date.from(WHEN),
                                Date.from(WHEN.plusSeconds(9_000_000)),
                                name,
                                pair.getPublic())
                        .build(new JcaContentSignerBuilder(algorithm.equals("EC") ? "SHA256withECDSA" : "SHA256withRSA")
                                .build(pair.getPrivate())));
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, SECRET);
        store.setKeyEntry("from elsewhere", pair.getPrivate(), SECRET, new Certificate[] {certificate});
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        store.store(bytes, SECRET);
        return Files.write(temp.resolve(algorithm + bits + ".p12"), bytes.toByteArray());
    }

    @Test
    void keysOfOthersAreKnownAndForgotten() throws Exception {
        KeyRing ring = new KeyRing(folder);
        ring.remember("0123 4567 89AB CDEF", "R. Fenwick\tSaltreed");
        assertThat(new KeyRing(folder).known()).containsEntry("0123 4567 89AB CDEF", "R. Fenwick Saltreed");
        ring.forget("0123 4567 89AB CDEF");
        assertThat(ring.codes()).isEmpty();
    }

    @Test
    void aBrokenKeyIsToldAndCanBeReplaced() throws Exception {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("signing-key.p12"), "broken");
        KeyRing ring = new KeyRing(folder);
        assertThat(ring.status().state()).isEqualTo(KeyRing.State.UNREADABLE);
        assertThatThrownBy(() -> made(ring)).isInstanceOf(KeyException.class);
        ring.renew("A. Marlow", "", new char[0], WHEN);
        assertThat(ring.status().state()).isEqualTo(KeyRing.State.OPEN);
    }

    private interface Work {
        void run() throws KeyException;
    }

    private static KeyException.Kind trouble(Work work) {
        try {
            work.run();
        } catch (KeyException trouble) {
            return trouble.kind();
        }
        throw new AssertionError("no trouble");
    }
}
