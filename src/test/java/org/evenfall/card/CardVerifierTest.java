package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Whatever is done to a signed card shows, wherever it is done. */
class CardVerifierTest {

    private static SigningKey key;
    private static byte[] card;

    @BeforeAll
    static void once() throws Exception {
        key = SigningKeys.make("A. Marlow", "farm manager", Cards.WHEN);
        card = Cards.signed(key);
    }

    private static boolean unchanged(byte[] bytes) {
        try {
            return CardVerifier.verify(bytes, Set.of(key.code())).unchanged();
        } catch (IOException damaged) {
            return false;
        }
    }

    private static int[] range() throws IOException {
        try (PDDocument document = Loader.loadPDF(card)) {
            return document.getSignatureDictionaries().get(0).getByteRange();
        }
    }

    @Test
    void aSignedCardIsUnchangedAndByAKnownKey() throws Exception {
        assertThat(CardVerifier.verify(card, Set.of(key.code())))
                .isEqualTo(new VerifyResult(
                        true, true, false, "A. Marlow", "A. Marlow", key.code(), true, "2027-03-18T10:00:00Z"));
        assertThat(CardVerifier.verify(card, Set.of()).knownKey()).isFalse();
        byte[] pages = CardPdf.draw(Cards.of(Paper.A4, CardLanguage.EN, ""), Cards.WHEN);
        assertThat(CardVerifier.verify(pages, Set.of())).isEqualTo(VerifyResult.UNSIGNED);
    }

    /** Two bits of every 41st byte of the signed parts, which is every kind of place in the file. */
    @Test
    void aChangedByteShowsWhereverItIsSigned() throws Exception {
        int[] range = range();
        for (int at = 0; at < card.length; at += 41) {
            if (at >= range[1] && at < range[2]) {
                continue;
            }
            for (int bit : new int[] {0x01, 0x20}) {
                byte[] changed = card.clone();
                changed[at] ^= (byte) bit;
                assertThat(unchanged(changed)).as("byte " + at).isFalse();
            }
        }
    }

    /**
     * The signature's own digits: whoever changes one breaks it, or writes the same digit in another case, or touches a
     * part that says nothing. Never does another key or another time come out.
     */
    @Test
    void theSignatureItselfCannotBeMadeAnothers() throws Exception {
        int[] range = range();
        VerifyResult whole = CardVerifier.verify(card, Set.of(key.code()));
        int broken = 0;
        int tried = 0;
        for (int at = range[1] + 1; at < range[2] - 1; at += 3) {
            byte[] changed = card.clone();
            changed[at] = (byte) (changed[at] == '5' ? '6' : '5');
            tried++;
            if (unchanged(changed)) {
                assertThat(CardVerifier.verify(changed, Set.of(key.code()))).isEqualTo(whole);
            } else {
                broken++;
            }
        }
        assertThat(broken).isGreaterThan(tried * 95 / 100);
        for (byte foreign : new byte[] {'g', ' ', 0}) {
            byte[] changed = card.clone();
            changed[range[1] + 40] = foreign;
            assertThat(unchanged(changed)).isFalse();
        }
    }

    @Test
    void whatIsAppendedShows() throws Exception {
        for (String more : new String[] {"\n% one more comment\n", " ", "\0", "%%EOF\n"}) {
            byte[] longer = Arrays.copyOf(card, card.length + more.length());
            System.arraycopy(more.getBytes(StandardCharsets.US_ASCII), 0, longer, card.length, more.length());
            assertThat(CardVerifier.verify(longer, Set.of())).matches(r -> !r.unchanged() && r.appended());
        }
        try (PDDocument document = Loader.loadPDF(card)) {
            document.getDocumentCatalog().setLanguage("de");
            document.getDocumentCatalog().getCOSObject().setNeedToBeUpdated(true);
            ByteArrayOutputStream update = new ByteArrayOutputStream();
            document.saveIncremental(update);
            assertThat(CardVerifier.verify(update.toByteArray(), Set.of()))
                    .matches(r -> !r.unchanged() && r.appended());
        }
    }

    /** Somebody who alters a card and signs it again cannot hide that it had been signed before. */
    @Test
    void aSecondSignatureShowsAsAppended() throws Exception {
        SigningKey other = SigningKeys.make("B. Other", "", Cards.WHEN);
        byte[] twice = CardMaker.sign(card, other, "B. Other", Cards.WHEN.plusSeconds(60));
        assertThat(CardVerifier.verify(twice, Set.of(key.code(), other.code())))
                .matches(r -> r.signed()
                        && !r.unchanged()
                        && r.appended()
                        && r.keyName().equals("A. Marlow"));
    }

    @Test
    void aSwappedPageShows() throws Exception {
        try (PDDocument document = Loader.loadPDF(card)) {
            PDPage first = document.getPage(0);
            document.removePage(0);
            document.addPage(first);
            ByteArrayOutputStream saved = new ByteArrayOutputStream();
            document.save(saved);
            assertThat(unchanged(saved.toByteArray())).isFalse();
        }
    }

    @Test
    void aFileCutShortIsNotUnchanged() {
        for (int length = 0; length < card.length; length += 997) {
            assertThat(unchanged(Arrays.copyOf(card, length)))
                    .as("cut at " + length)
                    .isFalse();
        }
        assertThat(unchanged(Arrays.copyOf(card, card.length - 1))).isFalse();
        assertThatThrownBy(() -> CardVerifier.verify(new byte[0], Set.of())).isInstanceOf(IOException.class);
    }

    /** A signature that names another range than the whole file, or lies about it, does not pass. */
    @Test
    void aRangeThatLeavesSomethingOutDoesNotPass() throws Exception {
        String text = new String(card, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf("/ByteRange");
        int end = text.indexOf(']', at);
        int[] range = range();
        for (String other : new String[] {
            "/ByteRange [0 " + range[1] + " " + range[2] + " " + (range[3] - 1),
            "/ByteRange [1 " + range[1] + " " + range[2] + " " + range[3],
            "/ByteRange [0 10 " + range[2] + " " + range[3],
            "/ByteRange [0 " + range[1] + " " + range[1] + " " + range[3],
            "/ByteRange [0 0 0 0"
        }) {
            int pad = end - at - other.length();
            if (pad >= 0) {
                String changed = text.substring(0, at) + other + " ".repeat(pad) + text.substring(end);
                assertThat(unchanged(changed.getBytes(StandardCharsets.ISO_8859_1)))
                        .as(other)
                        .isFalse();
            }
        }
    }

    /** A signature of another kind, or one that holds nothing, is told as changed and not as an error of the program. */
    @Test
    void anEmptySignatureIsNotTaken() throws Exception {
        byte[] pages = CardPdf.draw(Cards.of(Paper.A4, CardLanguage.EN, ""), Cards.WHEN);
        try (PDDocument document = Loader.loadPDF(pages);
                SignatureOptions options = new SignatureOptions()) {
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setSubFilter(COSName.getPDFName("ETSI.CAdES.detached"));
            options.setPreferredSignatureSize(100);
            document.addSignature(signature, data -> new byte[] {0x30, 0x00}, options);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.saveIncremental(bytes);
            assertThat(CardVerifier.verify(bytes.toByteArray(), Set.of()))
                    .matches(r -> r.signed() && !r.unchanged() && r.keyCode().isEmpty());
        }
    }
}
