package org.evenfall.wizard.form;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.evenfall.finding.Finding;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.result.SourceText;

/** Findings as lines: always a shape, a sentence and a colour, and a quiet line with the source where there is one. */
public final class FindingView {

    private FindingView() {}

    /** One finding as a line, with its source. */
    public static Node line(Sentences words, Finding finding) {
        return line(words, "", finding);
    }

    /** One finding as a line without its source, for a place with little room. */
    public static Node brief(Sentences words, Finding finding) {
        return line(words, words.of(finding), "", finding.kind());
    }

    /** The same without its source. */
    static Node brief(Sentences words, String place, Finding finding) {
        return line(words, sentence(words, place, finding), "", finding.kind());
    }

    /** One finding as a line that begins with the name of the place it is about, unless that is empty. */
    static Node line(Sentences words, String place, Finding finding) {
        return line(words, sentence(words, place, finding), SourceText.line(words, finding), finding.kind());
    }

    private static String sentence(Sentences words, String place, Finding finding) {
        return place.isEmpty() ? words.of(finding) : place + ": " + words.of(finding);
    }

    private static Node line(Sentences words, String sentence, String source, FindingKind kind) {
        Label text = new Label(sentence);
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        VBox texts = new VBox(text);
        if (!source.isEmpty()) {
            texts.getChildren().add(SourceLine.label(source));
        }
        HBox.setHgrow(texts, Priority.ALWAYS);
        HBox line = new HBox(mark(kind), texts);
        line.getStyleClass().addAll("finding", styleClass(kind));
        line.setAccessibleText(words.choice(kind) + ": " + sentence + (source.isEmpty() ? "" : " " + source));
        return line;
    }

    /** The shape of a kind: square, triangle or ring. */
    public static Node mark(FindingKind kind) {
        Shape shape = switch (kind) {
            case STOP -> new Rectangle(11, 11);
            case WARNING -> new Polygon(0, 11, 6, 0, 12, 11);
            case MISSING, NOTE -> new Circle(5);
        };
        shape.getStyleClass()
                .addAll(
                        "mark",
                        switch (kind) {
                            case STOP -> "square";
                            case WARNING -> "triangle";
                            case MISSING, NOTE -> "ring";
                        });
        return new SizedMark(shape);
    }

    /** The kind as the style sheet names it. */
    static String styleClass(FindingKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
