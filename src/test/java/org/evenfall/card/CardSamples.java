package org.evenfall.card;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupJson;

/** Cards of the demo, an invented farm, on any sheet and in any language, as they are and with random texts. */
public final class CardSamples {

    /** Time of signing. */
    public static final Instant WHEN = Instant.parse("2027-03-18T10:00:00Z");

    /** Code of an invented key. */
    public static final String CODE = "F474 2625 AE76 3002";

    /** The program's own sentences. */
    static final Sentences OWN =
            new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK);

    private static final String[] WORDS = {
        "long", "vane", "setting", "Broadcasterlever", "ø", "12.5", "żółw", "left", "outer", "drop", "position", "åben"
    };

    private static final Map<String, CardContent> BASES = new ConcurrentHashMap<>();

    private CardSamples() {}

    /** The demo's setup. */
    public static Setup demo() throws Exception {
        return new SetupJson().read(Files.readString(Path.of("demo", "setup.json")), "demo");
    }

    /** The card of a setup. */
    public static CardContent of(Setup setup, String keyCode) {
        return CardContents.of(setup, Assessor.assess(setup), OWN, keyCode);
    }

    /** The demo's card on a sheet in a language. */
    public static CardContent of(Paper paper, CardLanguage language, String keyCode) throws Exception {
        Setup demo = demo();
        return of(demo.withCard(demo.card().withPaper(paper).withLanguage(language)), keyCode);
    }

    /** A card with other figures, warnings and texts of random length, on a random sheet in a random language. */
    public static CardContent seeded(Random random) throws Exception {
        Paper paper = Paper.values()[random.nextInt(4)];
        CardLanguage language = CardLanguage.values()[1 + random.nextInt(3)];
        CardContent base = BASES.get(paper + " " + language);
        if (base == null) {
            base = of(paper, language, CODE);
            BASES.put(paper + " " + language, base);
        }
        List<CardContent.Figure> figures = new ArrayList<>(base.figures());
        for (int n = random.nextInt(7); n > 0; n--) {
            figures.add(
                    3,
                    new CardContent.Figure(words(random, 1 + random.nextInt(6)), words(random, 1 + random.nextInt(3))));
        }
        for (int n = random.nextInt(5); n > 0; n--) {
            figures.remove(random.nextInt(figures.size()));
        }
        List<String> warnings = new ArrayList<>();
        for (int n = random.nextInt(9); n > 0; n--) {
            warnings.add(words(random, 5 + random.nextInt(25)));
        }
        CardContent.Heading heading = new CardContent.Heading(
                words(random, 1 + random.nextInt(7)),
                List.of(words(random, 6), words(random, 9)),
                random.nextInt(4) == 0 ? List.of(words(random, 5), words(random, 12)) : List.of());
        CardContent.Proof proof = base.proof();
        return new CardContent(
                base.sheet(),
                heading,
                figures,
                warnings,
                new CardContent.Proof(
                        proof.title(),
                        random.nextBoolean() ? proof.bars() : List.of(),
                        proof.barsInWords(),
                        proof.lines()),
                base.stops(),
                base.cautions(),
                base.day(),
                base.signature(),
                base.code(),
                base.foot());
    }

    /** Some words, among them long ones and ones with letters outside Latin-1. */
    public static String words(Random random, int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(i == 0 ? "" : " ").append(WORDS[random.nextInt(WORDS.length)]);
        }
        return text.toString();
    }
}
