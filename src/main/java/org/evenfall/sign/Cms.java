package org.evenfall.sign;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.X509Certificate;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.DefaultSignedAttributeTableGenerator;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;
import org.jspecify.annotations.Nullable;

/**
 * Detached signatures (CMS, RFC 5652). The signed attributes name the signing certificate (RFC 5035) and hold no signing
 * time: the PDF signature dictionary has it (ETSI EN 319 142-1, 6.3).
 */
final class Cms {

    private Cms() {}

    /** The DER bytes of a signature over the data. */
    static byte[] sign(byte[] data, SigningKey key) throws IOException {
        try {
            X509Certificate certificate = key.certificate();
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(certificate.getEncoded());
            Attribute named = new Attribute(
                    PKCSObjectIdentifiers.id_aa_signingCertificateV2,
                    new DERSet(new SigningCertificateV2(new ESSCertIDv2(digest))));
            DefaultSignedAttributeTableGenerator attributes =
                    new DefaultSignedAttributeTableGenerator(new AttributeTable(named));
            CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
            generator.addSignerInfoGenerator(
                    new JcaSignerInfoGeneratorBuilder(new JcaDigestCalculatorProviderBuilder().build())
                            .setSignedAttributeGenerator(parameters ->
                                    attributes.getAttributes(parameters).remove(CMSAttributes.signingTime))
                            .build(new JcaContentSignerBuilder(algorithm(key)).build(key.privateKey()), certificate));
            generator.addCertificates(new JcaCertStore(key.chain()));
            return generator.generate(new CMSProcessableByteArray(data), false).getEncoded(ASN1Encoding.DER);
        } catch (GeneralSecurityException | OperatorCreationException | CMSException broken) {
            throw new IOException("the file cannot be signed", broken);
        }
    }

    private static String algorithm(SigningKey key) {
        return key.privateKey().getAlgorithm().equals("EC") ? "SHA256withECDSA" : "SHA256withRSA";
    }

    /** The certificate whose key signed exactly these bytes; null when the signature does not fit or cannot be read. */
    static @Nullable X509Certificate signer(byte[] data, byte[] signature) {
        try {
            CMSSignedData signed = new CMSSignedData(new CMSProcessableByteArray(data), signature);
            for (SignerInformation signer : signed.getSignerInfos()) {
                for (X509CertificateHolder holder : signed.getCertificates().getMatches(null)) {
                    if (named(signer, holder)
                            && signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(holder))) {
                        return new JcaX509CertificateConverter().getCertificate(holder);
                    }
                }
            }
            return null;
        } catch (CMSException
                | OperatorCreationException
                | GeneralSecurityException
                | IOException
                | RuntimeException broken) {
            return null;
        }
    }

    /** Whether the signed attributes name this certificate, so that it cannot be exchanged or altered. */
    private static boolean named(SignerInformation signer, X509CertificateHolder holder)
            throws GeneralSecurityException, IOException {
        Attribute attribute = signer.getSignedAttributes().get(PKCSObjectIdentifiers.id_aa_signingCertificateV2);
        if (attribute == null) {
            return false;
        }
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(holder.getEncoded());
        for (ESSCertIDv2 id : SigningCertificateV2.getInstance(attribute.getAttributeValues()[0])
                .getCerts()) {
            if (MessageDigest.isEqual(digest, id.getCertHash())) {
                return true;
            }
        }
        return false;
    }
}
