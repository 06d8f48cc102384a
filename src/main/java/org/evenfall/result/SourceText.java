package org.evenfall.result;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;

/** Where a figure or a limit comes from, as one line of text. */
public final class SourceText {

    private SourceText() {}

    /**
     * The line of a source, for example "Source: …"; empty for an empty key.
     *
     * @param sourceKey bundle key of the source
     */
    public static String line(Sentences words, String sourceKey) {
        return sourceKey.isEmpty() ? "" : words.text("result.source", Arg.text(words.text(sourceKey)));
    }

    /** The line of the source of a finding; empty where it rests on none. */
    public static String line(Sentences words, Finding finding) {
        return line(words, finding.source());
    }

    /** The line of several sources, each once, with a semicolon between them; empty without any. */
    public static String line(Sentences words, List<String> sourceKeys) {
        List<String> texts = new ArrayList<>();
        for (String key : sourceKeys.stream().distinct().toList()) {
            texts.add(words.text(key));
        }
        return texts.isEmpty() ? "" : words.text("result.source", Arg.text(String.join("; ", texts)));
    }
}
