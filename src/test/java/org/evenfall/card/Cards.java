package org.evenfall.card;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;

/** The card of the demo, an invented farm, on any sheet and in any language. */
final class Cards {

    static final Instant WHEN = Instant.parse("2027-03-18T10:00:00Z");

    private Cards() {}

    static Setup demo() throws Exception {
        return new SetupJson()
                .read(Files.readString(Path.of("demo", "setup.json")), "demo")
                .setup();
    }

    static CardContent of(Setup setup, String keyCode) {
        Sentences words = new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);
        return CardContents.of(setup, Assessor.assess(setup), words, keyCode);
    }

    static CardContent of(Paper paper, CardLanguage language, String keyCode) throws Exception {
        Setup demo = demo();
        return of(demo.withCard(demo.card().withPaper(paper).withLanguage(language)), keyCode);
    }

    static byte[] signed(SigningKey key) throws Exception {
        return CardMaker.make(of(Paper.A5_LANDSCAPE, CardLanguage.EN, key.code()), key, "A. Marlow", WHEN);
    }
}
