package org.evenfall.sign;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.bouncycastle.asn1.ASN1Encoding;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
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
            DefaultSignedAttributeTableGenerator attributes =
                    new DefaultSignedAttributeTableGenerator(new AttributeTable(CmsForm.naming(certificates(key))));
            CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
            generator.addSignerInfoGenerator(
                    new JcaSignerInfoGeneratorBuilder(new JcaDigestCalculatorProviderBuilder().build())
                            .setSignedAttributeGenerator(parameters ->
                                    attributes.getAttributes(parameters).remove(CMSAttributes.signingTime))
                            .build(
                                    new JcaContentSignerBuilder(algorithm(key.privateKey())).build(key.privateKey()),
                                    certificate));
            generator.addCertificates(new JcaCertStore(key.chain()));
            return generator.generate(new CMSProcessableByteArray(data), false).getEncoded(ASN1Encoding.DER);
        } catch (GeneralSecurityException | OperatorCreationException | CMSException broken) {
            throw new IOException("the file cannot be signed", broken);
        }
    }

    /** The certificates that travel with the signature: that of the key first, each once. */
    private static List<byte[]> certificates(SigningKey key) throws GeneralSecurityException {
        List<byte[]> certificates = new ArrayList<>();
        certificates.add(key.certificate().getEncoded());
        for (X509Certificate issuer : key.chain()) {
            if (!issuer.equals(key.certificate())) {
                certificates.add(issuer.getEncoded());
            }
        }
        return certificates;
    }

    private static String algorithm(Key key) {
        return key.getAlgorithm().equals("EC") ? "SHA256withECDSA" : "SHA256withRSA";
    }

    /**
     * The certificate whose key signed exactly these bytes; null when the signature does not fit, has another form than
     * is written here, or cannot be read.
     */
    static @Nullable X509Certificate signer(byte[] data, byte[] signature) {
        try {
            CMSSignedData signed = new CMSSignedData(new CMSProcessableByteArray(data), signature);
            Collection<SignerInformation> signers = signed.getSignerInfos().getSigners();
            if (signers.size() != 1) {
                return null;
            }
            SignerInformation signer = signers.iterator().next();
            for (X509CertificateHolder holder : signed.getCertificates().getMatches(null)) {
                X509Certificate certificate = new JcaX509CertificateConverter().getCertificate(holder);
                if (CmsForm.namesAll(signed, signer, holder)
                        && CmsForm.isExact(signature, signed, signer, holder, algorithm(certificate.getPublicKey()))
                        && signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(holder))) {
                    return certificate;
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
}
