package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardPdf;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.KeyRing;
import org.evenfall.sign.PdfSigner;
import org.evenfall.sign.SigningKey;
import org.evenfall.store.SetupJson;

/** The demo's card, signed by somebody else. */
final class OtherCard {

    private OtherCard() {}

    static byte[] by(KeyRing ring, Instant when) throws Exception {
        SigningKey key = ring.signing("R. Fenwick", "adviser", when);
        Setup setup = new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        return PdfSigner.sign(
                CardPdf.draw(CardContents.of(setup, Assessor.assess(setup), words, key.code()), when),
                key,
                "R. Fenwick",
                when);
    }
}
