package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.PropertyResourceBundle;
import java.util.TreeSet;
import org.evenfall.ScreenTexts.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every text of the three bundles: short sentences, and one term for one thing. No key is exempt from the length. */
class ScreenTextTest {

    private static final List<Term> ENGLISH = List.of(
            Term.of("shaft speed|rpm of the shaft", "PTO speed"),
            Term.of("(?<!PTO )shafts?", "PTO speed, or PTO shaft for the part itself"),
            Term.of("field tests?", "tray test"),
            Term.of("nearest", "closest"),
            Term.of("mass|masses", "weight"),
            Term.of("nitrogen share", "nitrogen content"),
            Term.of("half-?way", "midway"),
            Term.of("from the middle", "from the tramline"),
            Term.of("attempts?", "test"),
            Term.of("times the three passes|passes \\{\\d} times", "runs"),
            Term.of("by the model|(?:landing|teaching) model", "in the model"),
            Term.of("told|tells?|said", "show, enter, print"),
            Term.of("say (?:whether|how|what|who|which)", "choose …, enter …"),
            Term.of("stands?|standing|stood", "be, be set, put"),
            Term.of("mind", "warning"),
            Term.of("gone on because", "continued because"),
            Term.of("slush", "paste"),
            Term.of("stuff", "product"),
            Term.of("noughts?", "0"),
            Term.of("A5 across|A5 upright", "portrait, landscape"));

    private static final List<Term> GERMAN = List.of(
            Term.of("Handbuch\\w*", "Betriebsanleitung"),
            Term.of("Eimerprobe\\w*", "Abdrehprobe"),
            Term.of("Feldtest\\w*", "Schalentest"),
            Term.of("Hebel\\w*", "Einstellung"),
            Term.of("Fahrt", "Geschwindigkeit"),
            Term.of("Fahrgassenbreite", "Fahrgassenabstand"),
            Term.of("Fang|Fänge", "Fangmenge"),
            Term.of("vom Mittel", "vom Mittelwert"),
            Term.of("Wellendrehzahl\\w*|der Welle", "Zapfwellendrehzahl"),
            Term.of("Hügel|Haufens?|Brei", "Gipfel, Schüttraum, schmierig"),
            Term.of("Kundige", "Fachleute"),
            Term.of("rpm|units|per t", "the unit in German"));

    private static final List<Term> FRENCH = List.of(
            Term.of("récoltes?|récolter", "quantité recueillie, recueillir"),
            Term.of("\\d+[\\s\u00a0]%[\\s\u00a0]près", "écart de plus de"),
            Term.of("leviers?", "réglage"),
            Term.of("mêler", "mélanger"),
            Term.of("pareils?|pareilles?", "identique"),
            Term.of("sur la culture|sur le sol", "au-dessus de"),
            Term.of("cartes?", "fiche"),
            Term.of("seule bosse|bouillie|plume", "sommet, pâteux, saisie"),
            Term.of("continué parce que", "poursuivi, motif"),
            Term.of("rpm|units|per t", "the unit in French"));

    private static PropertyResourceBundle bundle(String name) throws Exception {
        try (Reader in =
                Files.newBufferedReader(Path.of("src", "main", "resources", "org", "evenfall", name + ".properties"))) {
            return new PropertyResourceBundle(in);
        }
    }

    private static List<Term> forbidden(String name) {
        return switch (name) {
            case "card_de" -> GERMAN;
            case "card_fr" -> FRENCH;
            default -> ENGLISH;
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"words", "card_de", "card_fr"})
    void noSentenceIsLong(String name) throws Exception {
        PropertyResourceBundle bundle = bundle(name);
        List<String> found = new ArrayList<>();
        for (String key : new TreeSet<>(bundle.keySet())) {
            ScreenTexts.longSentences(bundle.getString(key)).forEach(hit -> found.add(key + ": " + hit));
        }
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"words", "card_de", "card_fr"})
    void oneTermForOneThing(String name) throws Exception {
        PropertyResourceBundle bundle = bundle(name);
        List<String> found = new ArrayList<>();
        for (String key : new TreeSet<>(bundle.keySet())) {
            ScreenTexts.terms(bundle.getString(key), forbidden(name)).forEach(hit -> found.add(key + ": " + hit));
        }
        assertThat(found).isEmpty();
    }

    /** The checker finds what is planted: 21 words, not 20; a gap is a word, a sign none; a sentence ends at its point. */
    @Test
    void aLongSentenceIsFound() {
        String twenty = "one {0} three four five six seven eight nine ten, 11 % twelve 13 14 15 16 17 18 19 20";
        assertThat(ScreenTexts.longSentences("Short. " + twenty + ".")).isEmpty();
        assertThat(ScreenTexts.longSentences("Short. " + twenty + " 21. Short."))
                .containsExactly("21 words: " + twenty + " 21.");
        assertThat(ScreenTexts.longSentences("One et al. " + twenty)).hasSize(1);
    }

    @Test
    void aForbiddenTermIsFoundAsAWhole() {
        assertThat(ScreenTexts.terms("The nearest of the shafts stands half-way", ENGLISH))
                .containsExactly(
                        "\"shafts\", use: PTO speed, or PTO shaft for the part itself",
                        "\"nearest\", use: closest",
                        "\"half-way\", use: midway",
                        "\"stands\", use: be, be set, put");
        assertThat(ScreenTexts.terms("PTO shaft, remind, understand, massive", ENGLISH))
                .isEmpty();
        assertThat(ScreenTexts.terms("Die Eimerprobe im Fanghandbuch", GERMAN))
                .containsExactly("\"Eimerprobe\", use: Abdrehprobe");
        assertThat(ScreenTexts.terms("Trois Récoltes", FRENCH))
                .containsExactly("\"Récoltes\", use: quantité recueillie, recueillir");
    }
}
