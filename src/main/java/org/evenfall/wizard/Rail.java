package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.evenfall.finding.Sentences;
import org.evenfall.finding.Step;
import org.evenfall.setup.StepState;

/**
 * The steps at the left: number, name, state by shape and word, one line of result; below the step in front its prompts.
 * Made once, then only updated.
 */
final class Rail extends VBox {

    private static final PseudoClass FRONT = PseudoClass.getPseudoClass("front");

    private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");

    /** Height of a line with the room around it, in heights of its letters; some names take two lines. */
    private static final double LOOSE_LINE_EM = 2.8;

    /** Room that a line with a name leaves for the mark and the padding, in lines of text. */
    private static final double MARK_AND_PADDING_EM = 4.6;

    /** The same of a line with a number only. */
    private static final double NUMBER_PADDING_EM = 3;

    private final Sentences words;
    private final DoubleProperty wrapWidth = new SimpleDoubleProperty();
    private final List<Line> lines = new ArrayList<>();
    private final List<PromptLine> prompts = new ArrayList<>();

    private record Line(StepView view, Button button, HBox graphic, Text name, Text detail) {}

    private record PromptLine(PromptPage page, Button button, HBox graphic, Text name) {}

    Rail(Sentences words, List<StepView> views, List<PromptPage> pages, IntConsumer go, Consumer<String> show) {
        this.words = words;
        getStyleClass().add("rail");
        // what does not fit is cut here, never at the foot of the window
        setMinHeight(0);
        for (int i = 0; i < views.size(); i++) {
            int index = i;
            Text name = text("rail-name");
            Text detail = text("rail-detail");
            HBox graphic = new HBox(StateMark.of(PromptState.OPEN), new VBox(name, detail));
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
            pages.stream()
                    .filter(page -> page.step() == views.get(index).step())
                    .forEach(page -> getChildren().add(promptButton(page, show)));
        }
    }

    private Button promptButton(PromptPage page, Consumer<String> show) {
        String id = page.prompt().id();
        Text name = text("rail-prompt");
        HBox graphic = new HBox(StateMark.of(PromptState.OPEN), name);
        graphic.getStyleClass().add("rail-line");
        Button button = new Button();
        button.setGraphic(graphic);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setId("rail-" + id);
        button.getStyleClass().addAll("rail-button", "rail-prompt-button");
        button.setFocusTraversable(false);
        button.setOnAction(event -> show.accept(id));
        prompts.add(new PromptLine(page, button, graphic, name));
        return button;
    }

    private Text text(String style) {
        Text text = new Text();
        text.getStyleClass().addAll("p-text", style);
        text.wrappingWidthProperty().bind(wrapWidth);
        return text;
    }

    /**
     * Shows the state of every step and of the prompts of the step in front.
     *
     * @param front index of the prompt in front
     * @param ofPrompts state of each prompt of the step in front, as many as there are prompts in all
     */
    void update(
            Map<Step, StepState> states,
            int front,
            List<PromptState> ofPrompts,
            boolean numbersOnly,
            boolean withoutDetails,
            double em) {
        Step step = prompts.get(front).page().step();
        for (Line line : lines) {
            StepState state = states.getOrDefault(line.view().step(), StepState.OPEN);
            String result = line.view().result();
            String name = words.choice(line.view().step());
            String detail = words.choice(state) + (result.isBlank() ? "" : " · " + result);
            line.name().setText(line.view().step().number() + (numbersOnly ? "" : "  " + name));
            line.detail().setText(withoutDetails ? "" : detail);
            line.detail().setManaged(!withoutDetails);
            mark(line.graphic(), PromptState.of(state));
            line.button().setAccessibleText(name + ", " + detail);
            line.button().pseudoClassStateChanged(FRONT, line.view().step() == step);
        }
        for (int i = 0; i < prompts.size(); i++) {
            PromptLine line = prompts.get(i);
            boolean shown = line.page().step() == step && line.page().prompt().asked();
            String id = line.page().prompt().id();
            String name = words.text("prompt." + id + ".name");
            line.button().setVisible(shown);
            line.button().setManaged(shown);
            line.name().setText(numbersOnly ? id : id + "  " + name);
            mark(line.graphic(), ofPrompts.get(i));
            line.button().setAccessibleText(id + ", " + name + ", " + words.choice(ofPrompts.get(i)));
            line.button().pseudoClassStateChanged(FRONT, i == front);
        }
        wrap((numbersOnly ? NUMBER_PADDING_EM : MARK_AND_PADDING_EM) * em, em);
    }

    /** Lines move together where the window is low or the text large. */
    @Override
    protected void layoutChildren() {
        double em = prompts.get(0).name().getFont().getSize();
        pseudoClassStateChanged(TIGHT, getHeight() < getManagedChildren().size() * LOOSE_LINE_EM * em);
        super.layoutChildren();
    }

    private static void mark(HBox graphic, PromptState state) {
        if (!state.equals(graphic.getUserData())) {
            graphic.setUserData(state);
            graphic.getChildren().set(0, StateMark.of(state));
        }
    }

    /** A button does not ask its graphic for its height at a width, so the text gets the width at which it wraps. */
    private void wrap(double padding, double em) {
        wrapWidth.unbind();
        wrapWidth.bind(Bindings.max(em, prefWidthProperty().subtract(padding)));
    }
}
