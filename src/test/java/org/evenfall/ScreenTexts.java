package org.evenfall;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What a text on a screen or a card may not have: a long sentence, or a term for which another one is used. */
final class ScreenTexts {

    /** Most words of a sentence. A gap such as {0} counts as one word, a sign such as % as none. */
    static final int MOST_WORDS = 20;

    /** The end of a sentence; the point after "al." is none. */
    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?])(?<!\\bal\\.)\\s+");

    private static final Pattern BLANK = Pattern.compile("[\\s\u00a0\u202f]+");
    private static final Pattern WORD = Pattern.compile(".*[\\p{L}\\p{N}{].*");

    /** A term that no text has, as whole words, and what is written instead. */
    record Term(Pattern pattern, String instead) {

        static Term of(String regex, String instead) {
            return new Term(
                    Pattern.compile(
                            "\\b(?:" + regex + ")\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS),
                    instead);
        }
    }

    private ScreenTexts() {}

    /** The sentences above {@link #MOST_WORDS} words, each with its number of words. */
    static List<String> longSentences(String text) {
        List<String> found = new ArrayList<>();
        for (String sentence : SENTENCE_END.split(text)) {
            long words = BLANK.splitAsStream(sentence)
                    .filter(part -> WORD.matcher(part).matches())
                    .count();
            if (words > MOST_WORDS) {
                found.add(words + " words: " + sentence);
            }
        }
        return found;
    }

    /** The terms that the text has and should not, each with the term to use. */
    static List<String> terms(String text, List<Term> forbidden) {
        List<String> found = new ArrayList<>();
        for (Term term : forbidden) {
            term.pattern()
                    .matcher(text)
                    .results()
                    .forEach(hit -> found.add("\"" + hit.group() + "\", use: " + term.instead()));
        }
        return found;
    }
}
