package org.evenfall.wizard;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.wizard.form.FindingView;

/** The findings of the step in front, as lines, their sources behind one click, and as the one sentence at the foot. */
final class StepFindings extends VBox {

    /** More lines than this push the picture out; the rest is shown at its entries. */
    private static final int MOST_LINES = 5;

    /** So much room the lines with sources always get, in sizes of small text: two findings with their sources. */
    private static final double FEW_LINES = 15;

    private final Sentences words;
    private final VBox lines = new VBox();
    private final ScrollPane scroll = new ScrollPane();
    private final Button sources = new Button();
    private List<Finding> shown = List.of();
    private boolean withSources;

    StepFindings(Sentences words) {
        this.words = words;
        getStyleClass().add("findings");
        lines.getStyleClass().add("finding-lines");
        sources.setId("findings.sources");
        sources.getStyleClass().add("quiet");
        sources.managedProperty().bind(sources.visibleProperty());
        sources.setOnAction(event -> {
            if (withSources) {
                close();
            } else {
                open();
            }
        });
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("sideways");
        close();
    }

    /** The lines with their sources; many of them in the room that the lines alone took, so that the picture keeps its own. */
    private void open() {
        double alone = lines.getHeight();
        double width = lines.getWidth();
        withSources = true;
        redraw();
        lines.applyCss();
        double few = FEW_LINES * sources.getFont().getSize();
        double height = Math.max(alone, Math.min(few, lines.prefHeight(width)));
        scroll.setContent(lines);
        scroll.setVvalue(0);
        scroll.setMinHeight(height);
        scroll.setPrefHeight(height);
        scroll.setMaxHeight(height);
        getChildren().setAll(scroll, sources);
    }

    private void close() {
        withSources = false;
        redraw();
        scroll.setContent(null);
        getChildren().setAll(lines, sources);
    }

    /** Shows the findings of a step; what is missing is named at the foot only. */
    void show(List<Finding> own) {
        List<Finding> now = own.stream()
                .filter(finding -> !missing(finding))
                .limit(MOST_LINES)
                .toList();
        if (!now.equals(shown)) {
            shown = now;
            close();
        }
    }

    private void redraw() {
        lines.getChildren()
                .setAll(shown.stream()
                        .map(finding ->
                                withSources ? FindingView.line(words, finding) : FindingView.brief(words, finding))
                        .toList());
        sources.setText(words.text(withSources ? "findings.sourcesHide" : "findings.sources"));
        sources.setVisible(shown.stream().anyMatch(finding -> !finding.source().isEmpty()));
    }

    /** What stops the step, else what is missing, else the first warning, else that the step is done. */
    String meaning(List<Finding> own) {
        Optional<Finding> worst = own.stream()
                .filter(finding -> finding.kind() == FindingKind.STOP || finding.kind() == FindingKind.WARNING)
                .findFirst();
        Optional<Finding> open = own.stream().filter(StepFindings::missing).findFirst();
        if (worst.isPresent() && worst.get().kind() == FindingKind.STOP) {
            return words.of(worst.get());
        }
        return open.or(() -> worst).map(words::of).orElse(words.text("shell.done"));
    }

    private static boolean missing(Finding finding) {
        return finding.kind() == FindingKind.MISSING;
    }
}
