package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.interfaces.RSAPublicKey;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SigningKeysTest {

    private static final char[] SECRET = "three oaks".toCharArray();

    @TempDir
    private Path temp;

    private SigningKey stored(SigningKey key) throws Exception {
        Path file = Files.write(temp.resolve("key.p12"), SigningKeys.store(key, SECRET));
        return SigningKeys.load(file, SECRET);
    }

    /** Source (from memory): NIST SP 800-57 part 1, table 2: RSA 3 072 bits for 128 bits of security. */
    @Test
    void aNewKeyHasACertificateOfTwentyYears() throws Exception {
        SigningKey key = SigningKeys.make("A. Marlow", "farm manager", SamplePdf.WHEN);
        assertThat(key.certificate().getPublicKey())
                .asInstanceOf(InstanceOfAssertFactories.type(RSAPublicKey.class))
                .matches(rsa -> rsa.getModulus().bitLength() == 3072);
        assertThat(key.certificate().getSubjectX500Principal().getName())
                .contains("CN=A. Marlow")
                .contains("OU=farm manager");
        assertThat(key.certificate().getNotBefore().toInstant()).isEqualTo(Instant.parse("2027-03-18T09:59:00Z"));
        assertThat(key.until()).isEqualTo(LocalDate.parse("2047-03-13"));
        assertThat(key.certificate().getSerialNumber().longValue()).isEqualTo(SamplePdf.WHEN.toEpochMilli());
        // digitalSignature and nonRepudiation (RFC 5280, 4.2.1.3), no other use
        assertThat(key.certificate().getKeyUsage())
                .containsExactly(true, true, false, false, false, false, false, false, false);
        key.certificate().verify(key.certificate().getPublicKey());
        assertThat(key.chain()).containsExactly(key.certificate());
    }

    @Test
    void withoutNameAndRole() throws Exception {
        SigningKey key = SigningKeys.make(" ", " ", SamplePdf.WHEN);
        assertThat(key.name()).isEqualTo("Evenfall");
        assertThat(key.certificate().getSubjectX500Principal().getName()).doesNotContain("OU=");
    }

    /** The code is the begin of the SHA-256 fingerprint, checked against the JDK's own digest of another form. */
    @Test
    void theCodeIsTheFingerprint() throws Exception {
        SigningKey key = SamplePdf.foreign("EC", 256, "CN=Saltreed group");
        String fingerprint = new java.math.BigInteger(
                        1,
                        java.security.MessageDigest.getInstance("SHA-256")
                                .digest(key.certificate().getEncoded()))
                .toString(16)
                .toUpperCase(java.util.Locale.ROOT);
        String padded = "0".repeat(64 - fingerprint.length()) + fingerprint;
        assertThat(key.code()).hasSize(19).matches("[0-9A-F]{4}( [0-9A-F]{4}){3}");
        assertThat(padded).startsWith(key.code().replace(" ", ""));
        assertThat(key.toString()).isEqualTo("SigningKey[" + key.code() + "]");
    }

    @Test
    void aNameComesFromTheCertificate() throws Exception {
        assertThat(SamplePdf.foreign("EC", 256, "CN=Saltreed group,OU=adviser").name())
                .isEqualTo("Saltreed group");
        assertThat(SamplePdf.foreign("EC", 256, "OU=adviser").name()).isEmpty();
    }

    /** Source (from memory): NIST SP 800-57: RSA from 2 048 bits. The smallest accepted keys and the next smaller ones. */
    @ParameterizedTest
    @CsvSource({"RSA, 2048, true", "RSA, 2047, false", "EC, 256, true", "EC, 384, true", "DSA, 2048, false"})
    void onlyStrongKeysAreTaken(String algorithm, int bits, boolean strong) throws Exception {
        if (algorithm.equals("DSA")) {
            assertThat(kind(dsa(bits))).isEqualTo(KeyException.Kind.NO_KEY);
            return;
        }
        SigningKey key = SamplePdf.foreign(algorithm, bits, "CN=Saltreed group");
        if (strong) {
            assertThat(stored(key)).isEqualTo(key);
        } else {
            assertThat(kind(key)).isEqualTo(KeyException.Kind.NO_KEY);
        }
    }

    private static SigningKey dsa(int bits) throws Exception {
        var generator = java.security.KeyPairGenerator.getInstance("DSA");
        generator.initialize(bits);
        var pair = generator.generateKeyPair();
        SigningKey other = SamplePdf.foreign("RSA", 2048, "CN=Saltreed group");
        // the certificate of another key is enough: the kind of the private key decides
        return new SigningKey(pair.getPrivate(), other.certificate(), List.of(other.certificate()));
    }

    private KeyException.Kind kind(SigningKey key) throws Exception {
        try {
            stored(key);
        } catch (KeyException unusable) {
            return unusable.kind();
        }
        throw new AssertionError("the key was taken");
    }
}
