package org.evenfall.wizard;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import org.evenfall.wizard.form.Wrapped;

/** A sentence above all pages with what the person can do about it. Takes no room without a sentence. */
final class Banner extends FlowPane {

    private final Label label = Wrapped.label("", "banner-text");
    private Supplier<String> sentence = () -> "";

    Banner() {
        getStyleClass().add("banner");
        label.maxWidthProperty().bind(widthProperty().subtract(24));
        show(sentence, List.of());
    }

    void show(Supplier<String> text, List<Frame.Choice> choices) {
        sentence = text;
        getChildren().setAll(label);
        choices.forEach(choice -> {
            Button button = new Button(choice.name());
            button.setOnAction(event -> choice.action().run());
            getChildren().add(button);
        });
        refresh();
    }

    /** Asks for the sentence again. */
    void refresh() {
        String now = sentence.get();
        label.setText(now);
        setVisible(!now.isEmpty());
        setManaged(!now.isEmpty());
    }
}
