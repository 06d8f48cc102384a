package org.evenfall.wizard;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.result.SourceText;
import org.evenfall.wizard.form.PlainScrollPane;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.form.Wrapped;

/** Help about the prompt in front: why it is asked, how to measure, what it means to go on without, sources, terms. */
final class HelpPane extends PlainScrollPane {

    private final Sentences words;
    private final VBox lines = new VBox();

    HelpPane(Sentences words) {
        this.words = words;
        lines.getStyleClass().add("help-lines");
        setContent(lines);
        setFitToWidth(true);
        setFocusTraversable(false);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("help");
    }

    /**
     * Shows the help of a prompt.
     *
     * @param found what is found there now, for its sources
     */
    void show(Prompt prompt, List<Finding> found) {
        String key = "prompt." + prompt.id();
        lines.getChildren().setAll(Wrapped.label(words.text(key + ".question"), "help-title"));
        part("help.why", List.of(words.text(key + ".how")), "help-text");
        part("help.how", optional(key + ".help"), "help-text");
        part("help.without", optional(key + ".without"), "help-text");
        part(
                "help.terms",
                prompt.help().terms().stream()
                        .map(name -> words.text("term." + name))
                        .toList(),
                "help-text");
        part("help.sources", sources(prompt, found), "source");
        lines.getChildren().add(Wrapped.label(words.text("help.close"), "hint"));
        setVvalue(0);
    }

    private List<String> sources(Prompt prompt, List<Finding> found) {
        return Stream.concat(
                        prompt.help().sources().stream(),
                        found.stream().map(Finding::source).filter(source -> !source.isEmpty()))
                .distinct()
                .map(source -> SourceText.line(words, source))
                .toList();
    }

    private List<String> optional(String key) {
        return words.has(key) ? List.of(words.text(key)) : List.of();
    }

    private void part(String titleKey, List<String> texts, String style) {
        if (!texts.isEmpty()) {
            lines.getChildren().add(Wrapped.label(words.text(titleKey), "entry-label"));
            texts.forEach(text -> lines.getChildren().add(Wrapped.label(text, style)));
        }
    }
}
