package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import org.evenfall.finding.FindingKind;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.setup.StepState;
import org.evenfall.wizard.form.FindingView;

/** The steps at the left: number, name, state by shape and word, one line of result. Made once, then only updated. */
final class Rail extends VBox {

    private static final PseudoClass FRONT = PseudoClass.getPseudoClass("front");

    /** Room that a line with a name leaves for the mark and the padding, in lines of text. */
    private static final double MARK_AND_PADDING_EM = 4.6;

    /** The same of a line with a number only. */
    private static final double NUMBER_PADDING_EM = 3;

    private final Sentences words;
    private final DoubleProperty wrapWidth = new SimpleDoubleProperty();
    private final List<Line> lines = new ArrayList<>();

    private record Line(StepView view, Button button, HBox graphic, Text name, Text detail) {}

    Rail(Sentences words, List<StepView> views, IntConsumer go) {
        this.words = words;
        getStyleClass().add("rail");
        for (int i = 0; i < views.size(); i++) {
            int index = i;
            Text name = text("rail-name");
            Text detail = text("rail-detail");
            HBox graphic = new HBox(mark(StepState.OPEN), new VBox(name, detail));
            graphic.getStyleClass().add("rail-line");
            Button button = new Button();
            button.setGraphic(graphic);
            button.setMaxWidth(Double.MAX_VALUE);
            button.setId("rail-" + index);
            button.getStyleClass().add("rail-button");
            button.setFocusTraversable(false);
            button.setOnAction(event -> go.accept(index));
            lines.add(new Line(views.get(i), button, graphic, name, detail));
            getChildren().add(button);
        }
    }

    private Text text(String style) {
        Text text = new Text();
        text.getStyleClass().addAll("p-text", style);
        text.wrappingWidthProperty().bind(wrapWidth);
        return text;
    }

    /** Shows the state of every step, and which one is in front. */
    void update(Map<Step, StepState> states, int front, boolean numbersOnly, double em) {
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            StepState state = states.getOrDefault(line.view().step(), StepState.OPEN);
            String result = line.view().result();
            String name = words.choice(line.view().step());
            String detail = words.choice(state) + (result.isBlank() ? "" : " · " + result);
            line.name().setText(line.view().step().number() + (numbersOnly ? "" : "  " + name));
            line.detail().setText(numbersOnly ? "" : detail);
            line.detail().setManaged(!numbersOnly);
            if (!state.equals(line.graphic().getUserData())) {
                line.graphic().setUserData(state);
                line.graphic().getChildren().set(0, mark(state));
            }
            line.button().setAccessibleText(name + ", " + detail);
            line.button().pseudoClassStateChanged(FRONT, i == front);
        }
        wrap((numbersOnly ? NUMBER_PADDING_EM : MARK_AND_PADDING_EM) * em, em);
    }

    /** A button does not ask its graphic for its height at a width, so the text gets the width at which it wraps. */
    private void wrap(double padding, double em) {
        wrapWidth.unbind();
        wrapWidth.bind(Bindings.max(em, prefWidthProperty().subtract(padding)));
    }

    /** The shape of a state: filled circle, ring, triangle or square. */
    private static Shape mark(StepState state) {
        return switch (state) {
            case DONE -> {
                Shape circle = new Circle(6);
                circle.getStyleClass().addAll("mark", "done");
                yield circle;
            }
            case OPEN -> FindingView.mark(FindingKind.NOTE);
            case WARNED -> FindingView.mark(FindingKind.WARNING);
            case STOPPED -> FindingView.mark(FindingKind.STOP);
        };
    }
}
