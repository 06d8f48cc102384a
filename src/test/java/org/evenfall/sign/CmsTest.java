package org.evenfall.sign;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.cert.X509Certificate;
import java.util.List;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class CmsTest {

    private static final byte[] DATA = "174 kg/ha".getBytes(StandardCharsets.US_ASCII);

    private static KeyPair pair;
    private static SigningKey key;

    @BeforeAll
    static void once() throws Exception {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
        generator.initialize(2048);
        pair = generator.generateKeyPair();
        X509Certificate certificate = SamplePdf.certificate(pair, "RSA", "CN=A. Marlow");
        key = new SigningKey(pair.getPrivate(), certificate, List.of(certificate));
    }

    @Test
    void theSignerIsFoundForTheseBytesOnly() throws Exception {
        byte[] signature = Cms.sign(DATA, key);
        assertThat(Cms.signer(DATA, signature)).isEqualTo(key.certificate());
        byte[] other = DATA.clone();
        other[0] ^= 1;
        assertThat(Cms.signer(other, signature)).isNull();
        assertThat(Cms.signer(DATA, new byte[] {0x30, 0})).isNull();
        assertThat(Cms.signer(DATA, new byte[0])).isNull();
    }

    /** ETSI EN 319 142-1, 6.3: the attributes name the certificate (RFC 5035) and hold no signing time; the data is not inside. */
    @Test
    void theAttributesAreThoseOfPades() throws Exception {
        CMSSignedData signed = new CMSSignedData(Cms.sign(DATA, key));
        assertThat(signed.getSignedContent()).isNull();
        assertThat(signed.getCertificates().getMatches(null)).hasSize(1);
        AttributeTable attributes =
                signed.getSignerInfos().getSigners().iterator().next().getSignedAttributes();
        assertThat(attributes.get(CMSAttributes.signingTime)).isNull();
        assertThat(attributes.get(PKCSObjectIdentifiers.id_aa_signingCertificateV2))
                .isNotNull();
        assertThat(attributes.get(CMSAttributes.messageDigest)).isNotNull();
    }

    /** Another certificate for the same key, put in place of the one that signed, is not taken. */
    @Test
    void theCertificateCannotBeExchanged() throws Exception {
        X509Certificate other = SamplePdf.certificate(pair, "RSA", "CN=B. Other");
        CMSSignedData signed = new CMSSignedData(new CMSProcessableByteArray(DATA), Cms.sign(DATA, key));
        CMSSignedData exchanged = CMSSignedData.replaceCertificatesAndCRLs(
                signed, new JcaCertStore(List.of(other)), signed.getAttributeCertificates(), signed.getCRLs());
        assertThat(Cms.signer(DATA, exchanged.getEncoded())).isNull();
    }

    /** A signature whose attributes name no certificate fits several and counts for none. */
    @Test
    void aSignatureThatNamesNoCertificateIsRefused() throws Exception {
        CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
        generator.addSignerInfoGenerator(new JcaSignerInfoGeneratorBuilder(
                        new JcaDigestCalculatorProviderBuilder().build())
                .build(new JcaContentSignerBuilder("SHA256withRSA").build(pair.getPrivate()), key.certificate()));
        generator.addCertificates(new JcaCertStore(key.chain()));
        byte[] signature =
                generator.generate(new CMSProcessableByteArray(DATA), false).getEncoded();
        assertThat(Cms.signer(DATA, signature)).isNull();
    }

    /** The whole chain travels with the signature; the certificate of the key is the signer, not its issuer. */
    @Test
    void theChainIsKept() throws Exception {
        SigningKey issuer = SamplePdf.foreign("EC", 384, "CN=Saltreed group");
        SigningKey withChain =
                new SigningKey(key.privateKey(), key.certificate(), List.of(issuer.certificate(), key.certificate()));
        byte[] signature = Cms.sign(DATA, withChain);
        assertThat(new CMSSignedData(signature).getCertificates().getMatches(null))
                .hasSize(2);
        assertThat(Cms.signer(DATA, signature)).isEqualTo(key.certificate());
    }
}
