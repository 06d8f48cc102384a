package org.evenfall.wizard;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.PlainScrollPane;

/** The findings of the step in front, as lines, their sources behind one click, and as the one sentence at the foot. */
final class StepFindings extends VBox {

    /** More lines than this push the picture out; the rest is shown at its entries. */
    private static final int MOST_LINES = 5;

    /** In a hall, where the picture counts; the help has all with their sources. */
    private static final int MOST_IN_HALL = 1;

    /** So much room the lines with sources always get, in sizes of small text: two findings with their sources. */
    private static final double FEW_LINES = 15;

    private final Sentences words;
    private final VBox lines = new VBox();
    private final ScrollPane scroll = new PlainScrollPane();
    private final Button sources = new Button();
    private List<Finding> shown = List.of();
    private boolean withSources;
    private boolean hall;

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
        // the button stays where it is: it may have the keyboard
        if (!getChildren().equals(List.of(lines, sources))) {
            getChildren().setAll(lines, sources);
        }
    }

    /** Shows the findings of a step; what is missing is named at the foot only. */
    void show(List<Finding> own, boolean inHall) {
        Stream<Finding> found = own.stream().filter(finding -> !missing(finding));
        List<Finding> now = inHall
                ? found.sorted(Comparator.comparing(Finding::kind, Comparator.comparingInt(FindingKind::weight)))
                        .limit(MOST_IN_HALL)
                        .toList()
                : found.limit(MOST_LINES).toList();
        if (!now.equals(shown) || hall != inHall) {
            shown = now;
            hall = inHall;
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
        sources.setVisible(
                !hall && shown.stream().anyMatch(finding -> !finding.source().isEmpty()));
    }

    /** What is to be done next here, in one sentence; what is found is shown at its entry and at the right. */
    String meaning(String prompt, List<Finding> own, PromptState state) {
        return switch (state) {
            case STOPPED -> words.text("shell.stopped");
            case WARNED -> own("prompt." + prompt + ".warned", "shell.warned");
            case SKIPPED -> own("prompt." + prompt + ".skipped", "shell.skipped");
            case DONE -> own("prompt." + prompt + ".done", "shell.done");
            case OPEN ->
                own.stream()
                        .filter(StepFindings::missing)
                        .findFirst()
                        .map(words::of)
                        .orElseGet(() -> own("prompt." + prompt + ".open", "shell.open"));
        };
    }

    /** What a prompt says of itself, else what holds for all. */
    private String own(String key, String usual) {
        return words.text(words.has(key) ? key : usual);
    }

    private static boolean missing(Finding finding) {
        return finding.kind() == FindingKind.MISSING;
    }
}
