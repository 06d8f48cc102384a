package org.evenfall.sign;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.UnrecoverableKeyException;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.security.interfaces.ECPrivateKey;
import java.security.interfaces.RSAPrivateKey;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** Makes signing keys, reads and writes them as PKCS#12 (RFC 7292). */
public final class SigningKeys {

    private static final String ALIAS = "evenfall";

    /** Subject of a certificate for which no name was given. */
    private static final String NO_NAME = "Evenfall";

    /** Validity of a new certificate. Assumption: longer than a card is kept. */
    private static final Duration VALIDITY = Duration.ofDays(20 * 365L);

    /** A certificate is valid from a minute earlier, so that a clock that is slightly late still accepts it. */
    private static final Duration CLOCK_TOLERANCE = Duration.ofMinutes(1);

    /** Source (from memory): NIST SP 800-57 part 1, table 2: RSA 3 072 bits for 128 bits of security. */
    private static final int NEW_RSA_BITS = 3072;

    /** Source (from memory): NIST SP 800-57 part 1, table 2: least accepted, 112 bits of security. */
    private static final int LEAST_RSA_BITS = 2048;

    private static final int LEAST_CURVE_BITS = 256;

    private SigningKeys() {}

    /**
     * Reads a PKCS#12 file, own or imported: the first entry with a key that can sign.
     *
     * @throws KeyException when the passphrase is wrong, or the file holds no such key or cannot be read
     */
    public static SigningKey load(Path file, char[] passphrase) throws KeyException {
        try {
            return read(Files.readAllBytes(file), passphrase);
        } catch (KeyException unusable) {
            throw unusable;
        } catch (IOException unreadable) {
            throw new KeyException(KeyException.Kind.UNREADABLE, unreadable);
        }
    }

    private static SigningKey read(byte[] bytes, char[] passphrase) throws KeyException {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(bytes), passphrase);
            for (String alias : Collections.list(store.aliases())) {
                if (store.getKey(alias, passphrase) instanceof PrivateKey key
                        && usable(key)
                        && store.getCertificate(alias) instanceof X509Certificate certificate) {
                    return new SigningKey(key, certificate, chain(store.getCertificateChain(alias)));
                }
            }
            throw new KeyException(KeyException.Kind.NO_KEY);
        } catch (KeyException unusable) {
            throw unusable;
        } catch (IOException | GeneralSecurityException | RuntimeException broken) {
            boolean closed = broken instanceof UnrecoverableKeyException
                    || broken.getCause() instanceof UnrecoverableKeyException;
            throw new KeyException(
                    closed && !Pkcs12Parts.anyOpensWith(bytes, passphrase)
                            ? KeyException.Kind.WRONG_PASSPHRASE
                            : KeyException.Kind.UNREADABLE,
                    broken);
        }
    }

    /** RSA of 2 048 bits and more, or an elliptic curve of 256 and more. */
    private static boolean usable(PrivateKey key) {
        return (key instanceof RSAPrivateKey rsa && rsa.getModulus().bitLength() >= LEAST_RSA_BITS)
                || (key instanceof ECPrivateKey curve
                        && curve.getParams().getOrder().bitLength() >= LEAST_CURVE_BITS);
    }

    private static List<X509Certificate> chain(Certificate[] certificates) {
        return Arrays.stream(certificates)
                .filter(X509Certificate.class::isInstance)
                .map(X509Certificate.class::cast)
                .toList();
    }

    /**
     * A new RSA key of 3 072 bits with a self-signed certificate.
     *
     * @param name common name of the certificate; the program's name when blank
     * @param role organizational unit of the certificate; none when blank
     * @param now begin of its validity
     * @throws IOException when the platform cannot make such a key
     */
    public static SigningKey make(String name, String role, Instant now) throws IOException {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
            generator.initialize(NEW_RSA_BITS);
            KeyPair pair = generator.generateKeyPair();
            X500NameBuilder subject = new X500NameBuilder().addRDN(BCStyle.CN, name.isBlank() ? NO_NAME : name);
            if (!role.isBlank()) {
                subject.addRDN(BCStyle.OU, role);
            }
            JcaX509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(
                    subject.build(),
                    BigInteger.valueOf(now.toEpochMilli()),
                    Date.from(now.minus(CLOCK_TOLERANCE)),
                    Date.from(now.plus(VALIDITY)),
                    subject.build(),
                    pair.getPublic());
            builder.addExtension(
                    Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature | KeyUsage.nonRepudiation));
            X509Certificate certificate = new JcaX509CertificateConverter()
                    .getCertificate(
                            builder.build(new JcaContentSignerBuilder("SHA256withRSA").build(pair.getPrivate())));
            return new SigningKey(pair.getPrivate(), certificate, List.of(certificate));
        } catch (GeneralSecurityException | OperatorCreationException broken) {
            throw new IOException("a signing key cannot be made", broken);
        }
    }

    /** The bytes of a PKCS#12 file with the key, closed by the passphrase; an empty passphrase does not close it. */
    static byte[] store(SigningKey key, char[] passphrase) throws IOException {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, passphrase);
            store.setKeyEntry(ALIAS, key.privateKey(), passphrase, key.chain().toArray(new Certificate[0]));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            store.store(bytes, passphrase);
            return bytes.toByteArray();
        } catch (GeneralSecurityException broken) {
            throw new IOException("the signing key cannot be saved", broken);
        }
    }
}
