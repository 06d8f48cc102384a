package org.evenfall.card;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.Date;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/** The person's signing key in a PKCS#12 file that only its owner can read. Made on first use. */
public final class SigningKeys {

    private static final String ALIAS = "evenfall";
    private static final Duration YEARS = Duration.ofDays(20 * 365L);

    private SigningKeys() {}

    /**
     * The key of a file, made if there is none.
     *
     * @param file PKCS#12 file
     * @param passphrase its passphrase, empty for none
     * @param name who signs, for the certificate of a new key
     * @param role role, may be empty
     * @param now when a new key is made
     */
    public static SigningKey loadOrMake(Path file, char[] passphrase, String name, String role, Instant now)
            throws IOException {
        if (Files.exists(file)) {
            return load(file, passphrase);
        }
        SigningKey key = make(name, role, now);
        save(key, file, passphrase);
        return key;
    }

    /** A key from a PKCS#12 file, own or imported: the first entry that holds one. */
    public static SigningKey load(Path file, char[] passphrase) throws IOException {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(Files.readAllBytes(file)), passphrase);
            for (String alias : Collections.list(store.aliases())) {
                if (store.getKey(alias, passphrase) instanceof PrivateKey key
                        && store.getCertificate(alias) instanceof X509Certificate certificate) {
                    return new SigningKey(key, certificate);
                }
            }
            throw new IOException("no signing key in " + file);
        } catch (GeneralSecurityException broken) {
            throw new IOException("the signing key in " + file + " cannot be read", broken);
        }
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
            return new SigningKey(pair.getPrivate(), certificate);
        } catch (GeneralSecurityException | OperatorCreationException broken) {
            throw new IOException("a signing key cannot be made", broken);
        }
    }

    /** Writes a key so that only its owner can read it; never over another key. */
    public static void save(SigningKey key, Path file, char[] passphrase) throws IOException {
        if (Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, passphrase);
            store.setKeyEntry(ALIAS, key.privateKey(), passphrase, new Certificate[] {key.certificate()});
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            store.store(bytes, passphrase);
            Files.createDirectories(file.toAbsolutePath().getParent());
            boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
            if (posix) {
                Files.createFile(
                        file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            }
            Files.write(file, bytes.toByteArray());
        } catch (GeneralSecurityException broken) {
            throw new IOException("the signing key cannot be saved", broken);
        }
    }
}
