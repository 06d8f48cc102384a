package org.evenfall.wizard;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Sentences;
import org.evenfall.result.SourceText;
import org.evenfall.setup.DayLines;
import org.evenfall.wizard.form.Keyboard;
import org.evenfall.wizard.form.Wrapped;

/** Is today a day to spread? What raises and lowers nitrogen loss and unevenness, with sources. Nothing is kept. */
final class DayPage extends VBox {

    private final Button back;

    /** @param goBack runs when the person has read it */
    DayPage(Sentences words, Runnable goBack) {
        Label title = Wrapped.label(words.text(DayLines.TITLE), "question");
        getStyleClass().addAll("page", "day-page");
        getChildren().addAll(title, Wrapped.label(words.text("day.how"), "why"));
        Stream.of(DayLines.WEATHER, DayLines.CARE).flatMap(List::stream).forEach(line -> {
            getChildren().add(Wrapped.label(words.text(line.key(), line.args()), "day-line"));
            line.sources()
                    .forEach(source -> getChildren().add(Wrapped.label(SourceText.line(words, source), "source")));
        });
        back = new Button(words.text("day.back"));
        back.setId("day.back");
        back.getStyleClass().add("primary");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setOnAction(event -> goBack.run());
        getChildren().add(back);
    }

    /** Puts the keyboard on the button that goes back. */
    void focus() {
        Keyboard.to(back);
    }
}
