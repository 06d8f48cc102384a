package org.evenfall.card;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.PropertyResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.CardLanguage;

/** The card's sentences in the driver's language. A language is one bundle, card_xx.properties. */
public final class CardWords {

    private CardWords() {}

    /**
     * The sentences in a language.
     *
     * @param own the program's sentences, English, used as they are when no language was chosen
     */
    public static Sentences in(CardLanguage language, Sentences own) {
        return switch (language) {
            case UNANSWERED -> own;
            case EN -> own.in(bundle(new StringReader("")), Locale.UK);
            default -> own.in(bundle(language.tag()), Locale.forLanguageTag(language.tag()));
        };
    }

    private static PropertyResourceBundle bundle(String language) {
        try (InputStream in = CardWords.class.getResourceAsStream("/org/evenfall/card_" + language + ".properties")) {
            if (in == null) {
                throw new IOException("a language is missing from the program: " + language);
            }
            return bundle(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static PropertyResourceBundle bundle(Reader words) {
        try {
            return new PropertyResourceBundle(words);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
