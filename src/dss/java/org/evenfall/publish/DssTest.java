package org.evenfall.publish;

import static org.assertj.core.api.Assertions.assertThat;

import eu.europa.esig.dss.diagnostic.SignatureWrapper;
import eu.europa.esig.dss.enumerations.SignatureLevel;
import eu.europa.esig.dss.model.InMemoryDocument;
import eu.europa.esig.dss.model.x509.CertificateToken;
import eu.europa.esig.dss.spi.validation.CommonCertificateVerifier;
import eu.europa.esig.dss.spi.x509.CommonTrustedCertificateSource;
import eu.europa.esig.dss.validation.SignedDocumentValidator;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.evenfall.setup.entry.Paper;
import org.evenfall.sign.PdfVerifier;
import org.evenfall.sign.SigningKey;
import org.evenfall.sign.SigningKeys;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * An independent validation of the signature (ETSI EN 319 142-1, baseline B): the European Commission's Digital Signature
 * Service library, 6.4.
 */
class DssTest {

    private static SigningKey key;

    @BeforeAll
    static void once() throws Exception {
        key = SigningKeys.make("A. Marlow", "farm manager", Instant.now());
    }

    private static byte[] card(Paper paper, SigningKey by) throws Exception {
        return SignedCards.of(paper, by);
    }

    private static List<SignatureWrapper> signatures(byte[] card, SigningKey by) {
        CommonTrustedCertificateSource trusted = new CommonTrustedCertificateSource();
        trusted.addCertificate(new CertificateToken(by.certificate()));
        CommonCertificateVerifier verifier = new CommonCertificateVerifier();
        verifier.setTrustedCertSources(trusted);
        SignedDocumentValidator validator = SignedDocumentValidator.fromDocument(new InMemoryDocument(card));
        validator.setCertificateVerifier(verifier);
        return validator.validateDocument().getDiagnosticData().getSignatures();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everyCardIsPadesBaselineBAndIntact(Paper paper) throws Exception {
        List<SignatureWrapper> signatures = signatures(card(paper, key), key);
        assertThat(signatures).hasSize(1);
        SignatureWrapper signature = signatures.get(0);
        assertThat(signature.getSignatureFormat()).isEqualTo(SignatureLevel.PAdES_BASELINE_B);
        assertThat(signature.isSignatureIntact()).isTrue();
        assertThat(signature.isSignatureValid()).isTrue();
        assertThat(signature.getStructuralValidationMessages()).isEmpty();
        assertThat(signature.isBLevelTechnicallyValid()).isTrue();
    }

    /** Wherever a byte is changed inside the signed range, this validator reports it too. */
    @Test
    void aChangedByteFails() throws Exception {
        byte[] card = card(Paper.A5_LANDSCAPE, key);
        for (int at = 700; at < 20_000; at += 1301) {
            byte[] changed = card.clone();
            changed[at] ^= 0x04;
            assertThat(signatures(changed, key))
                    .as("byte " + at)
                    .allMatch(signature -> !signature.isSignatureIntact() || !signature.isSignatureValid());
        }
    }

    @Test
    void whatIsAppendedIsNotCovered() throws Exception {
        byte[] card = card(Paper.A4, key);
        byte[] more = "\n% one more comment\n".getBytes(StandardCharsets.US_ASCII);
        byte[] longer = Arrays.copyOf(card, card.length + more.length);
        System.arraycopy(more, 0, longer, card.length, more.length);
        int[] range = signatures(card, key).get(0).getSignatureByteRange().stream()
                .mapToInt(java.math.BigInteger::intValue)
                .toArray();
        assertThat(range[2] + range[3]).isEqualTo(card.length).isLessThan(longer.length);
        assertThat(PdfVerifier.verify(longer, java.util.Set.of()).appended()).isTrue();
    }
}
