package org.evenfall.wizard;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import org.evenfall.wizard.form.Wrapped;

/** A sentence above all pages with what the person can do about it. Takes no room without a sentence. */
final class Banner extends FlowPane {

    Banner() {
        getStyleClass().add("banner");
        show("", List.of());
    }

    void show(String sentence, List<Frame.Choice> choices) {
        Label label = Wrapped.label(sentence, "banner-text");
        getChildren().setAll(label);
        label.maxWidthProperty().bind(widthProperty().subtract(24));
        choices.forEach(choice -> {
            Button button = new Button(choice.name());
            button.setOnAction(event -> choice.action().run());
            getChildren().add(button);
        });
        setVisible(!sentence.isEmpty());
        setManaged(!sentence.isEmpty());
    }
}
