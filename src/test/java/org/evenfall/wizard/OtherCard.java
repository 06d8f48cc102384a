package org.evenfall.wizard;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardMaker;
import org.evenfall.card.KeyRing;
import org.evenfall.card.SigningKey;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;

/** The demo's card, signed by somebody else. */
final class OtherCard {

    private OtherCard() {}

    static byte[] by(KeyRing ring, Instant when) throws Exception {
        SigningKey key = ring.signing("R. Fenwick", "adviser", when);
        Setup setup = new SetupJson()
                .read(Files.readString(Path.of("demo", "setup.json")), "demo")
                .setup();
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        return CardMaker.make(
                CardContents.of(setup, Assessor.assess(setup), words, key.code()), key, "R. Fenwick", when);
    }
}
