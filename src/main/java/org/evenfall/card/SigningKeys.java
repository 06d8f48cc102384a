package org.evenfall.card;

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

/** Signing keys in PKCS#12 files: made, read, written. */
public final class SigningKeys {

    private static final String ALIAS = "evenfall";
    private static final Duration YEARS = Duration.ofDays(20 * 365L);

    private SigningKeys() {}

    /**
     * A key from a PKCS#12 file, own or imported: the first entry that holds one which can sign.
     *
     * @throws KeyTrouble when the passphrase is wrong, or the file holds no such key or cannot be read
     */
    public static SigningKey load(Path file, char[] passphrase) throws KeyException {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(Files.readAllBytes(file)), passphrase);
            for (String alias : Collections.list(store.aliases())) {
                if (store.getKey(alias, passphrase) instanceof PrivateKey key
                        && fit(key)
                        && store.getCertificate(alias) instanceof X509Certificate certificate) {
                    return new SigningKey(key, certificate, chain(store.getCertificateChain(alias)));
                }
            }
            throw new KeyException(KeyException.Kind.NO_KEY);
        } catch (KeyException trouble) {
            throw trouble;
        } catch (UnrecoverableKeyException wrong) {
            throw new KeyException(KeyException.Kind.WRONG_PASSPHRASE, wrong);
        } catch (IOException | GeneralSecurityException broken) {
            throw new KeyException(
                    broken.getCause() instanceof UnrecoverableKeyException
                            ? KeyException.Kind.WRONG_PASSPHRASE
                            : KeyException.Kind.UNREADABLE,
                    broken);
        }
    }

    /** RSA of 2 048 bits and more, or an elliptic curve of 256 and more. */
    private static boolean fit(PrivateKey key) {
        return (key instanceof RSAPrivateKey rsa && rsa.getModulus().bitLength() >= 2048)
                || (key instanceof ECPrivateKey curve
                        && curve.getParams().getOrder().bitLength() >= 256);
    }

    private static List<X509Certificate> chain(Certificate[] certificates) {
        return Arrays.stream(certificates)
                .filter(X509Certificate.class::isInstance)
                .map(X509Certificate.class::cast)
                .toList();
    }

    /** A new RSA key of 3 072 bits with a certificate of its own. */
    public static SigningKey make(String name, String role, Instant now) throws IOException {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
            generator.initialize(3072);
            KeyPair pair = generator.generateKeyPair();
            X500NameBuilder subject = new X500NameBuilder().addRDN(BCStyle.CN, name.isBlank() ? "Evenfall" : name);
            if (!role.isBlank()) {
                subject.addRDN(BCStyle.OU, role);
            }
            JcaX509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(
                    subject.build(),
                    BigInteger.valueOf(now.toEpochMilli()),
                    Date.from(now.minusSeconds(60)),
                    Date.from(now.plus(YEARS)),
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

    /** The bytes of a PKCS#12 file that holds the key. */
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
