package org.evenfall.wizard;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Sentences;
import org.evenfall.result.SourceText;
import org.evenfall.wizard.form.Wrapped;

/** Is today a day to spread? What raises and lowers nitrogen loss and unevenness, with sources. Nothing is kept. */
final class DayPage extends VBox {

    /** A line of the page: its text at {@code day.NAME}, and where it comes from. */
    private record Line(String name, List<String> sources) {}

    private static final List<Line> LINES = List.of(
            new Line("rain", List.of("source.lossRain", "source.loss")),
            new Line("warmth", List.of("source.loss", "source.lossTreated")),
            new Line("wind", List.of("source.wind")),
            new Line("soil", List.of("source.loss")),
            new Line("lime", List.of("source.lossLime")),
            new Line("humidity", List.of("source.humidityUrea")),
            new Line("local", List.of()),
            new Line("spills", List.of()));

    private final Button back;

    /** @param goBack runs when the person has read it */
    DayPage(Sentences words, Runnable goBack) {
        Label title = Wrapped.label(words.text("day.title"), "question");
        getStyleClass().addAll("page", "day-page");
        getChildren().addAll(title, Wrapped.label(words.text("day.how"), "why"));
        for (Line line : LINES) {
            getChildren().add(Wrapped.label(words.text("day." + line.name()), "day-line"));
            line.sources()
                    .forEach(source -> getChildren().add(Wrapped.label(SourceText.line(words, source), "source")));
        }
        back = new Button(words.text("day.back"));
        back.setId("day.back");
        back.getStyleClass().add("primary");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setOnAction(event -> goBack.run());
        getChildren().add(back);
    }

    /** Puts the keyboard on the button that goes back. */
    void focus() {
        back.requestFocus();
    }
}
