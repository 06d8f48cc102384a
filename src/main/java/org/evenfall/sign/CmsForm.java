package org.evenfall.sign;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bouncycastle.asn1.ASN1EncodableVector;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.CMSObjectIdentifiers;
import org.bouncycastle.asn1.cms.ContentInfo;
import org.bouncycastle.asn1.cms.IssuerAndSerialNumber;
import org.bouncycastle.asn1.cms.SignedData;
import org.bouncycastle.asn1.cms.SignerIdentifier;
import org.bouncycastle.asn1.cms.SignerInfo;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.nist.NISTObjectIdentifiers;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.asn1.x509.AlgorithmIdentifier;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.operator.DefaultSignatureAlgorithmIdentifierFinder;

/**
 * The form of a signature (CMS, RFC 5652). Its versions, kinds of content, algorithms, name of the signer and
 * certificates are not signed themselves: they are built again and compared, so that nothing in them can differ.
 */
final class CmsForm {

    private static final AlgorithmIdentifier DIGEST = new AlgorithmIdentifier(NISTObjectIdentifiers.id_sha256);

    private CmsForm() {}

    /** The signed attribute that names certificates, the one that signs first (RFC 5035). */
    static Attribute naming(List<byte[]> certificates) throws GeneralSecurityException {
        List<ESSCertIDv2> ids = new ArrayList<>();
        for (byte[] certificate : certificates) {
            ids.add(new ESSCertIDv2(digest(certificate)));
        }
        return new Attribute(
                PKCSObjectIdentifiers.id_aa_signingCertificateV2,
                new DERSet(new SigningCertificateV2(ids.toArray(new ESSCertIDv2[0]))));
    }

    /** Whether the signed attributes name this certificate first and no other is inside that they do not name. */
    static boolean namesAll(CMSSignedData signed, SignerInformation signer, X509CertificateHolder first)
            throws GeneralSecurityException, IOException {
        Attribute attribute = signer.getSignedAttributes() == null
                ? null
                : signer.getSignedAttributes().get(PKCSObjectIdentifiers.id_aa_signingCertificateV2);
        if (attribute == null) {
            return false;
        }
        ESSCertIDv2[] ids = SigningCertificateV2.getInstance(attribute.getAttributeValues()[0])
                .getCerts();
        if (ids.length == 0 || !MessageDigest.isEqual(digest(first.getEncoded()), ids[0].getCertHash())) {
            return false;
        }
        for (X509CertificateHolder holder : signed.getCertificates().getMatches(null)) {
            byte[] digest = digest(holder.getEncoded());
            if (Arrays.stream(ids).noneMatch(id -> MessageDigest.isEqual(digest, id.getCertHash()))) {
                return false;
            }
        }
        return true;
    }

    /** Whether everything outside the signed attributes, the certificates and the signature value is as written here. */
    static boolean isExact(
            byte[] contents,
            CMSSignedData signed,
            SignerInformation signer,
            X509CertificateHolder holder,
            String algorithm)
            throws IOException {
        SignerInfo given = signer.toASN1Structure();
        SignerInfo info = new SignerInfo(
                new SignerIdentifier(new IssuerAndSerialNumber(holder.toASN1Structure())),
                DIGEST,
                given.getAuthenticatedAttributes(),
                new DefaultSignatureAlgorithmIdentifierFinder().find(algorithm),
                given.getEncryptedDigest(),
                null);
        ASN1EncodableVector certificates = new ASN1EncodableVector();
        signed.getCertificates().getMatches(null).forEach(each -> certificates.add(each.toASN1Structure()));
        SignedData data = new SignedData(
                new DERSet(DIGEST),
                new ContentInfo(CMSObjectIdentifiers.data, null),
                new DERSet(certificates),
                null,
                new DERSet(info));
        byte[] again = new ContentInfo(CMSObjectIdentifiers.signedData, data).getEncoded(ASN1Encoding.DER);
        return Arrays.equals(contents, again);
    }

    private static byte[] digest(byte[] certificate) throws GeneralSecurityException {
        return MessageDigest.getInstance("SHA-256").digest(certificate);
    }
}
