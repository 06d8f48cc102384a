package org.evenfall.wizard;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Severity;
import org.evenfall.setup.StepState;

/** Findings and states: always a shape, a word and a colour. */
final class FindingView {

    private FindingView() {}

    /** One finding as a line. */
    static Node line(Sentences words, Finding finding) {
        Label text = new Label(words.of(finding));
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox line = new HBox(mark(finding.severity()), text);
        line.getStyleClass().addAll("finding", finding.severity().name().toLowerCase(Locale.ROOT));
        line.setAccessibleText(words.choice(finding.severity()) + ": " + words.of(finding));
        return line;
    }

    /** The shape of a severity. */
    static Shape mark(Severity severity) {
        return switch (severity) {
            case STOP -> square();
            case WARN -> triangle();
            case MISSING, NOTE -> ring();
        };
    }

    static Shape shape(StepState state) {
        return switch (state) {
            case DONE -> styled(new Circle(6), "done");
            case OPEN -> ring();
            case WARNED -> triangle();
            case STOPPED -> square();
        };
    }

    private static Shape ring() {
        return styled(new Circle(5), "ring");
    }

    private static Shape triangle() {
        return styled(new Polygon(0, 11, 6, 0, 12, 11), "triangle");
    }

    private static Shape square() {
        return styled(new Rectangle(11, 11), "square");
    }

    private static Shape styled(Shape shape, String style) {
        shape.getStyleClass().addAll("mark", style);
        return shape;
    }
}
