package org.evenfall.wizard.form;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.evenfall.result.ResultLine;

/** A few results as large figures, each under its name; they follow the assessment. */
public final class FigureRow extends FlowPane {

    /**
     * One result.
     *
     * @param name what it is
     * @param value the figure with its unit, as text
     */
    public record Figure(String name, String value) {}

    /** @param figures the figures now; the row takes no room without any */
    public FigureRow(Form form, Supplier<List<Figure>> figures) {
        getStyleClass().add("figure-row");
        Lines.collapsing(form, this, figures, FigureRow::tile);
    }

    /** A row of results that have their words already. */
    public static FigureRow of(Form form, Supplier<List<ResultLine>> lines) {
        return new FigureRow(
                form,
                () -> lines.get().stream()
                        .map(line -> new Figure(line.label(), line.value()))
                        .toList());
    }

    private static Node tile(Figure figure) {
        Label name = new Label(figure.name());
        name.getStyleClass().add("figure-name");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label value = new Label(figure.value());
        value.getStyleClass().add("figure-value");
        value.setMinWidth(Region.USE_PREF_SIZE);
        VBox tile = new VBox(name, value);
        tile.getStyleClass().add("figure-tile");
        tile.setAccessibleText(figure.name() + ": " + figure.value());
        return tile;
    }
}
