package org.evenfall.sign;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PrivateKey;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.bouncycastle.asn1.x500.RDN;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x500.style.IETFUtils;

/**
 * A key that signs, with its certificate. It proves that a file is unchanged since signing; who signed is only as certain
 * as the code of the key.
 *
 * @param privateKey the key
 * @param certificate its certificate
 * @param chain that certificate and the certificates of its issuers, as far as they are known
 */
public record SigningKey(PrivateKey privateKey, X509Certificate certificate, List<X509Certificate> chain) {

    /** Copies the chain. */
    public SigningKey {
        chain = List.copyOf(chain);
    }

    /** Does not show the key. */
    @Override
    public String toString() {
        return "SigningKey[" + code() + "]";
    }

    /** Short code of the key, see {@link #code(X509Certificate)}. */
    public String code() {
        return code(certificate);
    }

    /** The owner's name in the certificate. */
    public String name() {
        return name(certificate);
    }

    /** Last day of the certificate, UTC. */
    LocalDate until() {
        return LocalDate.ofInstant(certificate.getNotAfter().toInstant(), ZoneOffset.UTC);
    }

    /** The common name of the certificate's subject; empty when there is none. */
    static String name(X509Certificate certificate) {
        RDN[] names = X500Name.getInstance(certificate.getSubjectX500Principal().getEncoded())
                .getRDNs(BCStyle.CN);
        return names.length == 0
                ? ""
                : IETFUtils.valueToString(names[0].getFirst().getValue());
    }

    /** The first eight bytes of the certificate's SHA-256 fingerprint in groups of four. */
    static String code(X509Certificate certificate) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
            String hex = HexFormat.of().formatHex(digest, 0, 8).toUpperCase(Locale.ROOT);
            return String.join(" ", hex.substring(0, 4), hex.substring(4, 8), hex.substring(8, 12), hex.substring(12));
        } catch (NoSuchAlgorithmException | CertificateEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
