package org.evenfall.bench;

import java.time.Instant;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardPdf;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.PdfSigner;
import org.evenfall.sign.SigningKey;
import org.evenfall.sign.SigningKeys;

/** A signed card in memory, of a setup that is assessed already. */
final class CardRow implements Row {

    @Override
    public String measured() {
        return "card: drawn and signed, " + Demo.NAME;
    }

    @Override
    public String baseline() {
        return "one page with one line of text by PDFBox, signed with the same key by Bouncy Castle";
    }

    @Override
    public Pairs measure() throws Exception {
        Setup setup = Demo.setup();
        Assessment assessment = Assessor.assess(setup);
        SigningKey key = SigningKeys.make("A. Marlow", "", Instant.EPOCH);
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        return Interleaved.measure(
                () -> PdfSigner.sign(
                        CardPdf.draw(CardContents.of(setup, assessment, words, key.code()), Instant.EPOCH),
                        key,
                        "A. Marlow",
                        Instant.EPOCH),
                () -> BareSignedPdf.of(key.privateKey(), key.certificate()));
    }
}
