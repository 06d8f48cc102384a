package org.evenfall.wizard;

import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.evenfall.finding.FindingKind;
import org.evenfall.wizard.form.FindingView;
import org.evenfall.wizard.form.SizedMark;

/** The shape of a state: filled circle, ring, triangle, square or bar. */
final class StateMark {

    private StateMark() {}

    static Node of(PromptState state) {
        return switch (state) {
            case DONE -> styled(new Circle(6), "done");
            case OPEN -> FindingView.mark(FindingKind.NOTE);
            case WARNED -> FindingView.mark(FindingKind.WARNING);
            case STOPPED -> FindingView.mark(FindingKind.STOP);
            case SKIPPED -> styled(new Rectangle(12, 3), "skipped");
        };
    }

    private static Node styled(Shape shape, String style) {
        shape.getStyleClass().addAll("mark", style);
        return new SizedMark(shape);
    }
}
